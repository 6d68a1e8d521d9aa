import type { Block, SheetHost } from '../../hosts/sheet-host';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import { withoutNames } from '../checks/entry-words';
import { first, type Grid } from '../follow/grid';
import { UserError } from '../user-error';
import { figuresAround } from './drum-around';
import { drumWords } from './drum-words';
import type { DrumFigures } from './recognition';
import { type DrumField, drumFields } from './request';

/** The figures of a drum in a call of `SILT.TANK.PORTS`. */
export function drumFromPorts(depth: Grid, coneHeight: Grid, stand: Grid): DrumFigures {
  return givenFigures({ depth: first(depth), coneHeight: first(coneHeight), stand: first(stand) });
}

const mostColumns = 40;
const furthestHeading = 60;

/**
 * The figures of a drum in the selected row, by the headings above it; undefined if it has no diameter and no depth.
 */
export async function drumFromRow(
  { sheet, range }: Block,
  host: Pick<SheetHost, 'read'>,
): Promise<DrumFigures | undefined> {
  const top = Math.max(0, range.row - furthestHeading);
  const read = { row: top, column: 0, rows: range.row - top + 1, columns: mostColumns };
  const { values } = await host.read({ sheet, range: read });
  const line = values.at(-1) ?? [];
  for (let row = values.length - 2; row >= 0; row--) {
    const headings = values[row] ?? [];
    if (headings.filter((one) => typeof one === 'string' && /[a-z]/i.test(one)).length < 3) continue;
    const under = Object.fromEntries(drumFields.map((field) => [field, cellUnder(headings, line, field)]));
    if (under.drumDiameter === '' || under.depth === '') continue;
    refuseFaults(under);
    const figures = givenFigures(under);
    if (figures.drumDiameter === undefined || figures.depth === undefined) continue;
    const all = { ...(await figuresAround(sheet, host)), ...figures };
    refuseFaults(all, true);
    return givenFigures(all);
  }
  return undefined;
}

/** A figure with a fault is not left out in silence; if it may be on another sheet, it is named, as the row does not show it. */
function refuseFaults(figures: Readonly<Partial<Record<DrumField, CellResult>>>, isElsewhere = false): void {
  for (const field of drumFields) {
    const value = figures[field];
    if (typeof value !== 'object') continue;
    const about = isElsewhere ? `${drumWords[field].label}: ` : '';
    throw new UserError(`This drum cannot be drawn: ${about}${withoutNames(value.error.message || value.error.code)}.`);
  }
}

/** The first cell that is not empty under a heading that means the field. What is in it may not be readable. */
function cellUnder(headings: readonly CellResult[], line: readonly CellResult[], field: DrumField): CellResult {
  for (const words of drumWords[field].headings) {
    const at = headings.findIndex(
      (one, column) => typeof one === 'string' && words.test(one.trim()) && (line[column] ?? '') !== '',
    );
    if (at >= 0) return line[at] ?? '';
  }
  return '';
}

function givenFigures(figures: Readonly<Partial<Record<DrumField, CellResult>>>): DrumFigures {
  return Object.fromEntries(
    Object.entries(figures).filter(
      (entry): entry is [DrumField, CellScalar] => typeof entry[1] !== 'object' && entry[1] !== '' && entry[1] !== 0,
    ),
  );
}
