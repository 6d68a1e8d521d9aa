import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import type { CellResult } from '../../../src/hosts/workbook-model';
import { serialOfDate } from '../../../src/units/date';
import { packetFile } from '../../../src/workbooks/packet/packet';
import type { SheetCells } from '../../../src/workbooks/packet/packet-cells';
import { packetWorkbook } from '../../../src/workbooks/packet/packet-workbook';
import { readWorkbook } from '../../../src/workbooks/read-xlsx';
import { type ReadPage, readPdf } from '../../drawing/read-pdf';
import { spill } from '../../functions/call';
import { drumsUnder, jobSheets } from './job-sheets';

type Row = readonly CellResult[];

/** The sheets of a file, cell by cell. */
async function sheetsOf(bytes: Uint8Array): Promise<readonly SheetCells[]> {
  const { sheets } = await readWorkbook(bytes);
  return sheets.map(({ name, cells }) => {
    const rows: CellResult[][] = [];
    for (const { row, column, value } of cells) {
      if (value === undefined) continue;
      rows[row] = rows[row] ?? [];
      (rows[row] ?? [])[column] = value;
    }
    return { name, rows: Array.from(rows, (line) => Array.from(line ?? [], (value) => value ?? '')) };
  });
}

async function made(units: 'US' | 'metric') {
  const drums = drumsUnder(units).slice(0, 3);
  const prices = await sheetsOf(new Uint8Array(readFileSync(`sample-workbooks/${units}/materials-sheet.xlsx`)));
  const sheets = [...jobSheets(units, drums), ...prices];
  const request = { sheets, units, functions: functionLibrary };
  return {
    ...{ drums, sheets },
    // Those before the full-size patterns.
    pages: await readPdf(packetFile(request), 8),
    book: await sheetsOf(await packetWorkbook(request)),
  };
}

function sheetOf(sheets: readonly SheetCells[], name: string): readonly Row[] {
  const sheet = sheets.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return sheet.rows;
}

/** The rows under a table's name and its headings, down to a blank row. */
function tableOf(rows: readonly Row[], name: string): readonly Row[] {
  const top = rows.findIndex(([first]) => typeof first === 'string' && first.startsWith(name));
  const below = rows.slice(top + 2);
  const end = below.findIndex((row) => row.every((value) => value === ''));
  return top < 0 ? [] : below.slice(0, end < 0 ? below.length : end);
}

/** What is on a page in one line with some words, to their right. */
function besideOn({ texts }: ReadPage, words: string): readonly string[][] {
  return texts
    .filter(({ text }) => text === words)
    .map(({ x, y }) =>
      texts
        .filter((one) => one.x > x && Math.abs(one.y - y) < 0.1 && one.text.trim() !== '')
        .toSorted((a, b) => a.x - b.x)
        .map(({ text }) => text),
    );
}

/** Whether words on paper show a number, as exactly as their unit is printed; a fraction of an inch within 1/64. */
function shows(text: string, value: CellResult): boolean {
  if (typeof value !== 'number') return text === value;
  const date = serialOfDate(text);
  if (date !== undefined) return date === value;
  const printed = Number.parseFloat(text);
  const fraction = /\((?:(\d+) )?(?:(\d+)\/(\d+))?(\d+)?\)$/.exec(text);
  if (fraction !== null) {
    const [, whole = 0, above = 0, below = 1, alone = 0] = fraction.map((part) => (part ? Number(part) : undefined));
    if (Math.abs(whole + above / below + alone - value) > 1 / 64 + 1e-9) return false;
  }
  const last = text.includes('°') || / in\b|^\d+\.\d\d$/.test(text) ? 0.005 : / mm$/.test(text) ? 0.05 : 0;
  return Math.abs(printed - value) <= Math.max(last + 1e-9, last === 0 ? 5e-4 * Math.abs(value) : 0);
}

/** Every table row must be in one line on the page, figure by figure. */
function expectOnPaper(page: ReadPage, rows: readonly Row[]): void {
  for (const [first, ...rest] of rows) {
    const values = rest.filter((value) => value !== '');
    const lines = besideOn(page, String(first));
    const isThere = lines.some((texts) => values.every((value, i) => shows(texts[i] ?? '', value)));
    expect(isThere, `${first}: ${values.join(' | ')} in ${JSON.stringify(lines)}`).toBe(true);
  }
}

/** A row up to its last filled cell. */
const withoutEnd = (row: Row): Row => row.slice(0, row.findLastIndex((value) => value !== '') + 1);

const numbersIn = (row: Row): readonly CellResult[] => row.filter((value) => typeof value === 'number');

