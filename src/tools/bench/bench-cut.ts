/**
 * Cut plans beside the packing of bounding boxes by a library, on the reference sets.
 */
import { type IOption, MaxRectsPacker } from 'maxrects-packer';
import { cutSheets } from '../../formulas/cut/cut-plan';
import { missed, verdictText } from './bench-wanted';
import { overBest } from './cut-best-lengths';
import { longSets, type ReferenceSet, referenceSets } from './cut-reference-sets';

export interface CutComparison {
  readonly name: string;
  readonly pieces: number;
  readonly blunt: boolean;
  readonly sheets: number;
  readonly boxSheets: number;
  /** Area of the pieces, m2, and of the sheet up to the last cut, by the plan and by boxes. */
  readonly area: number;
  readonly stock: number;
  readonly boxStock: number;
  /** How much longer than the best known plan, as a share. */
  readonly overBest: number;
  readonly milliseconds: number;
}

/** Plans every reference set once, and packs its boxes. */
export function compareCutPlans(
  sets: readonly ReferenceSet[] = [...referenceSets, ...longSets],
): readonly CutComparison[] {
  return sets.map((set) => {
    const { name, patterns, sheetLength, sheetWidth } = set;
    const begun = performance.now();
    const total = cutSheets(patterns, set);
    const milliseconds = performance.now() - begun;
    const boxes = fewestBoxSheets(set);
    const upToLastCut = ({ sheets, lengthUsed }: { readonly sheets: number; readonly lengthUsed: number }) =>
      ((sheets - 1) * sheetLength + lengthUsed) * sheetWidth;
    return {
      name,
      pieces: patterns.reduce((sum, { pieces }) => sum + pieces, 0),
      blunt: set.blunt === true,
      sheets: total.sheets,
      boxSheets: boxes.sheets,
      area: total.areaUsed,
      stock: upToLastCut(total),
      boxStock: upToLastCut(boxes),
      overBest: overBest(set, total),
      milliseconds,
    };
  });
}

/** How many times the fill of boxes the plans reach over some sets together. */
export function fillOverBoxes(comparisons: readonly CutComparison[]): number {
  const sum = (figure: (one: CutComparison) => number) => comparisons.reduce((total, one) => total + figure(one), 0);
  return sum(({ boxStock }) => boxStock) / sum(({ stock }) => stock);
}

/** The comparison as a table, with the sums that matter under it. */
export function cutComparisonTable(comparisons: readonly CutComparison[]): string {
  const line = (cells: readonly string[]) =>
    cells.map((cell, i) => (i === 0 ? cell.padEnd(32) : cell.padStart(9))).join('');
  const rows = comparisons.map(
    ({ name, pieces, sheets, boxSheets, area, stock, boxStock, overBest: over, milliseconds }) =>
      line([
        name,
        ...[pieces, sheets, boxSheets].map(String),
        ...[area / stock, area / boxStock, boxStock / stock].map((share) => share.toFixed(3)),
        `${(100 * over).toFixed(2)} %`,
        milliseconds.toFixed(0),
      ]),
  );
  const all = fillOverBoxes(comparisons);
  const blunt = fillOverBoxes(comparisons.filter((one) => one.blunt));
  const more = comparisons.filter(({ sheets, boxSheets }) => sheets > boxSheets).map(({ name }) => name);
  const slowest = Math.max(...comparisons.map(({ milliseconds }) => milliseconds));
  const over = comparisons.map((one) => one.overBest);
  const average = over.reduce((sum, one) => sum + one, 0) / over.length;
  return [
    line(['cut plan', 'pieces', 'sheets', 'by boxes', 'fill', 'by boxes', 'times', 'over best', 'ms']),
    ...rows,
    '',
    `fill to the last cut, times that of boxes, all sets: ${all.toFixed(3)} (${verdictText(all, { atLeast: 1.2 })})`,
    `the same, sectors of 100 to 140 degrees: ${blunt.toFixed(3)} (${verdictText(blunt, { atLeast: 1.1 })})`,
    `sets that take more sheets than boxes do: ${more.join(', ') || 'none'} (none: ${more.length === 0 ? 'met' : missed})`,
    `longer than the best known plans, on average: ${(100 * average).toFixed(2)} % (${verdictText(average, { below: 0.01 })})`,
    `the longest of them: ${(100 * Math.max(...over)).toFixed(2)} % (${verdictText(Math.max(...over), { below: 0.03 })})`,
    `slowest set: ${slowest.toFixed(0)} ms (${verdictText(slowest, { below: 1000 }, 'ms')})`,
  ].join('\n');
}

interface BoxPacking {
  readonly sheets: number;
  readonly lengthUsed: number;
}

/** Its rules by number, because their names are not exported to every kind of module: area, edge, width first. */
const logics = [0, 1, 2] as const;

/** The best layout of the blanks by the library with each of its rules, along and across the sheet. */
function fewestBoxSheets(set: ReferenceSet): BoxPacking {
  const packings: BoxPacking[] = [];
  for (const logic of logics) {
    for (const smart of [false, true]) {
      for (const across of [false, true]) packings.push(packBoxes(set, { logic, smart }, across));
    }
  }
  return packings.reduce((best, one) =>
    one.sheets < best.sheets || (one.sheets === best.sheets && one.lengthUsed < best.lengthUsed) ? one : best,
  );
}

/** A box for the library; when it turns one, it sets a flag and leaves the sides unchanged. */
interface Box {
  readonly width: number;
  readonly height: number;
  x: number;
  y: number;
  rot: boolean;
  [further: string]: unknown;
}

/** The library is given micrometers, as some of its rules mix lengths with their products. */
const scale = 1e6;

function packBoxes(set: ReferenceSet, rule: IOption, across: boolean): BoxPacking {
  const { patterns } = set;
  const [length, width, gap] = [set.sheetLength * scale, set.sheetWidth * scale, set.gap * scale];
  const options = { ...rule, pot: false, square: false, allowRotation: true, border: gap };
  const packer = new MaxRectsPacker<Box>(across ? width : length, across ? length : width, gap, options);
  packer.addArray(
    patterns.flatMap(({ blankLength, blankWidth, pieces }) =>
      Array.from({ length: pieces }, () => ({
        ...{ width: blankLength * scale, height: blankWidth * scale },
        ...{ x: 0, y: 0, rot: false },
      })),
    ),
  );
  const ends = packer.bins.map(({ rects }) =>
    Math.max(...rects.map(({ x, y, width: w, height: h, rot }) => (across ? y + (rot ? w : h) : x + (rot ? h : w)))),
  );
  // The sheet that is used least counts as the last one.
  return { sheets: ends.length, lengthUsed: Math.min(...ends) / scale };
}
