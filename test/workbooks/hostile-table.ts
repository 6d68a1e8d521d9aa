import { deflateRawSync, constants as zlib } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { newEntry } from '../../src/workbooks/zip-container';
import { writeZip } from '../../src/workbooks/zip-writer';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships';

interface Parts {
  readonly rows?: string;
  readonly after?: string;
  readonly sheets?: string;
  readonly names?: string;
  readonly more?: Readonly<Record<string, Uint8Array>>;
}

function parts({ rows = '', after = '', sheets, names = '', more = {} }: Parts): Record<string, Uint8Array> {
  const type = (name: string): string => `application/vnd.openxmlformats-officedocument.spreadsheetml.${name}+xml`;
  return {
    '[Content_Types].xml': strToU8(
      `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${type('sheet.main')}"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${type('worksheet')}"/></Types>`,
    ),
    '_rels/.rels': strToU8(
      `<Relationships xmlns="${packageRelations}"><Relationship Id="a" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    'xl/workbook.xml': strToU8(
      `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets>${sheets ?? '<sheet name="Sheet" sheetId="1" r:id="s"/>'}</sheets>${names}</workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<Relationships xmlns="${packageRelations}"><Relationship Id="s" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    ),
    'xl/worksheets/sheet1.xml': strToU8(
      `<worksheet xmlns="${main}"><sheetData>${rows}</sheetData>${after}</worksheet>`,
    ),
    ...more,
  };
}

/** A small workbook with something in it. */
export const file = (what: Parts): Uint8Array => zipSync(parts(what));
export const cell = (inside: string, attributes = ''): string =>
  `<row r="1"><c r="A1"${attributes}>${inside}</c></row>`;
export const defined = (names: Readonly<Record<string, string>>): string =>
  `<definedNames>${Object.entries(names)
    .map(([name, formula]) => `<definedName name="${name}">${formula}</definedName>`)
    .join('')}</definedNames>`;

/** 500 MB of zeros, packed: megabytes that each end at a whole byte can follow each other (RFC 1951, 3.2.4). */
function packedZeros(): Uint8Array {
  const megabyte = deflateRawSync(new Uint8Array(1e6), { level: 9, finishFlush: zlib.Z_FULL_FLUSH });
  return Buffer.concat([...Array.from({ length: 500 }, () => megabyte), deflateRawSync(new Uint8Array(0))]);
}

/** A workbook with a part of zeros that says how large it is. */
function withZeros(name: string, size: number): Uint8Array {
  const { [name]: _replaced, ...others } = parts({});
  return writeZip([
    ...Object.entries(others).map(([other, bytes]) => newEntry(other, bytes)),
    { ...newEntry(name, new Uint8Array(9)), packed: packedZeros(), size },
  ]);
}

/** What is wrong with a file, the file, and what is said about it. */
export const hostile: readonly (readonly [what: string, file: () => Uint8Array, sentence: RegExp])[] = [
  [
    'names in a ring',
    () => file({ names: defined({ One: 'Two+1', Two: 'Three', Three: 'One*2' }) }),
    /names one, two, three refer to each other/,
  ],
  ['a name that is its own', () => file({ names: defined({ One: 'One' }) }), /name one refers to itself/],
  [
    'a name of JavaScript',
    () => file({ names: defined({ __proto__x: '1' }).replaceAll('__proto__x', '__proto__') }),
    /named __proto__/,
  ],
  [
    'a sheet named as one of JavaScript',
    () => file({ sheets: '<sheet name="__proto__" sheetId="1" r:id="s"/>' }),
    /sheet is named __proto__/,
  ],
  [
    'a formula of 20,000 terms',
    () => file({ rows: cell(`<f>1${'+1'.repeat(20_000)}</f><v>1</v>`) }),
    /^'Sheet'!A1 holds a formula of 40,001 characters; 8,192 are allowed$/,
  ],
  [
    'brackets far into each other',
    () => file({ rows: cell(`<f>${'('.repeat(200)}1${')'.repeat(200)}</f><v>1</v>`) }),
    /brackets in each other more than 64 deep/,
  ],
  [
    'a merge of every cell',
    () => file({ after: '<mergeCells count="1"><mergeCell ref="A1:XFD1048576"/></mergeCells>' }),
    /merged cells of the sheet 'Sheet' cover more than 1,000,000 cells/,
  ],
  [
    'an array formula over every cell',
    () => file({ rows: cell('<f t="array" ref="A1:XFD1048576">1</f><v>1</v>') }),
    /'Sheet'!A1 fills more than 1,000,000 cells/,
  ],
  ['a part of 500 MB of zeros', () => withZeros('xl/media/zeros.bin', 500e6), /would unpack to more than 300 MB/],
  [
    'a sheet of 500 MB of zeros that says it is small',
    () => withZeros('xl/worksheets/sheet1.xml', 9),
    /xl\/worksheets\/sheet1\.xml cannot be unpacked/,
  ],
  [
    'an index of no text',
    () => file({ rows: cell('<v>7</v>', ' t="s"') }),
    /'Sheet'!A1 refers to text 7, which is not in the file/,
  ],
  ['a number that is none', () => file({ rows: cell('<v>12a</v>') }), /'Sheet'!A1 holds 12a, which is no number/],
  ['a cell outside every sheet', () => file({ rows: '<row r="1"><c r="ZZZ9"><v>1</v></c></row>' }), /has a cell ZZZ9/],
  [
    'two parts of one name',
    () =>
      writeZip(
        [...Object.entries(parts({})), ['xl/worksheets/sheet1.xml', strToU8('<worksheet/>')] as const].map(
          ([name, bytes]) => newEntry(name, bytes),
        ),
      ),
    /two parts named xl\/worksheets\/sheet1\.xml/,
  ],
  [
    'a sheet that is not there',
    () => {
      const { 'xl/worksheets/sheet1.xml': _sheet, ...others } = parts({});
      return zipSync(others);
    },
    /xl\/worksheets\/sheet1\.xml is missing/,
  ],
  ['no sheets at all', () => file({ sheets: '' }), /the workbook has no sheets/],
  [
    'two sheets of one name',
    () => file({ sheets: '<sheet name="A" sheetId="1" r:id="s"/><sheet name="a" sheetId="2" r:id="s"/>' }),
    /two sheets are named a/,
  ],
  [
    'words of its own',
    () =>
      file({
        more: {
          'xl/worksheets/sheet1.xml': strToU8(
            `<!DOCTYPE a [<!ENTITY b "c">]><worksheet xmlns="${main}"><sheetData/></worksheet>`,
          ),
        },
      }),
    /DOCTYPE/,
  ],
  [
    'markup nested a thousand deep',
    () => file({ after: `${'<extLst>'.repeat(1_000)}${'</extLst>'.repeat(1_000)}` }),
    /nested more than 128 deep/,
  ],
  ['nothing but zeros', () => new Uint8Array(5_000), /not a readable \.xlsx workbook/],
];
