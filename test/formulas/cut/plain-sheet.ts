/**
 * A sheet as the list of what lies on it: each row of a piece is rectangles, and each two rectangles of two pieces must be
 * the gap apart, by Pythagoras. Slow and plain, to hold the quick one to.
 */
import type { Job } from '../../../src/formulas/cut/cut-job';
import type { Layout, Spot } from '../../../src/formulas/cut/cut-layout';
import type { Rows } from '../../../src/formulas/cut/cut-rows';

/** Pieces that touch are kept apart by this, m. */
const apart = 1e-9;
const rounding = 1e-12;

interface Laid {
  readonly rows: Rows;
  readonly x: number;
  readonly row: number;
}

export class PlainSheet {
  private readonly laid: Laid[] = [];
  private readonly rowHeight: number;
  private readonly gap: number;

  constructor(rowHeight: number, gap: number) {
    this.rowHeight = rowHeight;
    this.gap = gap;
  }

  put(rows: Rows, x: number, row: number): void {
    this.laid.push({ rows, x, row });
  }

  isClear(rows: Rows, x: number, row: number): boolean {
    return this.ends(rows, row).every(([left, right]) => x >= right - rounding || x <= left + rounding);
  }

  /** The least place at or after `from` for a piece with its bottom on a row. */
  leftmost(rows: Rows, row: number, from: number): number {
    const ends = this.ends(rows, row);
    let x = from;
    for (;;) {
      const inTheWay = ends.find(([left, right]) => x > left + rounding && x < right - rounding);
      if (inTheWay === undefined) return x;
      x = inTheWay[1];
    }
  }

  /** Between which ends of x the piece would come too near to some rectangle. */
  private ends(rows: Rows, row: number): (readonly [left: number, right: number])[] {
    const ends: (readonly [number, number])[] = [];
    for (const other of this.laid)
      for (let i = 0; i < rows.count; i++)
        for (let j = 0; j < other.rows.count; j++) {
          const rise = (Math.abs(row + i - other.row - j) - 1) * this.rowHeight;
          if (rise >= this.gap * (1 - rounding)) continue;
          const aside = Math.sqrt(this.gap ** 2 - Math.max(0, rise) ** 2) + apart;
          for (const [from, to] of stretchesOf(rows, i))
            for (const [low, high] of stretchesOf(other.rows, j))
              ends.push([other.x + low - aside - to, other.x + high + aside - from]);
        }
    return ends;
  }
}

/** The stretches of a row as pairs. */
export function stretchesOf({ starts, stretches }: Rows, row: number): readonly (readonly [number, number])[] {
  const ends = [...stretches.slice(starts[row], starts[row + 1])];
  return ends.flatMap((from, i) => (i % 2 === 0 ? [[from, ends[i + 1]!] as const] : []));
}

/** Spots of a layout that are off the sheet, beside a row, or nearer than the gap to a spot before them. */
export function badSpots(job: Job, { spots }: Pick<Layout, 'spots'>): readonly Spot[] {
  const sheets = new Map<number, PlainSheet>();
  return spots.filter((spot) => {
    const { rows, sheet, x, y } = spot;
    const on = sheets.get(sheet) ?? new PlainSheet(job.rowHeight, job.sheet.gap);
    sheets.set(sheet, on);
    const row = Math.round(y / job.rowHeight);
    const isGood =
      Math.abs(row * job.rowHeight - y) < 1e-9 &&
      row >= 0 &&
      row + rows.count <= job.rowCount &&
      x >= -1e-12 &&
      x + rows.length <= job.length + 1e-9 &&
      on.isClear(rows, x, row);
    on.put(rows, x, row);
    return !isGood;
  });
}
