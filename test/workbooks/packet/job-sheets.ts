import type { CellResult } from '../../../src/hosts/workbook-model';
import type { SheetCells } from '../../../src/workbooks/packet/packet-cells';
import { call, spill } from '../../functions/call';

export interface Drum {
  readonly name: string;
  readonly diameter: number;
  readonly height: number;
  readonly pieces: number;
}

/** Ten drums, no two alike, in millimeters or inches. */
export function drumsUnder(units: 'US' | 'metric'): readonly Drum[] {
  return Array.from({ length: 10 }, (_, i) => {
    const diameter = units === 'US' ? 18.3 + i / 2 : 470 + 12.5 * i;
    return { name: `Drum ${i + 1}`, diameter, height: diameter * 0.42, pieces: 1 + (i % 3) };
  });
}

/** Sheets laid out as the ready-made cone cut plan, with figures that its functions give. */
export function jobSheets(units: 'US' | 'metric', drums: readonly Drum[]): readonly SheetCells[] {
  const us = units === 'US';
  const [drain, lap, depth, spacing] = us ? [4, 0.75, 20, 1.5] : [100, 20, 500, 40];
  const [length, width, gap] = us ? [96, 48, 0.25] : [2440, 1220, 5];
  const stand = us ? 22.5 : 570;
  const rise = us ? 1 : 25;
  const patterns = drums.map(
    ({ diameter, height, pieces }) => spill('CONE.PATTERN', units, diameter, drain, height, pieces, lap)[0] ?? [],
  ) as CellResult[][];
  const mixes = drums.map(({ diameter, height }) =>
    call('CONE.BACKFILL', units, diameter, diameter, drain, height, 0, 'fit', rise),
  ) as number[];
  const waters = drums.map(({ diameter, height }) =>
    call('TANK.VOLUME', units, diameter, depth, drain, height),
  ) as number[];
  const sum = mixes.reduce((total, mix) => total + mix, 0);
  const rows = (name: string, ...cells: readonly CellResult[][]): SheetCells => ({ name, rows: cells });
  const block = (name: string, ...values: unknown[]) => spill(name, units, ...values) as CellResult[][];
  return [
    rows(
      'Drums',
      ['Measured drums'],
      ['Drum', 'What it held', 'Drain bore (x)', 'Cone height (x)', 'Water above cone (x)', 'Diameter used (x)'],
      ...drums.map(({ name, diameter, height }) => [name, 'olives', drain, height, depth, diameter]),
      [''],
      ['Sheet thickness', '', us ? 0.0625 : 1.5],
      ['Length of a sheet', '', length],
      ['Width of a sheet', '', width],
      ['Gap between pieces', '', gap],
    ),
    rows(
      'Patterns',
      ['Drum', ...(spill('CONE.PATTERN', units, 20, 4, 9, 1, 0, 0, 'fit', 0, true)[0] as string[])],
      ...patterns.map((row, i) => [drums[i]?.name ?? '', ...row]),
      [''],
      ['Rivets along one seam, spacing at most', '', spacing],
    ),
    rows(
      'Cut plan',
      ['Sheets to buy, and where each piece goes'],
      ...block('CUT.SHEETS', patterns, length, width, gap, 1, true),
      [''],
      ...block('CUT.PLAN', patterns, length, width, gap, 1, true),
    ),
    rows(
      'Base mix',
      ['Drum', 'Base mix (x)', 'Water held (x)'],
      ...drums.map(({ name }, i) => [name, mixes[i] ?? '', waters[i] ?? '']),
      [''],
      ['Cone’s foot above the floor', rise],
      ['Parts of light aggregate', 6],
      ['Spilled and left in the mixer', 0.1],
      ['Cement in a bag', us ? 94 : 25],
      ...block('CONE.MIX', sum, 6, 0.1, us ? 94 : 25, true),
    ),
    rows(
      'Stand and ports',
      ['Drum', ...(spill('TANK.WEIGHT', units, 100, 1, '650 kg/m3', 10, 4, true)[0] as string[])],
      ...drums.map(({ name }, i) => [
        name,
        ...((spill('TANK.WEIGHT', units, waters[i], mixes[i], '650 kg/m3', 10, 4)[0] ?? []) as CellResult[]),
      ]),
      [''],
      ['Height of the pail', us ? 14.5 : 370],
      ['Valve below the stand’s top', us ? 6 : 150],
      ['Legs', 4],
      ['Height of the stand (x)', stand],
    ),
    rows('Marking out', ['Drum', '', 'Degrees between marks', 15]),
  ];
}
