import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { readZip } from '../../src/workbooks/zip-container';
import { openPackage, storedCells } from './package-parts';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** A workbook written by hand, as no library would: one sheet, and a part that nobody here knows. */
function book(rows: string, more: Record<string, Uint8Array> = {}): Uint8Array {
  const part = (name: string): string => `application/vnd.openxmlformats-officedocument.spreadsheetml.${name}+xml`;
  return zipSync({
    '[Content_Types].xml': strToU8(
      `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="bin" ContentType="application/octet-stream"/><Override PartName="/xl/workbook.xml" ContentType="${part('sheet.main')}"/><Override PartName="/xl/worksheets/first.xml" ContentType="${part('worksheet')}"/></Types>`,
    ),
    '_rels/.rels': strToU8(
      `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="a" Type="${relations}/officeDocument" Target="/xl/workbook.xml"/></Relationships>`,
    ),
    'xl/workbook.xml': strToU8(
      `${head}<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="First &amp; only" sheetId="7" r:id="s"/></sheets><definedNames><definedName name="SiltUnits">'First &amp; only'!$A$1</definedName></definedNames></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="s" Type="${relations}/worksheet" Target="worksheets/first.xml"/></Relationships>`,
    ),
    'xl/worksheets/first.xml': strToU8(`${head}<worksheet xmlns="${main}"><sheetData>${rows}</sheetData></worksheet>`),
    'xl/unknown/thing.bin': new Uint8Array([1, 2, 3, 250]),
    ...more,
  });
}

async function recalculated(rows: string) {
  const before = book(rows);
  const result = await recalculateFile(await sourceFunctions(), before);
  const cells = new Map(
    storedCells(openPackage(result.bytes).xml('xl/worksheets/first.xml')).map((cell) => [cell.address, cell]),
  );
  return { ...result, before, cells };
}

const units = '<row r="1"><c r="A1" t="inlineStr"><is><t>US</t></is></c></row>';

