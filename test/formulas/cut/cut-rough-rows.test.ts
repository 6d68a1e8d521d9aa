/** Rough rows: held to where the outline of a piece crosses a line through the middle of each row. */
import { describe, expect, it } from 'vitest';
import { prepareJob, roughJob } from '../../../src/formulas/cut/cut-job';
import { grownBy } from '../../../src/formulas/cut/cut-sheet';
import type { Piece } from '../../../src/formulas/cut/piece';
import { turnedBox } from '../../../src/formulas/cut/piece-fit';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { box, degree, layAt, rowsOf, sector } from './laid-shapes';
import { stretchesOf } from './plain-sheet';

const pieces: readonly (readonly [string, Piece])[] = [
  ['a rectangle', box(0.8, 0.3)],
  ['a narrow sector', sector(0.2, 0.5, 40)],
  ['most of a ring', sector(0.15, 0.4, 300)],
  ['a sector to its point', sector(0, 0.4, 100)],
  ['a sector with a lap', sector(0.2, 0.5, 90, 0.03)],
  ['a lap that is wider than the inner radius', sector(0.02, 0.5, 120, 0.05)],
];
const turns = [7, 25, 85, 130, 205, 290].map((degrees) => degrees * degree);
const height = 0.037;

/** Where the outline, turned about the origin, crosses a height, from left to right. */
function crossingsAt(piece: Piece, turn: number, y: number): readonly number[] {
  const found: number[] = [];
  for (const part of pieceOutline(piece)) {
    if ('line' in part) {
      const [from, to] = part.line.map((end) => ({
        x: end.x * Math.cos(turn) - end.y * Math.sin(turn),
        y: end.x * Math.sin(turn) + end.y * Math.cos(turn),
      }));
      const share = (y - from!.y) / (to!.y - from!.y);
      if (share >= 0 && share < 1) found.push(from!.x + share * (to!.x - from!.x));
      continue;
    }
    const { radius, start, sweep } = part.arc;
    for (const x of [-1, 1].map((side) => side * Math.sqrt(radius ** 2 - y ** 2))) {
      const least = turn + Math.min(start, start + sweep);
      const turned = (Math.atan2(y, x) - least) / (2 * Math.PI);
      if ((turned - Math.floor(turned)) * 2 * Math.PI < Math.abs(sweep)) found.push(x);
    }
  }
  return found.sort((a, b) => a - b);
}

describe.each(pieces)('%s on rough rows', (_, piece) => {
  it('has the stretches at the middle of each row', () => {
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, height, true);
      for (let row = 0; row < rows.count; row++) {
        const crossings = crossingsAt(piece, turn, (row + 0.5) * height - rows.originY);
        expect(crossings.length % 2).toBe(0);
        const stretches = stretchesOf(rows, row).flat();
        expect(stretches).toEqual(crossings.map((x) => expect.closeTo(x + rows.originX, 9)));
        expect(rows.lefts[row]).toBe(stretches[0]);
      }
    }
  });

  it('has as many rows as its width less 0.7 of one needs, with their middle at its own', () => {
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, height, true);
      const { length, width } = turnedBox(piece)(turn);
      const { left, bottom, top } = layAt(piece, { x: 0, y: 0, turn });
      expect(rows.count).toBe(Math.ceil(width / height - 0.7));
      expect([rows.length, rows.width]).toEqual([expect.closeTo(length, 12), expect.closeTo(width, 12)]);
      expect((rows.count / 2) * height - rows.originY).toBeCloseTo((bottom + top) / 2, 12);
      expect(rows.originX).toBeCloseTo(-left, 12);
    }
  });
});

describe('rough rows worked by hand', () => {
  it('are those of a rectangle, by its width', () => {
    const of = (width: number) => rowsOf({ shape: 'rectangle', length: 2, width, lap: 0 }, 0, 0.1, true);
    expect([0.01, 0.169, 0.171, 0.269, 0.271].map((width) => of(width).count)).toEqual([1, 1, 2, 2, 3]);
    expect([...of(0.269).stretches]).toEqual([0, 2, 0, 2]);
    // Two rows of 0.1 are less than 0.26 by 0.06: the piece reaches over them by 0.03 on either side.
    expect(of(0.26).originY).toBeCloseTo(-0.03, 12);
    expect(of(0.18).originY).toBeCloseTo(0.01, 12);
  });

  it('are grown by the gap from middle to middle', () => {
    const rows = rowsOf(box(0.2, 0.1), 0, 0.05, true);
    expect(rows.count).toBe(2);
    const { below, starts, stretches } = grownBy(rows, 0.12, 0.05, 20, { spent: 0 }, true);
    expect(below).toBe(3);
    expect(starts).toHaveLength(2 + 2 * 3 + 1);
    const aside = [0.15, 0.1, 0.05, 0, 0, 0.05, 0.1, 0.15].map((rise) => Math.sqrt(Math.max(0, 0.12 ** 2 - rise ** 2)));
    expect([...stretches]).toEqual(aside.flatMap((side) => [expect.closeTo(-side, 8), expect.closeTo(0.2 + side, 8)]));
  });
});

describe('a job on rough rows', () => {
  const alike = [sector(0.1, 0.3, 90), sector(0.1, 0.3, 90), box(0.5, 0.2)];
  const sheet = { length: 2.02, width: 1.02, gap: 0.01 };
  const job = prepareJob(alike, sheet);
  const rough = roughJob(job);

  it('has the pieces of the job at its turns, on 42 rows', () => {
    expect([rough.rowCount, rough.isRough, job.isRough]).toEqual([42, true, false]);
    expect([rough.pieces, rough.sheet, rough.length, rough.width]).toEqual([job.pieces, sheet, job.length, job.width]);
    expect(rough.shapes).toHaveLength(2);
    for (const [i, shape] of rough.shapes.entries()) {
      expect(shape.turns).toEqual(job.shapes[i]!.turns);
      for (const turn of shape.turns) expect(shape.at(turn)).toEqual(rowsOf(shape.piece, turn, 1 / 42, true));
    }
  });

  it('grows its pieces roughly, and knows its own shapes again', () => {
    const rows = rough.shapes[0]!.at(rough.shapes[0]!.turns[0]!)!;
    const budget = { spent: 0 };
    expect(rough.grown(rows, budget)).toEqual(grownBy(rows, 0.01, rough.rowHeight, 42, { spent: 0 }, true));
    expect(rough.grown(rows, budget)).not.toEqual(grownBy(rows, 0.01, rough.rowHeight, 42, { spent: 0 }));
    const again = roughJob(rough);
    expect(again.shapeOf(0)).toBe(rough.shapeOf(0));
    // As many rows that are not rough are others.
    expect(prepareJob(alike, sheet, 42, rough).shapeOf(0)).not.toBe(rough.shapeOf(0));
  });
});
