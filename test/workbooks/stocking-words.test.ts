import { describe, expect, it } from 'vitest';
import { figureResults } from '../../src/catalogue/plan/plan-sure';
import { compareRows, resultName } from '../../src/catalogue/plan/scenario-results';
import { readyMade, readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { openReadyMade } from './open-ready-made';

describe.each(readyProfiles)('800 fish on the equipment of 120 (%s)', (profile) => {
  it('the drums needed are said to be for the flow that runs, and to be never enough', async () => {
    const { book, value, values, type } = await openReadyMade('stocking-scenarios', profile);
    await type({ 'Scenarios!C5': 800, 'Limit!B4': 1 });
    const compared = new Map(values('Compare', 'A5:C45').map(([name, , first]) => [name, first]));
    // The pump of 120 fish needs one drum; the media of 120 fish cannot nitrify for 800 at any flow.
    expect(compared.get('flow needed')).toBe('never');
    expect(compared.get('drums needed')).toBe(1);
    expect(value('Compare', 'A3')).toContain('no number of drums is enough');
    const drums = values('Limit', 'A7:E20').find(([stage]) => stage === 'settling drums');
    expect(Number(drums?.[3])).toBeGreaterThan(1);
    expect(drums?.[4]).toContain('drums needed is for the flow that runs');
    const cautions = values('Limit', 'G23:G42').flat().join(' ');
    expect(cautions).toContain('no number of drums keeps ammonia within the limit');
    book.dispose();
  });

  it('drums needed is colored where no flow is enough', () => {
    const book = readyMade.find(({ id }) => id === 'stocking-scenarios')?.build(profile);
    const compare = book?.sheets.find(({ name }) => name === 'Compare');
    const [flow = 0, drums = 0] = ['flow needed', 'drums needed'].map((name) => rowOf(name));
    const colored = compare?.conditions?.map(({ range, formula }) => [range, formula]);
    expect(colored).toContainEqual([`C${drums}:F${drums}`, `=C$${flow}="never"`]);
  });
});

/** The row of a result on the sheet Compare, by the names of the catalogue. */
function rowOf(name: string): number {
  return 5 + compareRows.indexOf(name);
}

describe.each(readyProfiles)('a plan outside its band (%s)', (profile) => {
  it('is named with the reason, and only it', async () => {
    const { book, value, values } = await openReadyMade('stocking-scenarios', profile);
    const outside = values('How sure', 'A10:E47')
      .filter(([, , low, plan, high]) => [low, plan, high].every((one) => typeof one === 'number'))
      .filter(([, , low, plan, high]) => Number(plan) < Number(low) || Number(plan) > Number(high))
      .map(([name]) => name);
    // The typical oxygen ratio is the highest published.
    expect(outside).toEqual(['oxygen', 'carbon dioxide']);
    const said = String(value('How sure', 'A8'));
    expect(said).toContain('The plan is outside its band for oxygen, carbon dioxide. ');
    expect(said).toContain('lowest or the highest');
    book.dispose();
  });

  it('has whole counts without decimals beside figures with them', () => {
    const book = readyMade.find(({ id }) => id === 'stocking-scenarios')?.build(profile);
    const cells = book?.sheets.find(({ name }) => name === 'How sure')?.cells;
    const formatOf = (name: string) => {
      const at = 9 + figureResults.findIndex((key) => resultName(key) === name);
      return cells?.find(({ row, column }) => row === at && column === 3)?.style?.numberFormat;
    };
    expect(['drums needed', 'pads needed', 'plants', 'bed area'].map(formatOf)).toEqual([
      'General',
      'General',
      'General',
      '#,##0.0##',
    ]);
  });
});
