/**
 * A sheet with many formulas, computed without a page: the add-in's functions beside built-in ones, many spilling rows
 * beside one stacked call, and one change beside a whole calculation. Each round has other numbers, so that nothing is
 * found from the round before.
 */
import { textTable } from '../../command-line/text-table';
import type { HostFunction } from '../../hosts/univer/function-set';
import { openHeadless } from '../../hosts/univer/headless';
import { sourceFunctions } from '../../hosts/univer/source-functions';
import type { CellData } from '../../hosts/workbook-model';
import { median } from './bench-browser';
import { figure, verdictText } from './bench-wanted';

const rounds = 5;
const formulas = 10_000;
const spills = 1_000;
const sheet = 'Bench';

/** Every row has a diameter of its own in its first cell, and what its formula is made of in the second. */
function filled(rows: number, round: number, formula: (row: number) => string | undefined): readonly CellData[] {
  return Array.from({ length: rows }, (_, row): CellData[] => {
    const made = formula(row);
    const diameter = { row, column: 0, value: 20 + (row + round * 0.37) / 1000 };
    return made === undefined ? [diameter] : [diameter, { row, column: 1, formula: made }];
  }).flat();
}

interface Computed {
  /** Milliseconds of computing every formula, and what follows from one changed cell. */
  readonly all: number;
  readonly change: number;
}

/** As many changes as a person makes in some minutes, in rows apart from each other. */
const changes = 25;

/** Computes the cells anew, then what follows from each of some changes; refuses results that are errors. */
async function computed(
  functions: readonly HostFunction[],
  cells: readonly CellData[],
  last: { readonly row: number; readonly column: number },
): Promise<Computed> {
  const host = await openHeadless(functions, { sheets: [{ name: sheet, cells }] });
  const timed = async (from: 'changes' | 'everything') => {
    const begun = performance.now();
    await host.recalculate(from);
    return performance.now() - begun;
  };
  try {
    const all = await timed('everything');
    const times: number[] = [];
    for (let i = 0; i < changes; i++) {
      const row = Math.floor((i * last.row) / changes);
      const before = host.readCell(sheet, row, 1).value;
      host.setCells(sheet, row, 0, [[31.4 + i]]);
      times.push(await timed('changes'));
      const after = host.readCell(sheet, row, 1).value;
      if (typeof after !== 'number' || after === before) throw new Error(`row ${row + 1} does not follow its diameter`);
    }
    const end = host.readCell(sheet, last.row, last.column).value;
    if (typeof end !== 'number') throw new Error(`the last row gives ${JSON.stringify(end)}`);
    return { all, change: median(times) };
  } finally {
    host.dispose();
  }
}

const cone = (diameter: string) => `=SILT.CONE.PATTERN("US",${diameter},4,9.25,1,0.75)`;

/** The times of one sheet over all rounds. */
async function roundsOf(
  functions: readonly HostFunction[],
  rows: number,
  formula: (row: number) => string | undefined,
  last = { row: rows - 1, column: 1 },
): Promise<{ readonly all: number; readonly change: number }> {
  const times: Computed[] = [];
  for (let round = 0; round < rounds; round++) {
    times.push(await computed(functions, filled(rows, round, formula), last));
  }
  return { all: median(times.map(({ all }) => all)), change: median(times.map(({ change }) => change)) };
}

/** The engine with many formulas, as a table; what is wanted are ratios, which no machine's speed changes much. */
export async function engineTable(): Promise<string> {
  const functions = await sourceFunctions();
  const silt = await roundsOf(functions, formulas, (row) => `=SILT.CONE.HEIGHT("US",A${row + 1},4,45)`);
  const builtIn = await roundsOf(functions, formulas, (row) => `=ROUND((A${row + 1}-4)/2*TAN(RADIANS(45)),9)`);
  const spilling = await roundsOf(functions, spills, (row) => cone(`A${row + 1}`), { row: spills - 1, column: 3 });
  const stacked = await roundsOf(functions, spills, (row) => (row === 0 ? cone(`A1:A${spills}`) : undefined), {
    row: spills - 1,
    column: 3,
  });
  const line = (
    what: string,
    one: number,
    beside: string,
    other: number,
    wanted: { atMost?: number; below?: number },
  ) => [what, figure(one), beside, figure(other), figure(one / other), verdictText(one / other, wanted)];
  return textTable(
    ['computing', 'ms', 'beside', 'ms', 'ratio', 'wanted'],
    [
      line('10,000 formulas with a SILT function', silt.all, '10,000 of built-in functions', builtIn.all, {
        atMost: 2,
      }),
      line('one change among them', silt.change, 'all of them', silt.all, { below: 0.05 }),
      line('1,000 rows that spill a pattern', spilling.all, 'one call for all rows', stacked.all, { atMost: 5 }),
      line('one change among them', spilling.change, 'all of them', spilling.all, {}),
    ],
  );
}
