import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { cell, defined, file, hostile } from './hostile-table';

describe('a hostile or damaged file', () => {
  it.each(hostile)('with %s is refused with a message', async (_, make, sentence) => {
    await expect(readWorkbook(make())).rejects.toThrow(sentence);
  });

  it('is different from one that is only large or unusual', async () => {
    const rows = cell(`<f>1${'+1'.repeat(4_000)}</f><v>1</v>`);
    const names = defined({ One: 'Two+1', Two: "'Sheet'!$A$1", Three: 'One+Two' });
    const after = '<mergeCells count="1"><mergeCell ref="A1:XFD50"/></mergeCells>';
    await expect(readWorkbook(file({ rows, names, after }))).resolves.toHaveProperty('sheets.length', 1);
  });
});
