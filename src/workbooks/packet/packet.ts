/**
 * The papers of a job: a shopping list, one shop sheet per drum, the cut plan with a table of centers, and the full-size
 * patterns.
 */
import { cutPlanDrawing } from '../../drawing/cut-plan-drawing';
import { layoutOf, type PaperPage, type Placed, paperPage, sentencesAt, tableAt } from '../../drawing/paper-page';
import { patternDrawing } from '../../drawing/pattern-drawing';
import { type PdfPage, pdfFile } from '../../drawing/pdf-file';
import { DrawingTooLarge, fullSizePages } from '../../drawing/pdf-full-size';
import { type Paper, type PaperName, papers } from '../../drawing/tiling';
import { cautions, weightCautions } from '../sheets/cautions';
import { angleText, figureText, lengthText, rounded } from './figure-text';
import type { SheetCells } from './packet-cells';
import { type Functions, type Job, readJob } from './read-job';
import { rivetsOf, shopSheet } from './shop-sheet';

export interface PacketRequest {
  readonly sheets: readonly SheetCells[];
  /** The text of the workbook's SiltUnits. */
  readonly units: string;
  readonly functions: Functions;
  /** The default is Letter for US and A4 for metric. */
  readonly paper?: PaperName | undefined;
}

/** How many rows of the table of centers fit on a page. */
const centersOnPage = 40;
const usual = 2.1;

/** The packet as a PDF file. Throws PacketMistake if the workbook does not have the needed cells. */
export function packetFile({ sheets, units, functions, paper }: PacketRequest): Uint8Array {
  const job = readJob(sheets, units, functions);
  const size = papers[paper ?? (job.profile.name === 'US' ? 'Letter' : 'A4')];
  const { pages: patterns, left } = fullSize(job, size);
  const pages = [
    ...job.drums.map((drum, i) => shopSheet(job, drum, `Shop sheet ${i + 1} of ${job.drums.length}`, size)),
    ...centerPages(job, size),
  ].map((page) => paperPage(page, size));
  return pdfFile('Job packet', [paperPage(buyingPage(job, left, size), size), ...pages, ...patterns]);
}

function buyingPage(job: Job, left: readonly string[], size: Paper): PaperPage {
  const { left: x, right, top } = layoutOf(size);
  const width = right - x;
  const placed: Placed[] = [];
  const below = (gap: number) => ({ x, y: (placed.at(-1)?.bottom ?? top) - gap });
  const add = (block: Placed) => placed.push(block);
  add(sentencesAt(below(0), width, [`Job packet: ${job.drums.length} drums`], 5, true));
  const notes = [...job.left.map((drum) => `Not in this packet: ${drum}`), ...left];
  if (notes.length > 0) add(sentencesAt(below(1), width, notes, usual, true));
  add(sentencesAt(below(3), width, ['Drums'], 2.6, true));
  const drums = job.drums.map((drum) => [
    ...[drum.name, drum.held, lengthText(job, drum.diameter), lengthText(job, drum.coneHeight)],
    ...[
      rounded(drum.patternCells[8] ?? ''),
      figureText(job, 'bulk', drum.baseMix),
      figureText(job, 'volume', drum.water),
    ],
  ]);
  const drumHeadings = ['drum', 'held', 'inside diameter', 'cone height', 'pieces', 'base mix', 'water held'];
  add(
    tableAt(below(0.5), width, [drumHeadings, ...drums], {
      ...{ height: usual, headed: true, columns: [14, 16, 20, 18, 8, 12, 12] },
    }),
  );
  add(sentencesAt(below(4), width, ['To buy'], 2.6, true));
  add(
    tableAt(below(0.5), width, shoppingList(job), { height: usual, headed: true, ticks: true, columns: [16, 14, 30] }),
  );
  add(
    sentencesAt(
      below(4),
      width,
      ['Calendar: count the days from the first leak test and write in the dates'],
      2.6,
      true,
    ),
  );
  const calendar = calendarOf(job);
  add(tableAt(below(0.5), width, calendar, { height: usual, headed: true, ticks: true, columns: [16, 6, 10, 40] }));
  add(sentencesAt(below(3), width, [cautions.drums, weightCautions[job.profile.name]], usual));
  return { title: 'Job packet', where: 'To buy, and when', primitives: placed.flatMap(({ primitives }) => primitives) };
}

