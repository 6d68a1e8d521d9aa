import { readFileSync } from 'node:fs';
import { encode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { addPictures, type SheetPicture } from '../../src/workbooks/saving/add-pictures';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { all, openPackage } from './package-parts';
import { rulesBroken } from './package-rules';

const picture = (title: string, width: number, height: number): SheetPicture => ({
  png: encode({ width, height, data: new Uint8Array(width * height), channels: 1 }),
  width,
  height,
  title,
  description: `${title}, described`,
});

describe('a sheet of pictures', () => {
  it('keeps the rules of the format, has each picture below its title and none over another', async () => {
    const hostile = '<b>&"\'\u0007 one';
    const made = addPictures(
      new Uint8Array(readFileSync('sample-workbooks/US/harvest-book.xlsx')),
      [picture(hostile, 400, 200), picture('two', 2000, 1000), picture('three', 10, 3000)],
      'The first 3 of 9 drawings.',
    );
    expect(rulesBroken(made)).toEqual([]);
    const file = openPackage(made);
    const { name, part } = file.sheets.at(-1)!;
    expect(name).toBe('Drawings');
    const rows = all(file.xml(part), 'row').map(({ attributes }) => Number(attributes.r));
    expect(all(file.xml(part), 't').map(({ text }) => text)).toEqual([
      'The first 3 of 9 drawings.',
      '<b>&"\'_x0007_ one',
      'two',
      'three',
    ]);
    const drawingPart = file.names.filter((one) => /drawings\/drawing\d+\.xml$/.test(one)).at(-1)!;
    const anchors = all(file.xml(drawingPart), 'xdr:oneCellAnchor').map((anchor) => ({
      row: Number(all(anchor, 'xdr:row')[0]!.text),
      ...all(anchor, 'xdr:ext')[0]!.attributes,
    }));
    // 9525 units are a pixel, 20 pixels a row.
    expect(anchors.map(({ row }) => row)).toEqual(rows.slice(1));
    anchors.forEach(({ row, ...size }, i) => {
      const { cx, cy } = size as { cx: string; cy: string };
      expect(Number(cx) / 9525).toBe([200, 900, 3][i]);
      expect(Number(cy) / 9525).toBe([100, 450, 900][i]);
      const next = rows[i + 2];
      if (next !== undefined) expect(row + Number(cy) / 9525 / 20).toBeLessThan(next - 1);
    });
  });

  it('takes a free name, and is not made for no picture', async () => {
    const plain = await writeWorkbook({ sheets: [{ name: 'drawings', cells: [] }] });
    const made = openPackage(addPictures(plain, [picture('one', 4, 4)]));
    expect(made.sheets.map(({ name }) => name)).toEqual(['drawings', 'Drawings 2']);
    expect(addPictures(plain, [])).toBe(plain);
  });
});
