import { describe, expect, it } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { cellName } from '../../../src/hosts/address';
import type { CellScalar } from '../../../src/hosts/workbook-model';
import { verdicts } from '../../../src/task-pane/checks/verdicts';
import { createMeasuring, type FindMeasuring } from '../../../src/task-pane/checks/worth-measuring';
import { spill } from '../../functions/call';
import { MemoryHost } from '../memory-host';

it('lists the three figures most worth measuring, those with the most influence on a result', () => {
  const line = (name: string, share: number) => [name, '', 0.1, 0.2, 0.3, 1, 2, share];
  const lines = [
    ['input', 'unit', 'low', 'plan', 'high', 'result at low', 'result at high', 'share of the variance'],
    line('solids share', 0.6),
    line('removal', 0.2),
    line('pad capture', 0.1),
    line('nitrification', 0.05),
    line('pad holding', 0),
    ['together', '', '', '', '', '', '', 0.05],
  ];
  const found = verdicts(['PLAN.DRIVERS'], lines);
  expect(found.map(({ row }) => row)).toEqual([1, 2, 3]);
  expect(found[0]?.sentence).toBe(
    'Worth measuring on your own farm: solids share. Alone it explains 60 % of the uncertainty of the result.',
  );
  expect(verdicts(['PLAN.DRIVERS'], [line('pad holding', 0), ['together', '', '', '', '', '', '', 0]])).toEqual([]);
});

/** Two farms, by input. */
const farms: readonly (readonly CellScalar[])[] = [
  ['input', '120 fish', '350 fish'],
  ['fish count', 120, 350],
  ['fish mass', 225, 250],
  ['feeding rate', 0.015, 0.015],
  ['pump flow', 38, 120],
  ['drums', 1, 2],
  ['drum diameter', 570, 570],
  ['removal', '0.2 to 0.5', '0.3 to 0.4'],
];

/** A workbook with the farms in Farms!A1:C8 and these formulas on the sheet Plan. */
function workbook(formulas: Readonly<Record<string, string>>): MemoryHost {
  const typed = farms.flatMap((line, row) => line.map((value, column) => [cellName(row, column), value] as const));
  return new MemoryHost({ Farms: Object.fromEntries(typed), Plan: formulas }, { SiltUnits: 'Units!$A$1' });
}

/** A library that counts the calls of PLAN.DRIVERS. */
function counting() {
  const counted = { calls: 0 };
  const library: typeof functionLibrary = {
    ...functionLibrary,
    adapt: (row, makeError) => {
      const adapted = functionLibrary.adapt(row, makeError);
      return (...values) => {
        if (row.name === 'PLAN.DRIVERS') counted.calls += 1;
        return adapted(...values);
      };
    },
  };
  return { counted, library };
}

async function found(host: MemoryHost, find: FindMeasuring = createMeasuring(), library = functionLibrary) {
  const [blocks, names] = await Promise.all([host.readUsed(), host.names()]);
  return find({ blocks, names, functionLibrary: library }, async () => undefined);
}

/** What PLAN.DRIVERS says of a figure and a result of one farm, per cent. */
function explained(column: number, name: string, result: string): number {
  const scenario = farms.map((line) => [line[0], line[column]]);
  const row = spill('PLAN.DRIVERS', 'metric', scenario, result).find(([input]) => input === name);
  return Math.round(100 * Number(row?.at(-1)));
}

const sentence = /^Worth measuring on your own farm: (.+)\. Alone it explains (\d+) % of the uncertainty of (.+)\.$/;

const compare = '=SILT.PLAN.COMPARE("metric",Farms!A1:C8)';

