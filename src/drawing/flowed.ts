/** Text and tables from the top of a page down, with further pages as they are needed. */
import { layoutOf, type PaperPage, type Placed, sentencesAt, type TableLook, tableAt } from './paper-page';
import type { Paper } from './tiling';

export interface Sentences {
  /** Space above it. */
  readonly gap: number;
  readonly sentences: readonly string[];
  readonly height: number;
  readonly bold?: boolean;
}

export interface HeadedTable {
  readonly gap: number;
  readonly head: string;
  /** The headings first. */
  readonly rows: readonly (readonly string[])[];
  readonly look: TableLook;
}

const headHeight = 2.6;

/** A table goes onto a new page whole if it fits there; a longer one continues on the next page with its headings. */
export function flowed(
  blocks: readonly (Sentences | HeadedTable)[],
  size: Paper,
): readonly Omit<PaperPage, 'title' | 'where'>[] {
  const { left: x, right, top, bottom } = layoutOf(size);
  const width = right - x;
  const pages: Placed[][] = [[]];
  const current = (): Placed[] => pages.at(-1) ?? [];
  const start = (gap: number): number => {
    const above = current().at(-1);
    return above === undefined ? top : above.bottom - gap;
  };

  const putTable = ({ gap, head, rows, look }: HeadedTable): void => {
    const [headings = [], ...left] = rows;
    let rest = left;
    do {
      const title = rest.length === left.length ? head : `${head} (continued)`;
      const made = (count: number) => (y: number) => {
        const above = sentencesAt({ x, y }, width, [title], headHeight, true);
        const footed = look.footed === true && count === rest.length;
        const shown = [headings, ...rest.slice(0, count)];
        const table = tableAt({ x, y: above.bottom - 0.5 }, width, shown, { ...look, footed });
        return { primitives: [...above.primitives, ...table.primitives], bottom: table.bottom };
      };
      if (current().length > 0 && made(rest.length)(start(gap)).bottom < bottom) pages.push([]);
      let count = rest.length;
      while (count > 1 && made(count)(top).bottom < bottom) count -= 1;
      current().push(made(count)(start(gap)));
      rest = rest.slice(count);
    } while (rest.length > 0);
  };

  for (const block of blocks) {
    if ('head' in block) {
      putTable(block);
      continue;
    }
    const made = (y: number) => sentencesAt({ x, y }, width, block.sentences, block.height, block.bold);
    if (current().length > 0 && made(start(block.gap)).bottom < bottom) pages.push([]);
    current().push(made(start(block.gap)));
  }
  return pages.map((placed) => ({ primitives: placed.flatMap(({ primitives }) => primitives) }));
}
