import { describe, expect, test } from 'vitest';
import { cellFormula, fieldText, readField } from '../../../src/task-pane/functions/field-text';

const field = (text: string) => readField(text, 'Farm');
const formula = (...texts: string[]) =>
  cellFormula('TANK.GIRTH', { units: 'SiltUnits', fields: texts.map(field), headings: false }, 'Farm');

describe('what is typed into a field', () => {
  test('is a number, a word, TRUE, cells, or nothing', () => {
    expect([field(' 22.5 '), field('-1e3'), field('TRUE'), field('3 1/4 in'), field('32 %'), field(' ')]).toEqual([
      { is: 'value', value: 22.5 },
      { is: 'value', value: -1000 },
      { is: 'value', value: true },
      { is: 'value', value: '3 1/4 in' },
      { is: 'value', value: '32 %' },
      { is: 'blank' },
    ]);
  });

  test('is cells if it begins with =, on the selected sheet unless another is named', () => {
    const range = { row: 4, column: 1, rows: 2, columns: 1 };
    expect(field('=B5:B6')).toEqual({ is: 'cells', place: { sheet: 'Farm', range } });
    expect(field("='It''s'!B5:B6")).toEqual({ is: 'cells', place: { sheet: "It's", range } });
    expect(readField('=B5', undefined).is).toBe('fault');
    expect(field('=SUM(B5:B6)')).toEqual({ is: 'fault', why: expect.stringContaining('=Farm!B5:B9') });
  });

  test('reads back what the pane writes there for selected cells', () => {
    for (const sheet of ['Farm', 'Silt units', "It's", 'A1', '2026']) {
      const place = { sheet, range: { row: 4, column: 1, rows: 1, columns: 3 } };
      expect(field(fieldText(place))).toEqual({ is: 'cells', place });
    }
  });
});

describe('the cell formula', () => {
  test('leaves out blank arguments, and names only other sheets', () => {
    expect(formula('70', '')).toBe('=SILT.TANK.GIRTH(SiltUnits,70)');
    expect(formula('', '0.125')).toBe('=SILT.TANK.GIRTH(SiltUnits,,0.125)');
    expect(formula('=B5', "='Silt units'!A1")).toBe("=SILT.TANK.GIRTH(SiltUnits,B5,'Silt units'!A1)");
  });

  test('puts text in quotes, doubling those inside, and asks for headings last', () => {
    expect(formula('6\' 4"')).toBe('=SILT.TANK.GIRTH(SiltUnits,"6\' 4""")');
    const call = { units: undefined, fields: [field(''), field('')], headings: true };
    expect(cellFormula('PLAN.DATES', call, 'Farm')).toBe('=SILT.PLAN.DATES(,,TRUE)');
  });
});
