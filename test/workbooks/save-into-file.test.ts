import { readFileSync } from 'node:fs';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { parseRange } from '../../src/hosts/address';
import { asOpened } from '../../src/hosts/univer/from-snapshot';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellData, SheetData, WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { saveIntoFile } from '../../src/workbooks/saving/save-into-file';
import { readyMade } from '../../src/workbooks/sheets/ready-made';
import { all, openPackage, storedCells } from './package-parts';

/** Made by openpyxl 3.0.9 (make-with-openpyxl.py) and by LibreOffice 7.4 (from pull-log.fods), beside them. */
const stored = new Map<string, Uint8Array>();
const fileOf = (name: string): Uint8Array => stored.get(name)!;
beforeAll(async () => {
  // What openpyxl writes holds no results; the workbench has computed them by the time that it saves.
  for (const name of files) {
    const bytes = new Uint8Array(readFileSync(`test/workbooks/files/${name}`));
    stored.set(name, (await recalculateFile(await sourceFunctions(), bytes)).bytes);
  }
});

type Change = (sheets: SheetData[]) => readonly SheetData[];

/** A file opened, changed and saved as the workbench does it. */
async function saved(bytes: Uint8Array, change: Change, more: Partial<WorkbookData> = {}) {
  const before = asOpened(await readWorkbook(bytes));
  const sheets = before.sheets.map((sheet) => ({ ...sheet, openedAs: sheet.name }));
  return saveIntoFile(bytes, before, { ...before, ...more, sheets: change(sheets) });
}

/** A sheet with other cells at some addresses; undefined takes one away. */
function withCells(sheet: SheetData, cells: Readonly<Record<string, Partial<CellData> | undefined>>): SheetData {
  const left = sheet.cells.filter(({ row, column }) =>
    Object.keys(cells).every((address) => parseRange(address)!.row !== row || parseRange(address)!.column !== column),
  );
  const added = Object.entries(cells).flatMap(([address, cell]) => {
    const { row, column } = parseRange(address)!;
    const {
      formula: _formula,
      value: _value,
      spill: _spill,
      ...kept
    } = sheet.cells.find((one) => one.row === row && one.column === column) ?? ({} as CellData);
    return cell === undefined ? [] : [{ ...kept, row, column, ...cell }];
  });
  return { ...sheet, cells: [...left, ...added] };
}

function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const [was, is] = [unzipSync(before), unzipSync(after)];
  return [...new Set([...Object.keys(was), ...Object.keys(is)])].filter(
    (name) => Buffer.compare(Buffer.from(was[name] ?? []), Buffer.from(is[name] ?? [])) !== 0,
  );
}

const cellsIn = (bytes: Uint8Array, part: string) =>
  new Map(storedCells(openPackage(bytes).xml(part)).map((cell) => [cell.address, cell]));

const files = ['drum-store.xlsx', 'pull-log.xlsx'];

describe.each(files)('%s, saved from the workbench', (name) => {
  it('is the same file if nothing changed', async () => {
    expect(changedParts(fileOf(name), await saved(fileOf(name), (sheets) => sheets))).toEqual([]);
  });

  it('keeps every part except the sheet that was changed', async () => {
    const bytes = fileOf(name);
    const after = await saved(bytes, ([first, ...others]) => [
      withCells(first!, { C3: { value: 40 }, A5: { value: 'new & <here>' } }),
      ...others,
    ]);
    expect(changedParts(bytes, after)).toEqual(['xl/worksheets/sheet1.xml']);
    const cells = cellsIn(after, 'xl/worksheets/sheet1.xml');
    expect(cells.get('C3')).toMatchObject({ value: '40', type: undefined });
    expect(cells.get('A5')).toMatchObject({ type: 'inlineStr' });
    const read = await readWorkbook(after);
    const typed = read.sheets[0]!.cells.find(({ row, column }) => row === 4 && column === 0);
    expect(typed?.value).toBe('new & <here>');
  });

  it('keeps rules, notes and print settings of a sheet that was changed', async () => {
    const after = await saved(fileOf(name), ([first, ...others]) => [
      withCells(first!, { C3: { value: 40 } }),
      ...others,
    ]);
    const [was, is] = [fileOf(name), after].map((bytes) => openPackage(bytes).xml('xl/worksheets/sheet1.xml'));
    const besidesCells = (sheet: typeof was) => sheet!.children.filter(({ name: tag }) => tag !== 'sheetData');
    expect(besidesCells(is)).toEqual(besidesCells(was));
  });
});

