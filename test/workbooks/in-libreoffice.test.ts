import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { functionLibrary } from '../../src/functions/function-library';
import { cellName, parseRange } from '../../src/hosts/address';
import { dataReader } from '../../src/hosts/data-reader';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellData, WorkbookData } from '../../src/hosts/workbook-model';
import { valuesOnlyCopy } from '../../src/task-pane/values-only';
import { convertWithOffice } from '../../src/tools/office/find-libreoffice';
import { calculateWorkbook } from '../../src/workbooks/calculate';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { readyMade } from '../../src/workbooks/sheets/ready-made';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { openPackage, type Package, storedCells } from './package-parts';

/** LibreOffice 7.4 knows neither the add-in's functions nor these. */
const unknownThere =
  /\b(?:SILT\.[\w.]+|LET|LAMBDA|FILTER|SORT|SORTBY|UNIQUE|XLOOKUP|XMATCH|SEQUENCE|HSTACK|VSTACK|TAKE|DROP|TOCOL|TOROW|BYROW|BYCOL|MAP|REDUCE|CHOOSECOLS|CHOOSEROWS|TEXTBEFORE|TEXTAFTER|TEXTSPLIT)\(/;

/** Formulas of every kind that the sheets use, and of those that are easily stored wrong. */
const formulas = [
  '=SUM(A1:A3*B1:B3)',
  '=AND(A1:A3>0)',
  '=MAX(A1:A3-B1:B3)',
  '=SUM(1/A1:A3)',
  '=SUM(-A1:A3)',
  '=SUM(IF(A1:A3>15,B1:B3))',
  '=SUM(Lengths*2)',
  '=SUMPRODUCT(A1:A3,B1:B3)',
  '=COUNTIF(A1:A3,">15")',
  '=SUMIFS(B1:B3,A1:A3,">5",C1:C3,"x")',
  '=INDEX(A1:B3,2,2)',
  '=MATCH(20,A1:A3,0)',
  '=VLOOKUP(20,A1:B3,2,FALSE)',
  '=IFERROR(1/0,"none")',
  '=IFNA(MATCH(99,A1:A3,0),"absent")',
  '=ROUND(AVERAGE(A1:A3),3)&" in"',
  '=TEXT(DATE(2026,5,1),"yyyy-mm-dd")',
  '=EDATE(DATE(2026,1,31),1)',
  '=MROUND(17,5)+CEILING(2.1,0.5)+FLOOR(2.9,0.5)',
  '=STDEV(A1:A3)+MEDIAN(B1:B3)+LARGE(A1:A3,2)+SMALL(A1:A3,1)',
  '=LEFT("settling",6)&MID("filter",2,3)&LEN("bed")&SUBSTITUTE("a-b","-","+")',
  '=IF(D1="","blank","full")&IF(D1=0,"zero","")',
  '=A4=""',
  '=IF(A1:A3>15,"far","near")',
  '=A1:A3*10',
  '=ROUNDUP(-2.15,1)&ROUNDDOWN(-2.15,1)&MOD(-7,3)&INT(-2.5)',
  '=2^-1+10%*-3^2',
  '=NPV(0.05,A1:A3)+PMT(0.01,12,-1000)',
];

const crafted: WorkbookData = {
  sheets: [
    {
      name: 'Sheet',
      cells: [
        ...[10, 20, 30, 0].map((value, row) => ({ row, column: 0, value })),
        ...[1, 2, 3].map((value, row) => ({ row, column: 1, value })),
        ...['x', 'y', 'x'].map((value, row) => ({ row, column: 2, value })),
        ...formulas.map((formula, index) => ({ row: 10 + 4 * index, column: 0, formula })),
      ],
    },
  ],
  names: [{ name: 'Lengths', refersTo: "'Sheet'!$A$1:$A$3" }],
};

/** The same workbook with formulas that the other program does not know as plain values. */
function builtInOnly(workbook: WorkbookData): WorkbookData {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      charts: [],
      cells: sheet.cells.map((cell): CellData => {
        if (cell.formula === undefined || !unknownThere.test(cell.formula)) return cell;
        const { formula: _formula, spill: _spill, ...value } = cell;
        return value;
      }),
    })),
  };
}

/** The file without the results of formulas, so that whoever opens it has to compute them. */
function withoutResults(bytes: Uint8Array): Uint8Array {
  const files = unzipSync(bytes);
  for (const name of Object.keys(files).filter((one) => one.startsWith('xl/worksheets/sheet')))
    files[name] = strToU8(strFromU8(files[name]!).replace(/(<f\b[^>]*>[^<]*<\/f>)<v>[^<]*<\/v>/g, '$1'));
  return zipSync(files);
}

/** Three patterns and their plan; four scenarios, the range and the drivers of one. */
const pictures: Readonly<Record<string, number>> = { 'cone-cut-plan': 4, 'stocking-scenarios': 6 };

