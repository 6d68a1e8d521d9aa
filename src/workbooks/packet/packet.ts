/**
 * The papers of a job: what to buy and when, one shop sheet per drum, the cut plan with a table of centers, and the
 * full-size patterns.
 */
import { cutPlanDrawing } from '../../drawing/cut-plan-drawing';
import { flowed } from '../../drawing/flowed';
import { layoutOf, type PaperPage, paperPage, sentencesAt } from '../../drawing/paper-page';
import { patternDrawing } from '../../drawing/pattern-drawing';
import { type PdfPage, pdfFile } from '../../drawing/pdf-file';
import { DrawingTooLarge, fullSizePages } from '../../drawing/pdf-full-size';
import { type Paper, type PaperName, papers } from '../../drawing/tiling';
import { cautions, weightCautions } from '../sheets/cautions';
import { calendarTable, centersTable, drumTable, packetTitle } from './job-tables';
import type { SheetCells } from './packet-cells';
import { type PaperTable, textRows } from './paper-table';
import { type Functions, type Job, readJobs } from './read-job';
import { shopSheet } from './shop-sheet';
import { shoppingList } from './shopping-list';

export interface PacketRequest {
  readonly sheets: readonly SheetCells[];
  /** The text of the workbook's SiltUnits. */
  readonly units: string;
  readonly functions: Functions;
  /** The default is Letter for US and A4 for metric. */
  readonly paper?: PaperName | undefined;
}

const usual = 2.1;

/** The packet as a PDF file. Throws PacketMistake if the workbook does not have the needed cells. */
export function packetFile({ sheets, units, functions, paper }: PacketRequest): Uint8Array {
  const pages = readJobs(sheets, units, functions).flatMap((job) =>
    jobPages(job, papers[paper ?? (job.profile.name === 'US' ? 'Letter' : 'A4')]),
  );
  return pdfFile('Job packet', pages);
}

function jobPages(job: Job, size: Paper): readonly PdfPage[] {
  const { pages: patterns, left } = fullSize(job, size);
  const pages = [
    ...firstPages(job, left, size),
    ...job.drums.map((drum, i) => shopSheet(job, drum, `Shop sheet ${i + 1} of ${job.drums.length}`, size)),
    planPage(job, size),
    ...flowed([tableBlock(job, centersTable(job), 0)], size).map((page) => ({
      ...{ ...page, title: 'Cut plan', where: 'Table of centers' },
    })),
  ];
  return [...pages.map((page) => paperPage(page, size)), ...patterns];
}

function tableBlock(job: Job, table: PaperTable, gap: number) {
  const { name: head, columns, ticks = false, footed = false } = table;
  const look = { height: usual, headed: true, ticks, footed, columns: columns.map(({ share }) => share) };
  return { gap, head, rows: textRows(job, table), look };
}

function firstPages(job: Job, left: readonly string[], size: Paper): readonly PaperPage[] {
  const { table: toBuy, notes: buyingNotes } = shoppingList(job);
  const notes = [...job.left.map((drum) => `Not in this packet: ${drum}`), ...left];
  const blocks = [
    { gap: 0, sentences: [packetTitle(job)], height: 5, bold: true },
    ...(notes.length > 0 ? [{ gap: 1, sentences: notes, height: usual, bold: true }] : []),
    tableBlock(job, drumTable(job), 3),
    tableBlock(job, toBuy, 4),
    ...(buyingNotes.length > 0 ? [{ gap: 1, sentences: buyingNotes, height: usual }] : []),
    tableBlock(job, calendarTable(job), 4),
    { gap: 3, sentences: [cautions.drums, weightCautions[job.profile.name]], height: usual },
  ];
  return flowed(blocks, size).map((page) => ({ ...page, title: 'Job packet', where: 'To buy, and when' }));
}

/** The cut plan on one page. */
function planPage(job: Job, size: Paper): PaperPage {
  const { left, right, top, bottom } = layoutOf(size);
  const width = right - left;
  const { patterns, plan, profile, si } = job;
  const sheetLength = si('dimension', job.settings.sheetLength);
  const sheetWidth = si('dimension', job.settings.sheetWidth);
  const drawing = cutPlanDrawing({ patterns, plan, sheetLength, sheetWidth, profile });
  const head = sentencesAt({ x: left, y: top }, width, ['Cut plan'], 5, true);
  const key = job.drums.map(({ row, name }) => `${row}: ${name}`).join('; ');
  const words = sentencesAt(
    { x: left, y: head.bottom },
    width,
    [`Numbers on the pieces: ${key}.`, ...drawing.notes],
    usual,
  );
  return {
    ...{ title: 'Cut plan', where: 'Cut plan', primitives: [...head.primitives, ...words.primitives] },
    pictures: [{ drawing, box: { left, right, bottom, top: words.bottom - 2 } }],
  };
}

/** The full-size patterns. A pattern that needs too many pages is left out, and its message says so. */
function fullSize(job: Job, size: Paper): { readonly pages: readonly PdfPage[]; readonly left: readonly string[] } {
  const left: string[] = [];
  const pages = job.drums.flatMap((drum) => {
    try {
      const { pattern, row, name } = drum;
      return fullSizePages(patternDrawing({ pattern, profile: job.profile, row, name }), size);
    } catch (error) {
      if (!(error instanceof DrawingTooLarge)) throw error;
      left.push(error.message);
      return [];
    }
  });
  return { pages, left };
}
