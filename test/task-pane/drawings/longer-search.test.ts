import { describe, expect, test } from 'vitest';
import { conePattern } from '../../../src/formulas/cone/cone-pattern';
import type { CutPlan } from '../../../src/formulas/cut/cut-plan';
import { type FunctionLibrary, functionLibrary } from '../../../src/functions/function-library';
import type { CellResult } from '../../../src/hosts/workbook-model';
import { siltCalls } from '../../../src/task-pane/cell-formula/calls';
import { readFormula } from '../../../src/task-pane/cell-formula/read-formula';
import { scopeOf } from '../../../src/task-pane/cell-formula/scope';
import { withEffort } from '../../../src/task-pane/drawings/effort-argument';
import { longerPlan } from '../../../src/task-pane/drawings/longer-plan';
import { type CutSearchAnswer, type SearchWorker, searchLonger } from '../../../src/task-pane/drawings/longer-search';
import type { CutSearch } from '../../../src/task-pane/drawings/recognition';
import type { Progress } from '../../../src/task-pane/work';
import { MemoryHost } from '../memory-host';

function changed(formula: string, effort: number): string | undefined {
  const cell = { sheet: 'P', row: 0, column: 0, value: '', formula, source: undefined };
  const call = [...siltCalls(readFormula(formula)!, scopeOf(cell))].find(({ name }) => name === 'CUT.PLAN')!;
  return withEffort(formula, call, effort);
}

describe('the effort in a formula', () => {
  test.each([
    ['=SILT.CUT.PLAN("US",A1:J3,96,48)', '=SILT.CUT.PLAN("US",A1:J3,96,48,,16)'],
    ['=SILT.CUT.PLAN("US",A1:J3,96,48,0.25)', '=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,16)'],
    ['=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,1)', '=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,16)'],
    ['=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,4,TRUE)', '=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,16,TRUE)'],
    ['=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,,TRUE)', '=SILT.CUT.PLAN("US",A1:J3,96,48,0.25,16,TRUE)'],
    ['=SORT(SILT.CUT.PLAN("US",A1:J3,96,48),3)', '=SORT(SILT.CUT.PLAN("US",A1:J3,96,48,,16),3)'],
  ])('%s becomes %s', (before, after) => {
    expect(changed(before, 16)).toBe(after);
  });

  test('stays where it comes from another cell, which others may use too', () => {
    expect(changed('=SILT.CUT.PLAN("US",A1:J3,96,48,0,B1)', 16)).toBeUndefined();
  });
});

const row = conePattern({
  top: 0.5,
  bottom: 0.1,
  height: 0.2,
  pieces: 2,
  lap: 0,
  thickness: 0,
  measured: 'middle',
  clearance: 0,
});
const search = (effort: number, more: Partial<CutSearch> = {}): CutSearch => ({
  place: { sheet: 'P', row: 0, column: 0 },
  formula: '=SILT.CUT.PLAN("metric",B1:K1,2.5,1.25)',
  formulaWith: (next) => changed('=SILT.CUT.PLAN("metric",B1:K1,2.5,1.25)', next),
  arguments: ['metric', [Object.values(row)], 2.5, 1.25, 0],
  effort,
  ...more,
});

const noPlan: CutPlan = { rows: [], sheets: {} as CutPlan['sheets'], notLaid: [] };

/** A worker that answers from a list of lengths by effort. */
function worker(lengths: Readonly<Record<number, number>>, asked: number[] = []): SearchWorker & { ended: boolean } {
  return {
    ended: false,
    search: async ({ effort }): Promise<CutSearchAnswer> => {
      asked.push(effort);
      return { effort, sheets: 1, lengthUsed: lengths[effort]!, plan: [`plan of ${effort}`, noPlan] };
    },
    end() {
      this.ended = true;
    },
  };
}

const goOn: Progress = { step: async () => {}, finishing: () => {} };

describe('a longer search', () => {
  test('takes the least effort that gives the shortest plan', async () => {
    const asked: number[] = [];
    const made = worker({ 1: 2, 4: 1.8, 16: 1.7, 64: 1.7 }, asked);
    const { before, best } = await searchLonger(search(1), () => made, goOn);
    expect(asked).toEqual([1, 4, 16, 64]);
    expect([before.lengthUsed, best.effort]).toEqual([2, 16]);
    expect(made.ended).toBe(true);
  });

  test('begins above the effort that the cell has', async () => {
    const asked: number[] = [];
    const { before, best } = await searchLonger(search(16), () => worker({ 16: 1.7, 64: 1.7 }, asked), goOn);
    expect(asked).toEqual([16, 64]);
    expect(best).toBe(before);
  });

  test('ends its worker when it is told to stop, though the worker never answers', async () => {
    const made = { ...worker({}), search: () => new Promise<CutSearchAnswer>(() => {}) };
    const stop: Progress = { ...goOn, step: () => Promise.reject(new Error('stopped')) };
    await expect(searchLonger(search(1), () => made, stop)).rejects.toThrow('stopped');
    expect(made.ended).toBe(true);
  });

  test('says what the function refuses', async () => {
    const made: SearchWorker = {
      search: async ({ effort }) => ({ effort, refused: 'gap: give less than half the sheet’s width' }),
      end: () => {},
    };
    await expect(searchLonger(search(1), () => made, goOn)).rejects.toThrow('gap: give less');
  });
});