const folder = mkdtempSync(join(tmpdir(), 'in-libreoffice-'));
const computed: { readonly wanted: WorkbookData; readonly file: Package }[] = [];
const copies: { readonly id: string; readonly wanted: Package; readonly file: Package }[] = [];
afterAll(() => rmSync(folder, { recursive: true }));

/** LibreOffice starts once for all files, as that takes as long as several of them. */
beforeAll(async () => {
  const functions = await sourceFunctions();
  const books = [{ id: 'crafted', data: crafted }, ...readyMade.map(({ id, build }) => ({ id, data: build('US') }))];
  const paths: string[] = [];
  const put = (name: string, bytes: Uint8Array): void => {
    const path = join(folder, `${name}.xlsx`);
    writeFileSync(path, bytes);
    paths.push(path);
  };
  const wanted: WorkbookData[] = [];
  for (const { id, data } of books) {
    const own = builtInOnly(await calculateWorkbook(functions, data));
    wanted.push(own);
    put(id, withoutResults(await writeWorkbook(own)));
  }
  // The samples, which sample-workbooks.test.ts holds to what is generated, byte for byte.
  const samples = readyMade.map(({ id }) => new Uint8Array(readFileSync(`sample-workbooks/US/${id}.xlsx`)));
  for (const [index, bytes] of samples.entries())
    put(
      `values of ${readyMade[index]!.id}`,
      await valuesOnlyCopy(bytes, dataReader(await readWorkbook(bytes)), functionLibrary),
    );
  const output = join(folder, 'opened');
  mkdirSync(output);
  const files = convertWithOffice(paths, 'xlsx', output).map((path) => openPackage(new Uint8Array(readFileSync(path))));
  wanted.forEach((own, index) => void computed.push({ wanted: own, file: files[index]! }));
  readyMade.forEach(({ id }, index) => {
    copies.push({ id, wanted: openPackage(samples[index]!), file: files[wanted.length + index]! });
  });
});

describe('LibreOffice, which calculates saved workbooks by itself and does not know the add-in', () => {
  it('gets the same results, cell by cell', () => {
    let compared = 0;
    const differences: unknown[] = [];
    for (const { wanted, file } of computed) {
      for (const sheet of wanted.sheets) {
        const part = file.sheets.find(({ name }) => name === sheet.name)!.part;
        const cells = new Map(storedCells(file.xml(part)).map((cell) => [cell.address, cell]));
        const values = new Map(sheet.cells.map((cell) => [cellName(cell.row, cell.column), cell.value]));
        for (const { row, column, formula, spill } of sheet.cells) {
          if (formula === undefined) continue;
          const range = parseRange(spill ?? '') ?? { row, column, rows: 1, columns: 1 };
          for (let at = 0; at < range.rows * range.columns; at += 1) {
            const address = cellName(range.row + Math.floor(at / range.columns), range.column + (at % range.columns));
            const ours = values.get(address) ?? '';
            const theirs = cells.get(address);
            compared += 1;
            if (!agrees(ours, theirs)) differences.push([sheet.name, address, formula, ours, theirs?.value]);
          }
        }
      }
    }
    expect(differences).toEqual([]);
    expect(compared).toBeGreaterThan(120);
  });

  it.each(readyMade.map(({ id }) => id))(
    'shows every result, every drawing and no #NAME? of a values-only copy: %s',
    (id) => {
      const { wanted, file } = copies.find((copy) => copy.id === id)!;
      const errors = file.sheets.flatMap(({ name, part }) =>
        storedCells(file.xml(part))
          .filter(({ type }) => type === 'e')
          .map(({ address, value }) => [name, address, value]),
      );
      expect(errors).toEqual([]);
      // LibreOffice writes only the pictures that it could read.
      expect(file.names.filter((name) => /media\/image\d+\.png$/.test(name))).toHaveLength(pictures[id] ?? 0);
      for (const { name, part } of wanted.sheets) {
        const shown = new Map(
          storedCells(file.xml(file.sheets.find((sheet) => sheet.name === name)!.part)).map((cell) => [
            cell.address,
            cell,
          ]),
        );
        for (const { address, value, type, formula } of storedCells(wanted.xml(part)))
          if (formula !== undefined && type === undefined && value !== undefined)
            expect(Number(shown.get(address)?.value)).toBeCloseTo(Number(value), 9);
      }
    },
  );
});

function agrees(
  ours: CellData['value'],
  theirs: { value: string | undefined; type: string | undefined } | undefined,
): boolean {
  const value = theirs?.value ?? '';
  if (typeof ours === 'number') return Math.abs(Number(value) - ours) <= 1e-9 * Math.max(1, Math.abs(ours));
  if (typeof ours === 'boolean') return value === (ours ? '1' : '0');
  return typeof ours === 'object' ? theirs?.type === 'e' : value === ours;
}
