import { describe, expect, it } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { dataReader } from '../../../src/hosts/data-reader';
import type { WorkbookData } from '../../../src/hosts/workbook-model';
import { workbookDrawings } from '../../../src/task-pane/drawings/workbook-drawings';
import { sampleWorkbook } from '../sample-host';

const titlesOf = async (workbook: WorkbookData): Promise<readonly string[]> => {
  const { drawings, count } = await workbookDrawings(dataReader(workbook), functionLibrary);
  expect(count).toBe(drawings.length);
  return drawings.map(({ title }) => title);
};

describe('the drawings of a workbook', () => {
  it('are a pattern for each drum, numbered as in the cut plan, and the cut plan', async () => {
    const [patterns, plan] = [await titlesOf(await sampleWorkbook('US/cone-cut-plan')), 'Cut plan'];
    expect(patterns.slice(0, 3).map((title) => title.split(':')[0])).toEqual(['Fern', 'Moss', 'Sedge']);
    expect(patterns.slice(3)).toEqual([plan]);
  });

  it('are the train of each scenario once, and how sure the chosen one is', async () => {
    expect(await titlesOf(await sampleWorkbook('metric/stocking-scenarios'))).toEqual([
      '120 fish: train',
      '350 fish: train',
      '800 fish: train',
      '100, gravel beds: train',
      'How sure the plan is',
      'What to measure first',
    ]);
  });

  it('are none where nothing is drawn, and leave out what cannot be', async () => {
    expect(await titlesOf({ sheets: [{ name: 'Mine', cells: [{ row: 0, column: 0, value: 1 }] }] })).toEqual([]);
    const formula = '=SILT.CONE.PATTERN("US",1,2,3)';
    const value = { error: { code: '#VALUE!', message: '' } };
    expect(await titlesOf({ sheets: [{ name: 'Mine', cells: [{ row: 0, column: 0, formula, value }] }] })).toEqual([]);
  });
});