describe('what to measure, of a workbook that compares farms', () => {
  it('is three figures, the solids share first, each as PLAN.DRIVERS has it for the first farm', async () => {
    const findings = await found(workbook({ A1: compare }));
    expect(findings).toHaveLength(3);
    expect(findings.map(({ about, tone }) => [about, tone])).toEqual(new Array(3).fill(['120 fish', 'caution']));
    // Published figures of the solids share differ seventeen times, more than those of any other input.
    expect(findings[0]?.sentence).toMatch(/: solids share\. .* of the uncertainty of solids/);
    for (const one of findings) {
      const [, name = '', percent, result = ''] = sentence.exec(one.sentence) ?? [];
      expect(Number(percent)).toBeGreaterThan(1);
      expect(explained(1, name, result)).toBe(Number(percent));
    }
  });

  it('is at the farm’s title for an input that is not given, at its cell for one typed as a range', async () => {
    const host = workbook({ A1: compare });
    host.change('Farms', 'A9', 'solids share');
    host.change('Farms', 'B9', '0.05 to 0.6');
    host.change('Plan', 'A1', '=SILT.PLAN.COMPARE("metric",Farms!A1:C9)');
    const findings = await found(host);
    const at = (name: string) => findings.find((one) => one.sentence.includes(`: ${name}.`))?.spots;
    expect(at('solids share')).toEqual([{ sheet: 'Farms', row: 8, column: 1 }]);
    const others = findings.filter((one) => !/: (solids share|removal)\./.test(one.sentence));
    expect(others.length).toBeGreaterThan(0);
    for (const { spots } of others) expect(spots).toEqual([{ sheet: 'Farms', row: 0, column: 1 }]);
  });

  it('is for the farm that is chosen where another formula takes one farm', async () => {
    const chosen = '=SILT.PLAN.LIMIT("metric",FILTER(Farms!A1:C8,(SEQUENCE(1,3,0)=0)+(SEQUENCE(1,3,0)=2)))';
    const findings = await found(workbook({ A1: compare, A60: chosen }));
    for (const one of findings) {
      const [, name = '', percent, result = ''] = sentence.exec(one.sentence) ?? [];
      expect(explained(2, name, result)).toBe(Number(percent));
    }
    expect(findings[0]?.about).toBe('350 fish');
    expect(findings[0]?.spots).toEqual([{ sheet: 'Farms', row: 0, column: 2 }]);
  });

  it('is left to PLAN.DRIVERS where the workbook has it, unless that fails', async () => {
    const drivers = '=SILT.PLAN.DRIVERS("metric",Farms!A1:B8,"solids captured")';
    const host = workbook({ A1: compare, H1: drivers });
    host.give('Plan', 'H1', 'solids share');
    expect(await found(host)).toEqual([]);
    host.give('Plan', 'H1', { error: { code: '#VALUE!', message: 'result: no such result' } });
    expect(await found(host)).toHaveLength(3);
  });

  it('is of another result where nothing captures solids', async () => {
    const host = workbook({ A1: compare });
    host.change('Farms', 'B6', 'none');
    host.change('Farms', 'C6', 'none');
    const findings = await found(host);
    expect(findings.length).toBeGreaterThan(0);
    for (const one of findings) expect(one.sentence).not.toContain('solids captured');
  });

  it('is nothing without a plan, and nothing where the farm cannot be computed', async () => {
    expect(await found(workbook({ A1: '=SUM(Farms!B2:B4)' }))).toEqual([]);
    const host = workbook({ A1: compare });
    host.change('Farms', 'B2', 'many');
    expect(await found(host)).toEqual([]);
  });

  it('is computed once for the same cells, and again after an edit of the farm', async () => {
    const { counted, library } = counting();
    const find = createMeasuring();
    const host = workbook({ A1: compare });
    await found(host, find, library);
    const once = counted.calls;
    expect(once).toBeGreaterThan(0);
    host.change('Plan', 'Z9', 'a remark');
    await found(host, find, library);
    expect(counted.calls).toBe(once);
    host.change('Farms', 'B3', 300);
    await found(host, find, library);
    expect(counted.calls).toBe(2 * once);
    host.change('Farms', 'B3', 225);
    await found(host, find, library);
    expect(counted.calls).toBe(2 * once);
  });
});
