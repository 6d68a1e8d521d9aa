import { describe, expect, it } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { packetFile } from '../../../src/workbooks/packet/packet';
import { type ReadPage, readPdf } from '../../drawing/read-pdf';
import { drumsUnder, jobSheets } from './job-sheets';

async function packet(units: 'US' | 'metric', paper: 'A4' | 'Letter', drums = drumsUnder(units)) {
  const sheets = jobSheets(units, drums);
  const pages = await readPdf(packetFile({ sheets, units, functions: functionLibrary, paper }));
  return { sheets, drums, pages };
}

/** The shop sheets and what follows them. */
const shopPages = (pages: readonly ReadPage[]) =>
  pages.slice(pages.findIndex((page) => wordsOf(page).includes('Drum 1: shop sheet')));

const wordsOf = ({ texts }: ReadPage) => texts.map(({ text }) => text).join(' ');

describe.each([
  ['US', 'Letter'],
  ['US', 'A4'],
  ['metric', 'A4'],
  ['metric', 'Letter'],
] as const)('a packet of ten drums under %s on %s', (units, paper) => {
  const made = packet(units, paper);

  it('has a page to buy by, a shop sheet a drum, the cut plan, its centers and the full-size patterns', async () => {
    const { drums, pages } = await made;
    const shop = shopPages(pages);
    expect(wordsOf(pages[0] as ReadPage)).toContain('Job packet: 10 drums');
    drums.forEach(({ name }, i) => {
      expect(wordsOf(shop[i] as ReadPage)).toContain(`${name}: shop sheet`);
    });
    expect(wordsOf(shop[10] as ReadPage)).toContain('Numbers on the pieces: 1: Drum 1');
    expect(wordsOf(shop[11] as ReadPage)).toContain('Centers of the arcs');
    expect(shop.length).toBeGreaterThan(12 + 10);
  });

  it('clips nothing, and keeps words out of the foot of the page', async () => {
    const { pages } = await made;
    const papers = pages.length - shopPages(pages).length + 12;
    for (const [i, { texts, strokes, width, height }] of pages.slice(0, papers).entries()) {
      expect([width, height].map(Math.round)).toEqual(paper === 'A4' ? [210, 297] : [216, 279]);
      for (const { text, x, y, width: wide } of texts) {
        // A turned dimension of the picture is measured along its own direction.
        expect(x, text).toBeGreaterThan(5);
        if (!/^(blank width|sheet width|lap|inner|outer|\d)/.test(text)) expect(x + wide, text).toBeLessThan(width - 5);
        expect(y, `${text} on page ${i + 1}`).toBeGreaterThan(9);
        expect(y, text).toBeLessThan(height - 5);
      }
      for (const [x, y] of strokes.flatMap(({ points }) => points)) {
        expect(x).toBeGreaterThan(9);
        expect(x).toBeLessThan(width - 9);
        expect(y).toBeGreaterThan(9);
        expect(y).toBeLessThan(height - 5);
      }
      const foot = texts.filter(({ y }) => y < 28).map(({ text }) => text);
      expect(
        foot.filter(
          (text) => !/mm$|in$|^Print|Shop sheet|Cut plan|^Table|^To buy|shop sheet|packet|bars|cutting/.test(text),
        ),
      ).toEqual([]);
    }
  });

  it('shows bars of 100 mm and 4 in that are true within 0.2 mm, on every page', async () => {
    const { pages } = await made;
    for (const { strokes } of pages) {
      const long = strokes
        .filter(({ points, curved, weight }) => !curved && points.length === 2 && weight > 1)
        .map(({ points: [from, to] }) => (from && to && from[1] === to[1] ? Math.abs(to[0] - from[0]) : 0));
      expect(long.some((one) => Math.abs(one - 100) < 0.2)).toBe(true);
      expect(long.some((one) => Math.abs(one - 101.6) < 0.2)).toBe(true);
    }
  });
});