describe.each(['US', 'metric'] as const)('each figure of a packet under %s', { timeout: 120_000 }, (units) => {
  const job = made(units);

  it('equals its cell: the drums', async () => {
    const { sheets, book, pages } = await job;
    const table = tableOf(sheetOf(book, 'Job'), 'Drums');
    const typed = sheetOf(sheets, 'Drums').slice(2, 5);
    const patterns = sheetOf(sheets, 'Patterns').slice(1, 4);
    const mixed = sheetOf(sheets, 'Base mix').slice(1, 4);
    expect(table).toEqual(
      typed.map(([name, held, , height, , diameter], i) => {
        return [name, held, diameter, height, patterns[i]?.[9], mixed[i]?.[1], mixed[i]?.[2]];
      }),
    );
    expectOnPaper(pages[0] as ReadPage, table);
  });

  it('equals its cell: what to buy, in packs at the prices typed, with the total', async () => {
    const { sheets, book, pages } = await job;
    const table = tableOf(sheetOf(book, 'Job'), 'To buy');
    const prices = new Map(
      sheetOf(sheets, 'Prices')
        .slice(4)
        .map((row) => [row[0], row] as const),
    );
    const items = table.slice(0, -1);
    for (const [item, needed, unit, packs, cost] of items) {
      const [, size, price, sold] = prices.get(item) ?? [];
      expect([item, unit]).toEqual([item, sold]);
      expect(packs, String(item)).toBe(Math.ceil(Number(needed) / Number(size) - 1e-9));
      expect(cost).toBeCloseTo(Number(packs) * Number(price), 8);
    }
    const [words, ...total] = table.at(-1) ?? [];
    expect(words).toBe('total');
    const sum = items.reduce((all, row) => all + Number(row[4]), 0);
    expect(numbersIn(total)).toEqual([expect.closeTo(sum, 8)]);

    const needed = new Map(items.map(([item, quantity]) => [item, quantity]));
    const [sheetsNeeded] = sheetOf(sheets, 'Cut plan')[2] ?? [];
    const [aggregate, , bags] = sheetOf(sheets, 'Base mix').at(-1) ?? [];
    expect(needed.get('sheet for cones')).toBe(sheetsNeeded);
    expect(needed.get('base mix aggregate')).toBe(aggregate);
    expect(needed.get('base mix cement')).toBe(bags);
    expect(needed.get('drain fittings')).toBe(3);
    expect(needed.get('float switch')).toBe(1);
    // Four legs for each of three drums, of the stand that a pail of 14.5 in (370 mm) needs.
    const stand = units === 'US' ? (14.5 + 6 + 2) / 12 : (370 + 150 + 50) / 1000;
    expect(needed.get('stand posts')).toBeCloseTo(12 * stand, 1);
    expectOnPaper(
      pages[0] as ReadPage,
      items.map((row) => row.slice(0, 5)),
    );
    expect(besideOn(pages[0] as ReadPage, 'total')).toEqual([[sum.toFixed(2)]]);
  });

  it('equals its cell: the calendar', async () => {
    const { sheets, book, pages } = await job;
    const table = tableOf(sheetOf(book, 'Job'), 'Calendar');
    const cells = sheetOf(sheets, 'Calendar').slice(10, 17);
    expect(table).toEqual(cells.map((row) => row.slice(0, 3)));
    const page = pages.find((one) => one.texts.some(({ text }) => text === 'Calendar'));
    expectOnPaper(
      page as ReadPage,
      table.map((row) => row.slice(0, 2)),
    );
  });

  it('equals its cell: the shop sheet of every drum', async () => {
    const { drums, sheets, book, pages } = await job;
    const patterns = sheetOf(sheets, 'Patterns').slice(1, 4);
    const drumCells = sheetOf(sheets, 'Drums').slice(2, 5);
    const mixed = sheetOf(sheets, 'Base mix').slice(1, 4);
    const weighed = sheetOf(sheets, 'Stand and ports').slice(1, 4);
    const stand = units === 'US' ? 22.5 : 570;
    const [spacing, rise, bag] = units === 'US' ? [1.5, 1, 94] : [40, 25, 25];
    drums.forEach(({ name }, i) => {
      const page = pages.find((one) => one.texts.some(({ text }) => text === `${name}: shop sheet`)) as ReadPage;
      const sheet = sheetOf(book, name);
      const [, , drain, height, depth, diameter] = drumCells[i] ?? [];
      const [, ...pattern] = patterns[i] ?? [];
      const [angle, slant, inner, outer, sector, length, width, , pieces, lap] = pattern;
      const rivets = Number(spill('CONE.RIVETS', units, slant, spacing)[0]?.[0]);
      const [, water, baseMass, massTotal, perLeg, perLegOfTwo] = weighed[i] ?? [];
      expect([water, baseMass]).toHaveLength(2);
      const facts = tableOf(sheet, `${name}: shop sheet`);
      expect(facts.map(([label, value]) => [label, value])).toEqual([
        ['inside diameter', diameter],
        ['cone height', height],
        ['wall angle', angle],
        ['slant, and screed', slant],
        ['inner radius', inner],
        ['outer radius', outer],
        ['sector angle', sector],
        ['blank length', length],
        ['blank width', width],
        ['pieces', pieces],
        ['lap', lap],
        ['rivets per seam', rivets],
        ['rivets in all', rivets * Number(pieces)],
        ['seat: drain bore', drain],
        ['bolt circle', 'of the fitting: __________'],
        ['base mix', mixed[i]?.[1]],
        ['water held', mixed[i]?.[2]],
        ['total mass', massTotal],
        ['load per leg', perLeg],
        ['if two legs carry all', perLegOfTwo],
        ['stand', stand],
      ]);
      expectOnPaper(
        page,
        facts.map((row) => row.slice(0, 2)),
      );

      const marks = spill('CONE.MARKS', units, [pattern], 15) as CellResult[][];
      expect(tableOf(sheet, 'Marking out').map(withoutEnd)).toEqual(marks.map(withoutEnd));
      // Paper may have room for every second or third mark only.
      const [first] = besideOn(page, 'mark 1');
      const step = Number.parseFloat(first?.[0] ?? '');
      expect(step % 15).toBe(0);
      expectOnPaper(page, spill('CONE.MARKS', units, [pattern], step) as CellResult[][]);

      const ports = spill('TANK.PORTS', units, depth, Number(height) + rise, stand) as CellResult[][];
      const portRows = tableOf(sheet, 'Ports');
      ports.forEach(([port, , floor, ground], at) => {
        expect(portRows[at]).toEqual([port, expect.closeTo(Number(floor), 9), expect.closeTo(Number(ground), 9)]);
      });
      expectOnPaper(page, portRows);

      const [aggregate, cement, bags] = spill('CONE.MIX', units, mixed[i]?.[1], 6, 0.1, bag)[0] as number[];
      const step5 = sheet.map(([text]) => String(text)).find((text) => text.startsWith('Pour the base')) ?? '';
      const figuresShown = (step5.match(/\d[\d.]*(?= (ft3|L|lb|kg|bag))/g) ?? []).map(Number);
      expect(figuresShown).toEqual([expect.closeTo(aggregate ?? 0, 1), expect.closeTo(cement ?? 0, 1), bags]);
      const printed = page.texts.map(({ text }) => text).join(' ');
      for (const word of step5.slice(0, step5.indexOf('Wet mix')).trim().split(' ')) expect(printed).toContain(word);
    });
  });

  it('equals its cell: the table of centers', async () => {
    const { drums, sheets, book, pages } = await job;
    const plan = sheetOf(sheets, 'Cut plan').slice(5);
    const table = tableOf(sheetOf(book, 'Cut plan'), 'Centers');
    expect(table).toEqual(
      plan.map(([row, piece, sheet, x, y, direction]) => [
        ...[sheet, drums[Number(row) - 1]?.name, piece, x, y, direction],
      ]),
    );
    const page = pages.find((one) => one.texts.some(({ text }) => text.startsWith('Centers of the arcs')));
    expectOnPaper(page as ReadPage, table);
  });
});

describe('a packet without prices', () => {
  it('lists what to buy without costs and says how to get them', async () => {
    const sheets = jobSheets('US', drumsUnder('US').slice(0, 2));
    const book = await sheetsOf(await packetWorkbook({ sheets, units: 'US', functions: functionLibrary }));
    const rows = sheetOf(book, 'Job');
    const items = tableOf(rows, 'To buy');
    expect(items.length).toBeGreaterThan(12);
    expect(items.every((row) => row[3] === '' && row[4] === '')).toBe(true);
    expect(rows.flat().join('\n')).toContain('insert the ready-made Materials sheets');
  });

  it('says why there are no costs if a price is for another unit', async () => {
    const prices = {
      name: 'Prices',
      rows: [
        ['item', 'pack size', 'pack price', 'unit'],
        ['pipe', 10, 5, 'kg'],
      ],
    };
    const sheets = [...jobSheets('US', drumsUnder('US').slice(0, 1)), prices];
    const pages = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }), 1);
    const words = pages[0]?.texts.map(({ text }) => text).join(' ');
    expect(words).toContain('No costs: prices: pipe is in ft and in kg');
  });
});
