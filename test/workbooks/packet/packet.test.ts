import { describe, expect, it } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import type { CellResult } from '../../../src/hosts/workbook-model';
import { packetFile } from '../../../src/workbooks/packet/packet';
import type { SheetCells } from '../../../src/workbooks/packet/packet-cells';
import { type ReadPage, readPdf } from '../../drawing/read-pdf';
import { call, spill } from '../../functions/call';

interface Drum {
  readonly name: string;
  readonly diameter: number;
  readonly height: number;
  readonly pieces: number;
}

/** Ten drums, no two alike, in millimeters or inches. */
function drumsUnder(units: 'US' | 'metric'): readonly Drum[] {
  return Array.from({ length: 10 }, (_, i) => {
    const diameter = units === 'US' ? 18.3 + i / 2 : 470 + 12.5 * i;
    return { name: `Drum ${i + 1}`, diameter, height: diameter * 0.42, pieces: 1 + (i % 3) };
  });
}

/** Sheets laid out as the ready-made cone cut plan, with figures that its functions give. */
function workbook(units: 'US' | 'metric', drums: readonly Drum[]): readonly SheetCells[] {
  const us = units === 'US';
  const [drain, lap, depth, spacing] = us ? [4, 0.75, 20, 1.5] : [100, 20, 500, 40];
  const [length, width, gap] = us ? [96, 48, 0.25] : [2440, 1220, 5];
  const stand = us ? 22.5 : 570;
  const rise = us ? 1 : 25;
  const patterns = drums.map(
    ({ diameter, height, pieces }) => spill('CONE.PATTERN', units, diameter, drain, height, pieces, lap)[0] ?? [],
  ) as CellResult[][];
  const mixes = drums.map(({ diameter, height }) =>
    call('CONE.BACKFILL', units, diameter, diameter, drain, height, 0, 'fit', rise),
  ) as number[];
  const waters = drums.map(({ diameter, height }) =>
    call('TANK.VOLUME', units, diameter, depth, drain, height),
  ) as number[];
  const sum = mixes.reduce((total, mix) => total + mix, 0);
  const rows = (name: string, ...cells: readonly CellResult[][]): SheetCells => ({ name, rows: cells });
  const block = (name: string, ...values: unknown[]) => spill(name, units, ...values) as CellResult[][];
  return [
    rows(
      'Drums',
      ['Measured drums'],
      ['Drum', 'What it held', 'Drain bore (x)', 'Cone height (x)', 'Water above cone (x)', 'Diameter used (x)'],
      ...drums.map(({ name, diameter, height }) => [name, 'olives', drain, height, depth, diameter]),
      [''],
      ['Sheet thickness', '', us ? 0.0625 : 1.5],
      ['Length of a sheet', '', length],
      ['Width of a sheet', '', width],
      ['Gap between pieces', '', gap],
    ),
    rows(
      'Patterns',
      ['Drum', ...(spill('CONE.PATTERN', units, 20, 4, 9, 1, 0, 0, 'fit', 0, true)[0] as string[])],
      ...patterns.map((row, i) => [drums[i]?.name ?? '', ...row]),
      [''],
      ['Rivets along one seam, spacing at most', '', spacing],
    ),
    rows(
      'Cut plan',
      ['Sheets to buy, and where each piece goes'],
      ...block('CUT.SHEETS', patterns, length, width, gap, 1, true),
      [''],
      ...block('CUT.PLAN', patterns, length, width, gap, 1, true),
    ),
    rows(
      'Base mix',
      ['Drum', 'Base mix (x)', 'Water held (x)'],
      ...drums.map(({ name }, i) => [name, mixes[i] ?? '', waters[i] ?? '']),
      [''],
      ['Cone’s foot above the floor', rise],
      ['Parts of light aggregate', 6],
      ['Spilled and left in the mixer', 0.1],
      ['Cement in a bag', us ? 94 : 25],
      ...block('CONE.MIX', sum, 6, 0.1, us ? 94 : 25, true),
    ),
    rows(
      'Stand and ports',
      ['Drum', ...(spill('TANK.WEIGHT', units, 100, 1, '650 kg/m3', 10, 4, true)[0] as string[])],
      ...drums.map(({ name }, i) => [
        name,
        ...((spill('TANK.WEIGHT', units, waters[i], mixes[i], '650 kg/m3', 10, 4)[0] ?? []) as CellResult[]),
      ]),
      [''],
      ['Height of the pail', us ? 14.5 : 370],
      ['Height of the stand (x)', stand],
    ),
    rows('Marking out', ['Drum', '', 'Degrees between marks', 15]),
  ];
}