describe('a packet of a workbook with faults', () => {
  it('leaves a drum without a pattern out and names it', async () => {
    const drums = drumsUnder('US').slice(0, 3);
    const fault = { error: { code: '#VALUE!', message: 'height: give a length' } };
    const sheets = jobSheets('US', drums).map((sheet) => {
      const rows =
        sheet.name === 'Patterns'
          ? sheet.rows.map((row, i) => (i === 2 ? [row[0] ?? '', fault] : row))
          : sheet.name === 'Cut plan'
            ? sheet.rows.filter(([pattern, piece]) => pattern !== 2 || typeof piece !== 'number')
            : sheet.rows;
      return { ...sheet, rows };
    });
    const pages = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }), 1);
    expect(wordsOf(pages[0] as ReadPage)).toContain('Not in this packet: Drum 2: height: give a length');
  });

  it('names a drum below the room for drums, and one without a name', async () => {
    const [drums, ...rest] = jobSheets('US', drumsUnder('US').slice(0, 3));
    const rows = [...(drums?.rows ?? [])];
    rows.splice(5, 0, ['Ninth'], ['', 'vinegar', 4, 9, 20, 21], ['Tenth', 'olives', 4, 9, 20, 22]);
    // The settings follow at once where a drum was typed over the blank row and the heading above them.
    expect(rows.splice(8, 1)).toEqual([['']]);
    const sheets = [{ name: 'Drums', rows }, ...rest];
    const [first] = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }), 1);
    const words = wordsOf(first as ReadPage);
    expect(words).toContain('Job packet: 3 drums');
    for (const name of ['Ninth', 'Tenth'])
      expect(words).toContain(`Not in this packet: ${name}: the sheet Patterns has no row for it`);
    expect(words).toContain('row 7 of the sheet Drums: give the drum a name');
    expect(words.match(/Not in this packet/g)).toHaveLength(3);
  });

  it('does not take the line that says what to check for a drum', async () => {
    const [drums, ...rest] = jobSheets('US', drumsUnder('US').slice(0, 3));
    const rows = [...(drums?.rows ?? [])];
    rows.splice(5, 0, ['Check Drum 2: A drain of 0 lets nothing out.']);
    const sheets = [{ name: 'Drums', rows }, ...rest];
    const [first] = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }), 1);
    expect(wordsOf(first as ReadPage)).not.toContain('Not in this packet');
  });

  it('reads a drum below a blank row, and two of one name each by itself', async () => {
    const drums = drumsUnder('US')
      .slice(0, 3)
      .map((drum) => ({ ...drum, name: 'Fern' }));
    const [sheet, ...rest] = jobSheets('US', drums);
    const rows = [...(sheet?.rows ?? [])];
    rows.splice(3, 0, ['']);
    const [first] = await readPdf(
      packetFile({ sheets: [{ name: 'Drums', rows }, ...rest], units: 'US', functions: functionLibrary }),
      1,
    );
    for (const { diameter } of drums) expect(wordsOf(first as ReadPage)).toContain(`${diameter} in (`);
  });

  it('says what is missing from another workbook', () => {
    const request = { units: 'US', functions: functionLibrary };
    expect(() => packetFile({ ...request, sheets: [] })).toThrow('there is no sheet Drums');
    const [drums, ...rest] = jobSheets('US', drumsUnder('US').slice(0, 1));
    const sheets = [{ name: 'Drums', rows: drums?.rows.slice(2) ?? [] }, ...rest];
    expect(() => packetFile({ ...request, sheets })).toThrow('has no table that begins with Drum');
  });
});

describe('a packet of a workbook with two sets of cone sheets', () => {
  const [eight, two] = [drumsUnder('US').slice(0, 8), drumsUnder('US').slice(8)];
  const second = jobSheets('US', two).map(({ name, rows }) => ({ name: `${name} 2`, rows }));

  it('has the papers of both, one after the other', async () => {
    const sheets = [...jobSheets('US', eight), ...second];
    const words = (await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }))).map(wordsOf);
    const starts = ['8 drums of the sheet Drums', '2 drums of the sheet Drums 2'].map((start) =>
      words.findIndex((text) => text.includes(`Job packet: ${start}`)),
    );
    expect(starts[0]).toBe(0);
    expect(starts[1]).toBeGreaterThan(8);
    for (const { name } of [...eight, ...two])
      expect(words.filter((text) => text.includes(`${name}: shop sheet`))).toHaveLength(1);
  });

  it('names a set that cannot be read', async () => {
    const sheets = [...jobSheets('US', eight), ...second.filter(({ name }) => name !== 'Base mix 2')];
    const [first] = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }), 1);
    expect(wordsOf(first as ReadPage)).toContain('the sheet Drums 2: there is no sheet Base mix 2');
  });
});