describe('a workbook with macros', () => {
  it('keeps them', async () => {
    const bytes = zipSync({ ...unzipSync(fileOf('drum-store.xlsx')), 'xl/vbaProject.bin': strToU8('macros') });
    const after = await saved(bytes, ([first, ...others]) => [withCells(first!, { C3: { value: 40 } }), ...others]);
    expect(unzipSync(after)['xl/vbaProject.bin']).toEqual(strToU8('macros'));
  });
});

describe('formulas that were changed', () => {
  const sheet = 'xl/worksheets/sheet1.xml';

  it('are in the file with their results, and have the flag if they fill several cells', async () => {
    const after = await saved(fileOf('drum-store.xlsx'), ([first, ...others]) => [
      withCells(first!, {
        E2: { formula: '=B2*2', value: 45 },
        E7: undefined,
        G20: { formula: '=SEQUENCE(2)', value: 1, spill: 'G20:G21' },
        G21: { value: 2 },
      }),
      ...others,
    ]);
    const cells = cellsIn(after, sheet);
    expect(cells.get('E2')).toMatchObject({ formula: 'B2*2', value: '45' });
    expect(cells.get('E7')?.formula).toBeUndefined();
    expect(cells.get('G20')).toMatchObject({ formula: '_xlfn.SEQUENCE(2)', ref: 'G20:G21', value: '1' });
    expect(cells.get('G20')?.element.attributes.cm).toBe('1');
    expect(cells.get('G21')?.value).toBe('2');
    const types = all(openPackage(after).xml('[Content_Types].xml'), 'Override');
    expect(types.some(({ attributes }) => attributes.PartName === '/xl/metadata.xml')).toBe(true);
  });

  it('do not change other formulas that shared their text', async () => {
    const files = unzipSync(fileOf('drum-store.xlsx'));
    const xml = Buffer.from(files[sheet]!).toString();
    const shared = xml
      .replace(/<f>ROUND\(PI\(\)\*\(B2.*?<\/f>/, '<f t="shared" ref="E2:E5" si="0">B2*C2</f>')
      .replace(/<f>ROUND\(PI\(\)\*\(B([345]).*?<\/f>/g, '<f t="shared" si="0"/>');
    const bytes = zipSync({ ...files, [sheet]: strToU8(shared) });
    const after = await saved(bytes, ([first, ...others]) => [withCells(first!, { E2: { value: 7 } }), ...others]);
    const cells = cellsIn(after, sheet);
    expect(['E2', 'E3', 'E5'].map((address) => cells.get(address)?.formula)).toEqual([undefined, 'B3*C3', 'B5*C5']);
  });
});

describe('styles, names and notes that were changed', () => {
  const bold: Change = ([first, ...others]) => [
    withCells(first!, { B3: { value: 21.75, style: { bold: true, fill: 'FFEE00', numberFormat: '0.00 "in"' } } }),
    ...others,
  ];

  it('are added after those of the file', async () => {
    const after = await saved(fileOf('drum-store.xlsx'), bold);
    const before = await readWorkbook(fileOf('drum-store.xlsx'));
    const read = await readWorkbook(after);
    const at = (book: WorkbookData, row: number, column: number) =>
      book.sheets[0]!.cells.find((cell) => cell.row === row && cell.column === column)?.style;
    expect(at(read, 2, 1)).toMatchObject({ bold: true, fill: 'FFEE00', numberFormat: '0.00 "in"' });
    expect(at(read, 0, 0)).toEqual(at(before, 0, 0));
  });

  it('change only that name', async () => {
    const { names = [] } = await readWorkbook(fileOf('drum-store.xlsx'));
    const after = await saved(fileOf('drum-store.xlsx'), (sheets) => sheets, {
      names: [...names, { name: 'Gate', refersTo: "'Drum store'!$G$12" }],
    });
    const defined = all(openPackage(after).xml('xl/workbook.xml'), 'definedName');
    expect(defined.map(({ attributes, text }) => [attributes.name, text])).toEqual(
      expect.arrayContaining([
        ['AllVolumes', "'Drum store'!$E$2:$E$5"],
        ['Gate', "'Drum store'!$G$12"],
        ['_xlnm.Print_Area', "'Drum store'!$A$1:$E$8"],
      ]),
    );
  });

  it('bring the parts for notes to a sheet without notes', async () => {
    const after = await saved(fileOf('drum-store.xlsx'), ([first, second]) => [
      first!,
      withCells(second!, { A1: { value: 'Tank = Fern + Reed', note: 'ask Bo' } }),
    ]);
    const read = await readWorkbook(after);
    expect(read.sheets.map(({ cells }) => cells.flatMap(({ note }) => note ?? []))).toEqual([
      ['Found behind the glasshouse'],
      ['ask Bo'],
    ]);
  });
});

describe('sheets that were added, removed or renamed', () => {
  it('a ready-made sheet is added with its charts, rules, tables and styles, and the others stay', async () => {
    const bytes = fileOf('drum-store.xlsx');
    const { sheets, names = [] } = readyMade.find(({ id }) => id === 'harvest-book')!.build('US');
    const after = await saved(bytes, (opened) => [...opened, ...sheets], {
      names: [...names, { name: 'AllVolumes', refersTo: "'Drum store'!$E$2:$E$5" }],
    });
    const read = await readWorkbook(after);
    expect(read.sheets.map(({ name }) => name)).toEqual([
      'Drum store',
      'Notes & plans',
      ...sheets.map(({ name }) => name),
    ]);
    for (const sheet of sheets) {
      const is = read.sheets.find(({ name }) => name === sheet.name)!;
      expect(is.validations?.length).toBe(sheet.validations?.length);
      expect(is.conditions?.length).toBe(sheet.conditions?.length);
      expect(is.charts?.length).toBe(sheet.charts?.length);
      expect([is.name, is.print?.area, is.print?.titleRows]).toEqual([
        sheet.name,
        sheet.print?.area,
        sheet.print?.titleRows,
      ]);
      for (const cell of sheet.cells.filter(({ formula, value }) => formula === undefined && value !== undefined))
        expect(is.cells.find(({ row, column }) => row === cell.row && column === cell.column)).toMatchObject({
          value: cell.value,
          ...(cell.style?.fill === undefined ? {} : { style: { fill: cell.style.fill } }),
        });
    }
    const kept = changedParts(bytes, after).filter((name) => unzipSync(bytes)[name] !== undefined);
    expect(kept.sort()).toEqual([
      '[Content_Types].xml',
      'xl/_rels/workbook.xml.rels',
      'xl/styles.xml',
      'xl/workbook.xml',
    ]);
  });

  it('charts, names and rules follow a renamed sheet', async () => {
    const after = await saved(
      fileOf('drum-store.xlsx'),
      ([first, second]) => [
        { ...first!, name: "Ana's drums" },
        withCells(second!, { A2: { formula: "='Ana''s drums'!E2", value: 1 } }),
      ],
      { names: [{ name: 'AllVolumes', refersTo: "'Ana''s drums'!$E$2:$E$5" }], activeSheet: "Ana's drums" },
    );
    const file = openPackage(after);
    const references = all(file.xml('xl/charts/chart1.xml'), 'f').map(({ text }) => text);
    expect(references.length).toBeGreaterThan(1);
    for (const reference of references) expect(reference).toMatch(/^'Ana''s drums'!/);
    const area = all(file.xml('xl/workbook.xml'), 'definedName').find(
      ({ attributes }) => attributes.name === '_xlnm.Print_Area',
    );
    expect(area?.text).toBe("'Ana''s drums'!$A$1:$E$8");
  });

  it('what is printed of a sheet, and its headings, follow rows that come and go', async () => {
    const bytes = new Uint8Array(readFileSync('sample-workbooks/US/cone-cut-plan.xlsx'));
    const printed = async (count: number) => {
      const after = await saved(bytes, (sheets) =>
        sheets.map((sheet) =>
          sheet.name === 'Drums' ? { ...sheet, moves: [{ across: 'row', first: 2, count }] } : sheet,
        ),
      );
      return all(openPackage(after).xml('xl/workbook.xml'), 'definedName')
        .filter(({ attributes, text }) => /Print_/.test(attributes.name ?? '') && text.startsWith("'Drums'"))
        .map(({ text }) => text);
    };
    // As opened: A1 to L20, with the first four rows on every page.
    expect(await printed(3)).toEqual(["'Drums'!$A$1:$L$23", "'Drums'!$1:$7"]);
    expect(await printed(-1)).toEqual(["'Drums'!$A$1:$L$19", "'Drums'!$1:$3"]);
  });

  it('a removed sheet takes its names with it', async () => {
    const after = await saved(fileOf('drum-store.xlsx'), ([, second]) => [withCells(second!, { A2: { value: 3 } })], {
      names: [],
      activeSheet: 'Notes & plans',
    });
    const read = await readWorkbook(after);
    expect(read.sheets.map(({ name }) => name)).toEqual(['Notes & plans']);
    expect(all(openPackage(after).xml('xl/workbook.xml'), 'definedName')).toEqual([]);
  });
});
