import { describe, expect, it } from 'vitest';
import { coefficients } from '../../../src/catalogue/coefficients/all';
import { numberFormats } from '../../../src/catalogue/number-formats';
import { type NamedInput, wordsOf } from '../../../src/catalogue/plan/named-input';
import { inputKeys, scenarioInputs } from '../../../src/catalogue/plan/scenario-inputs';
import { compareRows, resultKeys, resultName, scenarioResults } from '../../../src/catalogue/plan/scenario-results';
import { inputName } from '../../../src/catalogue/reading/input-table';
import { stockingScenarios } from '../../../src/workbooks/sheets/stocking-scenarios/workbook';
import { spill } from '../../functions/call';
import { farm, smallFarm } from '../../functions/plan-farm';

const sheet = (name: string) => stockingScenarios('US').sheets.find((one) => one.name === name)!;

describe('an input of the table', () => {
  const rows = inputKeys.map((key) => ({
    key,
    name: inputName(scenarioInputs, key),
    spec: scenarioInputs[key] as NamedInput,
  }));

  it('has its coefficient in REF.LIST where its default is one: add it to src/catalogue/coefficients', () => {
    const keys = new Set(coefficients.map(({ key }) => key));
    const needed = rows.flatMap(({ name, spec }) =>
      'reader' in spec ? [spec.coefficient] : 'default' in spec && spec.default === 'coefficient' ? [name] : [],
    );
    expect(needed.filter((key) => key !== undefined && !keys.has(key))).toEqual([]);
  });

  it('says where its default comes from: give the row of scenario-inputs.ts a source, or a coefficient', () => {
    const listed = spill('PLAN.INPUTS', 'metric');
    expect(listed.map(([name]) => name)).toEqual(rows.map(({ name }) => name));
    const silent = listed.filter(([, , , byDefault, source]) => byDefault !== 'not given' && source === '');
    expect(silent.map(([name]) => name)).toEqual([]);
  });

  it('is read in a whole farm: add its row to test/functions/plan-farm.ts', () => {
    const typed = new Set(farm.map(([name]) => name));
    const untried = rows.map(({ name }) => name).filter((name) => !typed.has(name) && name !== 'feed');
    expect(untried).toEqual([]);
  });

  it('has the words of a list short enough for a workbook to offer', () => {
    for (const { name, spec } of rows) expect(wordsOf(spec).join(',').length, name).toBeLessThan(250);
  });

  it('stands in the list of inputs that the workbook shows, and nothing beyond it is boxed', () => {
    const boxed = sheet('Inputs').cells.filter(({ column, row }) => column === 0 && row >= 4);
    expect(boxed.length).toBe(inputKeys.length);
  });
});

describe('a result of the table', () => {
  it('is a figure or words in a whole farm: see planResults', () => {
    for (const scenario of [farm, smallFarm]) {
      const block = spill('PLAN.COMPARE', 'metric', scenario);
      expect(block.map(([name]) => name)).toEqual(compareRows);
      for (const [name, , value] of block) expect(['number', 'string'], String(name)).toContain(typeof value);
    }
  });

  it('has its number format in its own row of the workbook', () => {
    const { cells } = sheet('Compare');
    for (const [index, key] of resultKeys.entries()) {
      const shown = cells.filter(({ row, column }) => row === 4 + index && column >= 2);
      const wanted = numberFormats[scenarioResults[key].format];
      for (const { style } of shown)
        if (key !== 'firstLimit') expect(style?.numberFormat, resultName(key)).toBe(wanted);
    }
  });

  it('is found by a chart under its own name', () => {
    const names = (sheet('Compare').charts ?? []).flatMap(({ series }) => series.map(({ name }) => name));
    expect(names.length).toBeGreaterThan(5);
    for (const name of names) {
      const row = Number(/\$(\d+)$/.exec(name)?.[1]);
      expect(scenarioResults[resultKeys[row - 5]!].kind, name).not.toBe('choice');
      expect(compareRows[row - 5], name).toBeDefined();
    }
  });
});

describe('the other sheets of a scenario', () => {
  const everything = [...farm.filter(([name]) => name !== 'media volume'), ['media volume', 'none']] as const;

  it('leave PLAN.LIMIT room for every stage that there can be', () => {
    const limit = sheet('Limit');
    const section = limit.cells.find(({ value }) => value === 'Cautions for this scenario')!.row;
    const rows = spill('PLAN.LIMIT', 'US', everything, true);
    expect(rows.map(([stage]) => stage)).toContain('circulation, carbon dioxide');
    expect(rows.map(([stage]) => stage)).toContain('gravel beds, nitrification');
    expect(5 + rows.length).toBeLessThan(section);
  });

  it('chart the places of PLAN.BALANCE, all of them and nothing else', () => {
    const rows = spill('PLAN.BALANCE', 'US', farm, true);
    for (const { series } of sheet('Balance').charts ?? []) {
      const [first, last] = /\$A\$(\d+):\$A\$(\d+)$/.exec(series[0]!.categories!)!.slice(1).map(Number);
      const charted = rows.slice(first! - 6, last! - 5).map(([where]) => where);
      expect(charted).toEqual(rows.map(([where]) => where).slice(2, -2));
    }
    expect(sheet('Balance').charts?.length).toBe(3);
  });
});
