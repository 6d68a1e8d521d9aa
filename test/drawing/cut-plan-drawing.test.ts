import { expect, test } from 'vitest';
import { cutPlanDrawing } from '../../src/drawing/cut-plan-drawing';
import { toDxf } from '../../src/drawing/dxf';
import { readPattern } from '../../src/formulas/cone/read-pattern';
import type { CutRow } from '../../src/formulas/cut/cut-plan';
import { pieceHolds } from '../formulas/cut/piece-shape';
import { readDxf } from './read-dxf';
import { drumCone, metric, patternOf, us } from './samples';

const patterns = [drumCone(2, 0.02), patternOf(0.3, 0.3, 0.25, 1, 0.02)];
const plan: readonly CutRow[] = [
  { pattern: 1, piece: 1, sheet: 1, x: 0.45, y: 0.1, direction: Math.PI / 2 },
  { pattern: 1, piece: 2, sheet: 1, x: 1.4, y: 0.6, direction: 4 },
  { pattern: 2, piece: 1, sheet: 2, x: 0.01, y: 0.01, direction: Math.PI / 2 },
];
const input = { patterns, plan, sheetLength: 2.4, sheetWidth: 1.2, profile: metric };
const drawing = cutPlanDrawing(input);
const texts = drawing.entities.filter((entity) => entity.shape === 'text');

test('every piece carries its pattern row and number, inside its outline', () => {
  for (const { pattern, piece, sheet, x, y, direction } of plan.filter((row) => row.pattern === 1)) {
    const label = texts.find(({ text }) => text === `${pattern}.${piece}`)!;
    // The first of two sheets lies above the second.
    const base = texts.find(({ text }) => text === `Sheet ${sheet} of 2`)!.at.y - 1.5 * drawing.textHeight - 1.2;
    const [dx, dy] = [label.at.x - x, label.at.y - base - y];
    const along = dx * Math.cos(direction) + dy * Math.sin(direction);
    const aside = dy * Math.cos(direction) - dx * Math.sin(direction);
    expect(pieceHolds(readPattern(patterns[pattern - 1]!, 'patterns', pattern), along, aside)).toBe(true);
  }
});

test('a sector’s arcs stand about the plan’s arc center, turned as the plan says', () => {
  const { arcs } = readDxf(toDxf(drawing));
  const second = arcs.filter(({ layer, center }) => layer === 'cut' && Math.abs(center.x - 1400) < 0.1);
  expect(second).toHaveLength(2);
  const outer = second.toSorted((a, b) => b.radius - a.radius)[0]!;
  const clockwiseEdge = 4 - patterns[0]!.sectorAngle! / 2;
  expect(outer.startAngle).toBeCloseTo(clockwiseEdge, 6);
});

test('a rectangle turned a quarter keeps its lower-left corner and lies across', () => {
  const { lines } = readDxf(toDxf(drawing));
  const edges = lines.filter(({ layer }) => layer === 'cut').flatMap(({ vertices }) => vertices);
  const corner = edges.filter(({ x, y }) => x < 300 && y < 1200);
  const { blankLength, blankWidth } = patterns[1]!;
  expect(Math.min(...corner.map(({ x }) => x))).toBeCloseTo(10, 4);
  expect(Math.max(...corner.map(({ x }) => x))).toBeCloseTo(10 + blankWidth * 1000, 4);
  expect(Math.max(...corner.map(({ y }) => y))).toBeCloseTo(10 + blankLength * 1000, 4);
});

test('what is left in one piece beyond the last cut is noted with its size', () => {
  const left = 2400 - (10 + patterns[1]!.blankWidth * 1000);
  const offcuts = texts.filter(({ text }) => text.startsWith('offcut'));
  expect(offcuts.at(-1)!.text).toBe(`offcut\n${Number(left.toFixed(1))} mm\nby 1200 mm`);
});

test('notes count pieces, patterns and sheets; sizes of the sheet are in the profile’s unit', () => {
  expect(drawing.notes[0]).toContain('3 pieces of 2 patterns on 2 sheets');
  const sizes = cutPlanDrawing({ ...input, profile: us }).entities.filter(({ shape }) => shape === 'length dimension');
  expect(sizes.map((one) => ('text' in one ? one.text : ''))).toContain('sheet length 94.49 in (94 1/2)');
});

test('a plan that names a pattern row that was not given is refused', () => {
  expect(() => cutPlanDrawing({ ...input, plan: [{ ...plan[0]!, pattern: 3 }] })).toThrow(/pattern row 3/);
});