async function packet(units: 'US' | 'metric', paper: 'A4' | 'Letter', drums = drumsUnder(units)) {
  const sheets = workbook(units, drums);
  const pages = await readPdf(packetFile({ sheets, units, functions: functionLibrary, paper }));
  return { sheets, drums, pages };
}

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
    expect(wordsOf(pages[0] as ReadPage)).toContain('Job packet: 10 drums');
    drums.forEach(({ name }, i) => {
      expect(wordsOf(pages[i + 1] as ReadPage)).toContain(`${name}: shop sheet`);
    });
    expect(wordsOf(pages[11] as ReadPage)).toContain('Numbers on the pieces: 1: Drum 1');
    expect(wordsOf(pages[12] as ReadPage)).toContain('Centers of the arcs');
    expect(pages.length).toBeGreaterThan(13 + 10);
  });

  it('clips nothing, and keeps words out of the foot of the page', async () => {
    const { pages } = await made;
    for (const [i, { texts, strokes, width, height }] of pages.slice(0, 13).entries()) {
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

  it('prints the figures of the cells', async () => {
    const { drums, pages, sheets } = await made;
    const patterns = sheets[1]?.rows ?? [];
    drums.forEach(({ name }, i) => {
      const { texts } = pages[i + 1] as ReadPage;
      const beside = (label: string) => {
        const at = texts.findLast(({ text }) => text === label);
        const value = texts.find(({ x, y, text }) => at && x > at.x && Math.abs(y - at.y) < 0.1 && /^\d/.test(text));
        return Number.parseFloat(value?.text ?? '');
      };
      const [, wallAngle, slant, inner, outer, sector] = (patterns[i + 1] ?? []) as number[];
      const exact = units === 'US' ? 0.0051 : 0.051;
      const cells = { 'slant, and screed': slant, 'inner radius': inner, 'outer radius': outer };
      for (const [label, cell] of Object.entries(cells)) {
        expect(Math.abs(beside(label) - (cell ?? 0)), `${name}, ${label}`).toBeLessThan(exact);
      }
      expect(Math.abs(beside('wall angle') - (wallAngle ?? 0))).toBeLessThan(0.0051);
      expect(Math.abs(beside('sector angle') - (sector ?? 0))).toBeLessThan(0.0051);
      const mix = sheets[3]?.rows[i + 1]?.[1] as number;
      expect(beside('base mix') / mix).toBeCloseTo(1, 3);
    });
    const centers = (pages[12] as ReadPage).texts.map(({ text }) => text);
    const plan = sheets[2]?.rows.slice(5) ?? [];
    expect(centers).toContain(String(plan[0]?.[1]));
    expect((pages[0] as ReadPage).texts.map(({ text }) => text)).toContain(String(sheets[2]?.rows[2]?.[0]));
  });
});

describe('a packet of a workbook with faults', () => {
  it('leaves a drum without a pattern out and names it', async () => {
    const drums = drumsUnder('US').slice(0, 3);
    const fault = { error: { code: '#VALUE!', message: 'height: give a length' } };
    const sheets = workbook('US', drums).map((sheet) => {
      const rows =
        sheet.name === 'Patterns'
          ? sheet.rows.map((row, i) => (i === 2 ? [row[0] ?? '', fault] : row))
          : sheet.name === 'Cut plan'
            ? sheet.rows.filter(([pattern, piece]) => pattern !== 2 || typeof piece !== 'number')
            : sheet.rows;
      return { ...sheet, rows };
    });
    const pages = await readPdf(packetFile({ sheets, units: 'US', functions: functionLibrary }));
    expect(wordsOf(pages[0] as ReadPage)).toContain('Not in this packet: Drum 2: height: give a length');
  });

  it('says what is missing from another workbook', () => {
    const request = { units: 'US', functions: functionLibrary };
    expect(() => packetFile({ ...request, sheets: [] })).toThrow('there is no sheet Drums');
    const [drums, ...rest] = workbook('US', drumsUnder('US').slice(0, 1));
    const sheets = [{ name: 'Drums', rows: drums?.rows.slice(2) ?? [] }, ...rest];
    expect(() => packetFile({ ...request, sheets })).toThrow('has no table that begins with Drum');
  });
});