describe('a recalculated file', () => {
  it('holds new results of built-in functions and of the add-in', async () => {
    const { cells, kept, formulas } = await recalculated(
      `${units}<row r="2"><c r="A2"><v>22.5</v></c><c r="B2"><f>A2*2</f><v>0</v></c><c r="C2" cm="1"><f t="array" ref="C2">_xldudf_SILT_CONE_ANGLE(SiltUnits,A2,4,9.25)</f><v>0</v></c></row>`,
    );
    expect(kept).toEqual([]);
    expect(formulas).toBe(2);
    expect(cells.get('B2')!.value).toBe('45');
    // A cone as high as half of what its diameters differ by stands at 45 degrees.
    expect(Number(cells.get('C2')!.value)).toBeCloseTo(45, 10);
    expect(cells.get('A2')!.value).toBe('22.5');
  });

  it('holds every other part byte for byte, packed as it was', async () => {
    const { before, bytes } = await recalculated(`${units}<row r="2"><c r="A2"><f>1+1</f><v>0</v></c></row>`);
    const was = readZip(before);
    for (const [index, entry] of readZip(bytes).entries()) {
      if (entry.name === 'xl/worksheets/first.xml') expect(entry.packed).not.toEqual(was[index]!.packed);
      else expect(entry).toEqual(was[index]!);
    }
    expect(unzipSync(bytes)['xl/unknown/thing.bin']).toEqual(new Uint8Array([1, 2, 3, 250]));
  });

  it('calculates shared formulas, each for its own cell', async () => {
    const { cells } = await recalculated(
      '<row r="1"><c r="A1"><v>3</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*10</f><v>0</v></c></row><row r="2"><c r="A2"><v>4</v></c><c r="B2"><f t="shared" si="0"/><v>0</v></c></row>',
    );
    expect([cells.get('B1')!.value, cells.get('B2')!.value]).toEqual(['30', '40']);
  });

  it('stores an error for a formula that fails', async () => {
    const { cells } = await recalculated('<row r="1"><c r="A1"><f>1/0</f><v>5</v></c></row>');
    expect(cells.get('A1')).toMatchObject({ type: 'e', value: '#DIV/0!' });
  });

  it('keeps the value of a formula that the engine cannot calculate, names it, and calculates others from it', async () => {
    const { cells, kept } = await recalculated(
      '<row r="1"><c r="A1"><f>OTHERADDIN.FETCH(1)</f><v>12</v></c><c r="B1"><f>A1*2</f><v>0</v></c><c r="C1"><f>IFERROR(OTHERADDIN.FETCH(2),0)</f><v>8</v></c><c r="D1"><f>[1]Sheet1!A1</f><v>3</v></c><c r="E1"><f>D1+1</f><v>0</v></c></row>',
    );
    expect(kept.map(({ cell, formula }) => [cell, formula])).toEqual([
      ['A1', '=OTHERADDIN.FETCH(1)'],
      ['C1', '=IFERROR(OTHERADDIN.FETCH(2),0)'],
      ['D1', '=[1]Sheet1!A1'],
    ]);
    expect(kept[0]!.why).toMatch(/OTHERADDIN\.FETCH/);
    expect(['A1', 'B1', 'C1', 'D1', 'E1'].map((address) => cells.get(address)!.value)).toEqual([
      '12',
      '24',
      '8',
      '3',
      '4',
    ]);
  });

  it('keeps the values of formulas that refer to each other in a circle, names them, and calculates others from them', async () => {
    const { cells, kept } = await recalculated(
      '<row r="1"><c r="A1"><f>B1+1</f><v>7</v></c><c r="B1"><f>A1+1</f><v>8</v></c><c r="C1"><f>A1*2</f><v>0</v></c><c r="D1"><f>D1+1</f><v>5</v></c></row>',
    );
    expect(kept.map(({ cell, why }) => [cell, why])).toEqual([
      ['A1', 'the formulas refer to each other in a circle: A1, B1'],
      ['B1', 'the formulas refer to each other in a circle: A1, B1'],
      ['D1', 'the formula refers to its own cell'],
    ]);
    expect(['A1', 'B1', 'C1', 'D1'].map((address) => cells.get(address)!.value)).toEqual(['7', '8', '14', '5']);
  });

  it('keeps the value of a formula that would spill but is not stored as an array', async () => {
    const { cells, kept } = await recalculated(
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1"><f>A1:A2*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>',
    );
    expect(kept.map(({ cell }) => cell)).toEqual(['C1']);
    expect(cells.get('C1')!.value).toBe('2');
    expect(cells.has('C2')).toBe(false);
  });

  it('fits an older array formula into the cells where it was entered', async () => {
    const { cells } = await recalculated(
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1"><f t="array" ref="C1:C3">A1:A2*2</f><v>0</v></c></row><row r="2"><c r="A2"><v>5</v></c><c r="C2"><v>0</v></c></row><row r="3"><c r="C3"><v>0</v></c></row>',
    );
    expect(['C1', 'C2', 'C3'].map((address) => cells.get(address)!.value)).toEqual(['2', '10', '#N/A']);
  });

  it.each([
    ['no zip', strToU8('drum one, 22 1/2 in, drum two, 21 3/4 in')],
    ['cut short', book(units).subarray(0, 900)],
    ['a zip that is no workbook', zipSync({ 'a.txt': strToU8('a') })],
    [
      'without its sheet',
      zipSync(Object.fromEntries(Object.entries(unzipSync(book(units))).filter(([name]) => !name.includes('first')))),
    ],
    [
      'with a sheet that is no XML',
      book('', { 'xl/worksheets/first.xml': strToU8('<worksheet><sheetData><row></sheetData></worksheet>') }),
    ],
    ['with a flipped bit', flipped(book(units.repeat(1)))],
  ])('is refused with a reason when the file is %s', async (_, bytes) => {
    await expect(recalculateFile(await sourceFunctions(), bytes)).rejects.toThrow(
      /zip|damaged|cut short|workbook|readable/,
    );
  });

  it('is the file itself when nothing changed', async () => {
    const { bytes } = await recalculated(`${units}<row r="2"><c r="A2"><f>1+1</f><v>0</v></c></row>`);
    const again = await recalculateFile(await sourceFunctions(), bytes);
    expect(again.bytes).toEqual(bytes);
    expect(strFromU8(unzipSync(bytes)['xl/worksheets/first.xml']!)).toContain('<f>1+1</f><v>2</v>');
  });
});

function flipped(bytes: Uint8Array): Uint8Array {
  const copy = bytes.slice();
  copy[200]! ^= 1;
  return copy;
}
