/** The packet as a workbook of values, without formulas, for any spreadsheet program. */
import { columnName } from '../../hosts/address';
import type { CellScalar, CellStyle, SheetData } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { cautions } from '../sheets/cautions';
import { columnWidths, print } from '../sheets/frame';
import { SheetDraft } from '../sheets/sheet-draft';
import { formats, formatted } from '../sheets/styles';
import { writeWorkbook } from '../write-xlsx';
import { calendarTable, centersTable, drumTable, packetTitle } from './job-tables';
import type { PacketRequest } from './packet';
import type { PaperTable } from './paper-table';
import type { JobDrum } from './read-drums';
import { type Job, readJobs } from './read-job';
import { factsOf, leakTests, marksOf, portsOf, stepsOf } from './shop-tables';
import { shoppingList } from './shopping-list';

/** The packet's tables as an .xlsx file. Throws PacketMistake if the workbook does not have the needed cells. */
export async function packetWorkbook({ sheets, units, functions }: PacketRequest): Promise<Uint8Array> {
  const jobs = readJobs(sheets, units, functions);
  const taken = new Set<string>();
  // A drum can have the name of one of these.
  const heads = jobs.map(() => ({ job: sheetName('Job', taken), plan: sheetName('Cut plan', taken) }));
  return writeWorkbook({
    title: 'Job packet',
    sheets: jobs.flatMap((job, i) => jobSheets(job, heads[i] ?? { job: 'Job', plan: 'Cut plan' }, taken)),
  });
}

function jobSheets(job: Job, name: { readonly job: string; readonly plan: string }, taken: Set<string>) {
  const { table: toBuy, notes } = shoppingList(job);
  const left = job.left.map((drum) => `Not in this packet: ${drum}`);
  const tables = [drumTable(job), toBuy, calendarTable(job)];
  return [
    pageSheet(job, name.job, [...left, ...notes], tables, [cautions.drums], packetTitle(job)),
    ...job.drums.map((drum) => drumSheet(job, drum, sheetName(drum.name, taken))),
    pageSheet(job, name.plan, [], [centersTable(job)], []),
  ];
}

/** A name that a sheet may have and no other sheet has. */
function sheetName(drum: string, taken: Set<string>): string {
  const plain =
    drum
      .replace(/[[\]:*?/\\']/g, ' ')
      .trim()
      .slice(0, 24) || 'drum';
  let name = plain;
  for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${plain} (${number})`;
  taken.add(name.toLowerCase());
  return name;
}

function drumSheet(job: Job, drum: JobDrum, name: string): SheetData {
  const facts: PaperTable = {
    name: `${drum.name}: shop sheet`,
    columns: [
      { heading: 'what', share: 1 },
      { heading: 'size', share: 1 },
      { heading: 'unit', share: 1 },
    ],
    rows: factsOf(job, drum).map(([label, value, kind]) => [label, value, unitOf(job, kind)]),
  };
  const tests: PaperTable = {
    name: 'Leak tests',
    columns: ['leak test', 'date', 'no drop'].map((heading) => ({ heading, share: 1 })),
    rows: leakTests.map((test) => [test, '', '']),
  };
  return pageSheet(
    job,
    name,
    [cautions.drums],
    [facts, marksOf(job, drum), portsOf(job, drum), tests],
    stepsOf(job, drum),
  );
}

const widths = [34, 16, 16, 16, 16, 16, 34];

/** Notes, tables one under the other, and sentences below them. */
function pageSheet(
  job: Job,
  name: string,
  notes: readonly string[],
  tables: readonly PaperTable[],
  sentences: readonly string[],
  title = name,
): SheetData {
  const draft = new SheetDraft(name);
  const last = columnName(widths.length - 1);
  let row = 1;
  const wide = (text: string, style: 'text' | 'caution' | 'title', height: number): void => {
    draft.wide(`A${row}:${last}${row}`, plainText(text), style, height);
    row += 1;
  };
  wide(title, 'title', 26);
  for (const note of notes) wide(note, 'caution', 31);
  for (const table of tables) {
    row += 1;
    draft.put(`A${row}`, plainText(table.name), 'section');
    draft.across(
      `A${row + 1}`,
      table.columns.map(({ heading, kind }) => withUnit(job, heading, kind)),
      'heading',
    );
    draft.height(row + 1, 32);
    row += 2;
    for (const values of table.rows) {
      values.forEach((value, i) => {
        draft.put(`${columnName(i)}${row}`, plainText(value), styleOf(table.columns[i]?.kind, value));
      });
      row += 1;
    }
  }
  row += 1;
  for (const sentence of sentences) wide(sentence, 'text', 31);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    print: print(job.profile.name, `A1:${last}${row}`, { landscape: false, titleRows: '1:1' }),
  });
}

/** SheetDraft takes text that begins with = as a formula; the packet has none. */
function plainText(value: CellScalar): CellScalar {
  return typeof value === 'string' && value.startsWith('=') ? ` ${value}` : value;
}

function unitOf({ profile }: Job, kind: Kind | undefined): string {
  return kind === undefined ? '' : profile.units[kind].symbol;
}

function withUnit(job: Job, heading: string, kind: Kind | undefined): string {
  const unit = unitOf(job, kind);
  return unit === '' ? heading : `${heading} (${unit})`;
}

function styleOf(kind: Kind | undefined, value: CellScalar): CellStyle {
  if (kind === 'date') return formatted('result', formats.date);
  return formatted('result', typeof value !== 'number' || Number.isInteger(value) ? formats.general : formats.two);
}
