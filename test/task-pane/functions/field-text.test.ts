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

  test('stays text if it is a number that no cell can hold, and no formula gets it', () => {
    expect(field('1e400')).toEqual({ is: 'value', value: '1e400' });
    expect(formula('-1e400')).toBe('=SILT.TANK.GIRTH(SiltUnits,"-1e400")');
  });

  test('is refused if a formula could not hold it, or the cells are those of a whole sheet', () => {
    // Excel's own limits: 255 characters of text in a formula; 1,048,576 rows and 16,384 columns of a sheet.
    expect(field('x'.repeat(255)).is).toBe('value');
    expect(field('x'.repeat(256))).toEqual({ is: 'fault', why: '256 characters are not allowed; give at most 255' });
    expect(field('=A1:A100000').is).toBe('cells');
    expect(field('=A1:XFD1048576')).toEqual({ is: 'fault', why: expect.stringContaining('too many cells') });
    expect(field(`=${'x'.repeat(3000)}`)).toEqual({ is: 'fault', why: expect.stringMatching(/^.{10,120}$/) });
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