describe('what a longer search leaves in the sheet', () => {
  const planRow = Object.fromEntries(Object.values(row).map((value, i) => [`${'BCDEFGHIJK'[i]}1`, value]));

  async function run(
    lengths: Readonly<Record<number, number>>,
    more: Partial<CutSearch> = {},
    others: Readonly<Record<string, CellResult>> = {},
  ) {
    const host = new MemoryHost({ P: { A1: search(1).formula, ...planRow }, Q: others });
    const said: string[] = [];
    let undo: (() => void) | undefined;
    const keptPlans: FunctionLibrary['keptPlans'] = new Map();
    await longerPlan(
      search(1, more),
      {
        host,
        page: (path) => path,
        functionLibrary: { ...functionLibrary, keptPlans },
        work: (_title, job) => job(goOn),
        notify: (_kind, sentence, action) => {
          said.push(sentence);
          undo = action?.press;
        },
      },
      () => worker(lengths),
    );
    return { host, said, undo, kept: [...keptPlans.keys()] };
  }

  test('is the effort that paid, and Undo takes it back', async () => {
    const { host, said, undo } = await run({ 1: 2, 4: 1.9, 16: 1.9, 64: 1.9 });
    expect(host.at('P', 'A1')).toBe('=SILT.CUT.PLAN("metric",B1:K1,2.5,1.25,,4)');
    expect(said).toEqual(['Effort 4 gives 5.0 % less of the last sheet.']);
    undo?.();
    await expect.poll(() => host.at('P', 'A1')).toBe(search(1).formula);
  });

  test('is the plan itself too, so that the cell need not search for it again', async () => {
    expect((await run({ 1: 2, 4: 1.9, 16: 1.8, 64: 1.8 })).kept).toEqual(['plan of 16']);
    expect((await run({ 1: 2, 4: 2, 16: 2, 64: 2 })).kept).toEqual([]);
  });

  test('is the effort in every formula of the same plan, so that sheets and places come from one search', async () => {
    const same = '=SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25)';
    const both =
      '=IF(SUM(SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25))>1,SILT.CUT.PLAN("metric",P!B1:K1,2.5,1.25,0,1),"")';
    const unlike = {
      A3: '=SILT.CUT.SHEETS("metric",P!B1:K1,2,1.25)',
      A4: '=SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25,0.01)',
      A5: '=SILT.CUT.SHEETS("US",P!B1:K1,2.5,1.25)',
      A6: '=SILT.CUT.SHEETS("no units",P!B1:K1,2.5,1.25)',
      A7: '=SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25,0,4)',
      A8: '=SILT.CUT.SHEETS("metric",nowhere,2.5,1.25)',
    };
    const { host, said, undo } = await run({ 1: 2, 4: 1.9, 16: 1.9, 64: 1.9 }, {}, { A1: same, A2: both, ...unlike });
    expect(host.at('Q', 'A1')).toBe('=SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25,,4)');
    expect(host.at('Q', 'A2')).toBe(both.replace('1.25))', '1.25,,4))').replace('0,1)', '0,4)'));
    for (const [address, formula] of Object.entries(unlike)) expect(host.at('Q', address)).toBe(formula);
    expect(said).toEqual(['Effort 4 gives 5.0 % less of the last sheet.']);
    undo?.();
    await expect.poll(() => host.at('Q', 'A2')).toBe(both);
    expect([host.at('Q', 'A1'), host.at('P', 'A1')]).toEqual([same, search(1).formula]);
    // One step for the effort and one to take it back.
    expect(host.steps).toHaveLength(2);
  });

  test('names the cells whose effort is elsewhere', async () => {
    const others = { A1: '=SILT.CUT.SHEETS("metric",P!B1:K1,2.5,1.25,,C9)', C9: 1 };
    const { host, said } = await run({ 1: 2, 4: 1.9, 16: 1.9, 64: 1.9 }, {}, others);
    expect(host.at('Q', 'A1')).toBe(others.A1);
    expect(said[0]).toBe('Effort 4 gives 5.0 % less of the last sheet; type it too where Q!A1 takes its effort from.');
  });

  test('is nothing where no effort paid', async () => {
    const { host, said } = await run({ 1: 2, 4: 2, 16: 2, 64: 2.1 });
    expect(host.at('P', 'A1')).toBe(search(1).formula);
    expect(said[0]).toMatch(/^No shorter plan was found/);
  });

  test('is a sentence where the effort comes from another cell', async () => {
    const { host, said } = await run({ 1: 2, 4: 1, 16: 1, 64: 1 }, { formulaWith: () => undefined });
    expect(host.at('P', 'A1')).toBe(search(1).formula);
    expect(said[0]).toMatch(/^Effort 4 gives 50\.0 % less of the last sheet; type it where/);
  });
});