function shoppingList(job: Job): readonly (readonly string[])[] {
  const { sheetLength, sheetWidth, thickness, gap } = job.settings;
  const [sheets = '', , , share = ''] = job.sheets;
  const size = `${lengthText(job, sheetLength)} by ${lengthText(job, sheetWidth)}, ${lengthText(job, thickness)} thick`;
  const [aggregate = '', cement = '', bags = ''] = job.toBuy.values;
  const rivets = job.drums.reduce((sum, drum) => sum + Number(/(\d+) in all/.exec(rivetsOf(job, drum))?.[1] ?? 0), 0);
  return [
    ['item', 'quantity', 'how'],
    ['sheets', rounded(sheets), `${size}; ${Math.round(Number(share) * 100)} % used, gap ${lengthText(job, gap)}`],
    [
      'rivets',
      rounded(rivets),
      `spacing at most ${lengthText(job, job.rivetSpacing)}; use a metal that is safe for fish`,
    ],
    ['light aggregate', figureText(job, 'bulk', aggregate), 'for all drums, with spills'],
    ['cement', bags === 1 ? '1 bag' : `${rounded(bags)} bags`, `${figureText(job, 'mass', cement)} in all`],
    [
      'drain fittings',
      rounded(job.drums.length),
      `bores ${job.drums.map((drum) => lengthText(job, drum.drain)).join(', ')}`,
    ],
  ];
}

/** An arbitrary day to count from. */
const dayCountedFrom = 45000;

function calendarOf(job: Job): readonly (readonly string[])[] {
  const steps = job.call('PLAN.DATES', dayCountedFrom);
  return [
    ['step', 'day', 'date', 'note'],
    ...steps.map(([step = '', date = 0, note = '']) => [
      String(step),
      String(Number(date) - dayCountedFrom),
      '',
      String(note),
    ]),
  ];
}

/** The cut plan on one page, then tables of its centers with the names of the drums. */
function centerPages(job: Job, size: Paper): readonly PaperPage[] {
  const { left, right, top, bottom } = layoutOf(size);
  const width = right - left;
  const { patterns, plan, profile, si } = job;
  const sheetLength = si('dimension', job.settings.sheetLength);
  const sheetWidth = si('dimension', job.settings.sheetWidth);
  const drawing = cutPlanDrawing({ patterns, plan, sheetLength, sheetWidth, profile });
  const named = new Map(job.drums.map(({ row, name }) => [row, name]));
  const head = sentencesAt({ x: left, y: top }, width, ['Cut plan'], 5, true);
  const key = job.drums.map(({ row, name }) => `${row}: ${name}`).join('; ');
  const words = sentencesAt(
    { x: left, y: head.bottom },
    width,
    [`Numbers on the pieces: ${key}.`, ...drawing.notes],
    usual,
  );
  const planPage: PaperPage = {
    ...{ title: 'Cut plan', where: 'Cut plan', primitives: [...head.primitives, ...words.primitives] },
    pictures: [{ drawing, box: { left, right, bottom, top: words.bottom - 2 } }],
  };
  const rows = job.planCells.map(([row = '', piece = '', sheet = '', x = '', y = '', direction = '']) => [
    ...[rounded(sheet), named.get(Number(row)) ?? rounded(row), rounded(piece)],
    ...[lengthText(job, x), lengthText(job, y), angleText(job, direction)],
  ]);
  const headings = ['sheet', 'drum', 'piece', 'center x', 'center y', 'direction'];
  const pages: PaperPage[] = [planPage];
  for (let from = 0; from < rows.length; from += centersOnPage) {
    const title = sentencesAt(
      { x: left, y: top },
      width,
      ['Centers of the arcs, and lower-left corners of rectangles, from each sheet’s lower-left corner'],
      3,
      true,
    );
    const table = tableAt(
      { x: left, y: title.bottom - 1 },
      width,
      [headings, ...rows.slice(from, from + centersOnPage)],
      {
        ...{ height: usual, headed: true, columns: [7, 16, 7, 20, 20, 12] },
      },
    );
    pages.push({
      title: 'Cut plan',
      where: 'Table of centers',
      primitives: [...title.primitives, ...table.primitives],
    });
  }
  return pages;
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
