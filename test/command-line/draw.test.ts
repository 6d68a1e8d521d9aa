import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Workbook } from '@cj-tech-master/excelts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { requestedDrawings } from '../../src/command-line/draw-drawings';
import { DrawMistake, readDrawRequest } from '../../src/command-line/draw-request';
import { readDxf } from '../drawing/read-dxf';
import { readPdf } from '../drawing/read-pdf';

const folder = mkdtempSync(join(tmpdir(), 'draw-'));
const at = (name: string) => join(folder, name);

function draw(...args: string[]): { stdout: string; stderr: string; status: number | null } {
  return spawnSync('node', ['src/command-line/run.cjs', 'draw', ...args], {
    encoding: 'utf8',
    env: { ...process.env, INIT_CWD: folder },
  });
}

/** Pattern rows as SILT.CONE.PATTERN gives them in inches: frusta 10/4/4 and 12/6/5.196152, worked by hand below. */
const rows = [
  [53.13010235, 5, 3.333333333, 8.333333333, 216, 16.66666667, 10.90909091, 0.763581, 1, 0],
  [60, 6, 6, 12, 180, 24, 12, 1.178097, 1, 0],
];

beforeAll(async () => {
  const workbook = new Workbook();
  const patterns = workbook.addWorksheet("Drum's patterns");
  patterns.getCell('A1').value = 'Patterns';
  rows.forEach((row, i) => {
    row.forEach((value, j) => {
      patterns.getCell(i + 2, j + 2).value = value;
    });
  });
  // The bounding blank of a 216 degree sector is 2 R by R + R cos 72.
  patterns.getCell('H2').value = 8.333333333 * (1 + Math.cos((72 * Math.PI) / 180));
  patterns.getCell('A9').value = { error: '#VALUE!' };
  const plan = workbook.addWorksheet('Plan');
  plan.addRow([1, 1, 1, 10, 4, 90]);
  plan.addRow([2, 1, 1, 32, 1, 90]);
  workbook.addWorksheet('Silt units').getCell('B2').value = 'US';
  workbook.definedNames.add("'Silt units'!$B$2", 'SiltUnits');
  writeFileSync(at('drums.xlsx'), await workbook.xlsx.writeBuffer());
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('a packet on the command line', () => {
  it('is a PDF file or a workbook', () => {
    const request = readDrawRequest(['--packet', '--workbook', 'book.xlsx', 'packet.pdf']);
    expect(request).toMatchObject({ what: 'packet', format: 'pdf', given: { workbook: 'book.xlsx' } });
    expect(readDrawRequest(['--packet', '--workbook', 'book.xlsx', 'packet.xlsx'])).toMatchObject({ format: 'xlsx' });
    expect(() => readDrawRequest(['--packet', '--workbook', 'book.xlsx', 'packet.dxf'])).toThrow(
      'a packet is a PDF file or a workbook',
    );
    expect(() => readDrawRequest(['--workbook', 'book.xlsx', '--range', 'A1:B2', 'rows.xlsx'])).toThrow(
      'end the file name with .pdf, .dxf or .svg',
    );
  });
});

describe('draw on the command line', () => {
  it('writes a pattern as DXF with the radii and angle of the development', () => {
    // Frustum 10 and 4 across, 4 high: slant 5, radii 25/3 and 10/3, angle 360 x 3/5 = 216 (radial-line development).
    const done = draw('--units', 'US', '--top', '10', '--bottom', '4 in', '--height', '101.6 mm', 'frustum.dxf');
    expect(done).toMatchObject({ status: 0, stdout: 'frustum.dxf: written as DXF\n', stderr: '' });
    const [outer, inner] = readDxf(readFileSync(at('frustum.dxf'), 'utf8'))
      .arcs.filter(({ layer }) => layer === 'cut')
      .toSorted((a, b) => b.radius - a.radius);
    expect(outer!.radius).toBeCloseTo(25 / 3, 6);
    expect(inner!.radius).toBeCloseTo(10 / 3, 6);
    const sweep = ((outer!.endAngle - outer!.startAngle) * 180) / Math.PI;
    expect((sweep + 360) % 360).toBeCloseTo(216, 6);
  });

  it('writes full-size pages on the profile’s paper, and one page when asked', async () => {
    expect(
      draw('--units', 'US', '--top', '22.5', '--bottom', '4', '--height', '9.25', '--pieces', '3', 'three.pdf').status,
    ).toBe(0);
    const pages = await readPdf(readFileSync(at('three.pdf')));
    expect(pages.length).toBeGreaterThan(2);
    expect(pages[0]!.height).toBeCloseTo(279.4, 1);
    draw('--units', 'metric', '--top', '572', '--bottom', '100', '--height', '300', '--one-page', 'one.pdf');
    const [page, ...more] = await readPdf(readFileSync(at('one.pdf')));
    expect(more).toEqual([]);
    expect(page!.texts.map(({ text }) => text).join(' ')).toContain('Cone pattern, cut 1');
  });

  it('draws the pattern rows of a workbook in its own units, each with its own title', () => {
    const done = draw('--workbook', 'drums.xlsx', '--range', "'Drum''s patterns'!B2:K3", 'rows.svg');
    expect(done).toMatchObject({ status: 0, stderr: '' });
    const svg = readFileSync(at('rows.svg'), 'utf8');
    expect(svg).toContain('Row 1: cone pattern, cut 1');
    expect(svg).toContain('>12 in</text>');
    expect(svg).toContain('>sector angle 180°</text>');
  });

  it('draws a cut plan of a workbook on its sheets', () => {
    const range = ['--workbook', 'drums.xlsx', '--range', "'Drum''s patterns'!B2:K3", '--plan', 'Plan!A1:F2'];
    const done = draw(...range, '--sheet-length', '96', '--sheet-width', '48', 'plan.dxf');
    expect(done).toMatchObject({ status: 0, stderr: '' });
    const { arcs, texts } = readDxf(readFileSync(at('plan.dxf'), 'utf8'));
    expect(texts.map(({ text }) => text)).toEqual(expect.arrayContaining(['1.1', '2.1', 'sheet length 96 in']));
    expect(arcs.some(({ center, radius }) => Math.abs(center.x - 32) < 1e-6 && Math.abs(radius - 12) < 1e-6)).toBe(
      true,
    );
  });

  it('lays the pieces out itself if no plan is given, all of them and each on the sheet', () => {
    const cone = ['--units', 'US', '--top', '20', '--bottom', '4', '--height', '8', '--pieces', '3', '--lap', '1'];
    const done = draw(...cone, '--sheet-length', '96', '--sheet-width', '48', '--gap', '1/4 in', 'nested.dxf');
    expect(done).toMatchObject({ status: 0, stderr: '' });
    const { arcs, lines, texts } = readDxf(readFileSync(at('nested.dxf'), 'utf8'));
    expect(texts.map(({ text }) => text)).toEqual(expect.arrayContaining(['1.1', '1.2', '1.3']));
    expect(arcs.filter(({ layer }) => layer === 'cut')).toHaveLength(6);
    for (const { x, y } of lines.filter(({ layer }) => layer === 'cut').flatMap(({ vertices }) => vertices)) {
      expect(Math.min(x, y, 96 - x, 48 - y)).toBeGreaterThanOrEqual(0.25 - 1e-5);
    }
  });

  it('draws the train of one scenario of a workbook, with the first limit', () => {
    const sample = join(process.cwd(), 'sample-workbooks/US/stocking-scenarios.xlsx');
    const which = ['--workbook', sample, '--scenarios', 'Scenarios!B4:F32'];
    expect(draw(...which, '--column', '3', 'train.svg').status).toBe(0);
    const drawn = readFileSync(at('train.svg'), 'utf8');
    expect(drawn).toContain('800 fish: train');
    expect(drawn).toContain('first limit');
    expect(draw(...which, '--column', '9', 'none.svg')).toMatchObject({ status: 1, stdout: '' });
    expect(existsSync(at('none.svg'))).toBe(false);
  });

  it('draws a drum in section', () => {
    const drum = ['--units', 'metric', '--drum', '572', '--depth', '600', '--cone-height', '260', '--stand', '500'];
    expect(draw(...drum, '--name', 'Drum 1', 'drum.svg').status).toBe(0);
    expect(readFileSync(at('drum.svg'), 'utf8')).toContain('200 mm above cone top');
  });

  it.each([
    [['--units', 'US', '--top', '10', '--bottom', '12', '--height', '4', 'x.pdf'], /bottom: 12 in is not allowed/],
    [
      ['--units', 'US', '--top', '80', '--bottom', '4', '--height', '40', 'x.pdf'],
      /the limit is 20 pages; make it of more pieces/,
    ],
    [['--units', 'US', '--top', '10', '--bottom', '4', '--height', '4', 'none/x.pdf'], /cannot be written/],
    [
      ['--units', 'US', '--top', '10', '--bottom', '4', '--height', '4', '--paper', 'A3', 'x.pdf'],
      /--paper: A3 is not known/,
    ],
    [['--workbook', 'missing.xlsx', '--range', 'A1:J2', 'x.pdf'], /missing.xlsx: no such file/],
    [['--workbook', 'drums.xlsx', '--range', "'Drum''s patterns'!A9:J9", 'x.pdf'], /A9 holds #VALUE!/],
  ])('says in one sentence what is wrong and writes nothing: %j', (args, sentence) => {
    const before = readdirSync(folder);
    const done = draw(...args);
    expect(done.status).toBe(1);
    expect(done.stdout).toBe('');
    expect(done.stderr).toMatch(sentence);
    expect(done.stderr.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(folder)).toEqual(before);
    expect(existsSync(at('x.pdf'))).toBe(false);
  });
});

// What is thrown becomes that sentence; a process for each would show it again.
describe('a drawing that cannot be made', () => {
  const cone = ['--bottom', '4', '--height', '4', 'x.pdf'];
  const rowsOf = (range: string) => ['--workbook', at('drums.xlsx'), '--range', range, 'x.pdf'];

  it.each([
    [['--top', '10', ...cone], /--units: give US or metric/],
    [['--units', 'US', '--top', '10', '--bottom', '4', 'x.pdf'], /height: blank is not allowed/],
    [['--units', 'US', '--top', '10 gal', ...cone], /top: .*gal/],
    ['--units US --top 50 --bottom 4 --height 20 --sheet-length 40 --sheet-width 20 x.dxf'.split(' '), /row 1/],
    [rowsOf('Nowhere!A1:J2'), /no sheet Nowhere; the workbook has/],
    [rowsOf("'Drum''s patterns'!B2:C3"), /patterns: 2 columns is not allowed/],
    [['--units', 'metric', ...rowsOf("'Drum''s patterns'!B2:K3")], /row 1 was not made with metric/],
  ])('is refused in one line: %j', async (args, sentence) => {
    const refusal = await requestedDrawings(readDrawRequest(args)!).catch((thrown: Error) => thrown.message);
    expect(refusal).toMatch(sentence);
    expect(refusal).not.toContain('\n');
  });
});

describe('the command line of draw', () => {
  it.each([
    [[], /give the file to write/],
    [['a.pdf'], /choose one thing to draw/],
    [['--top', '1', 'a.png'], /end the file name with .pdf, .dxf or .svg/],
    [['--top', '1', 'a.pdf', 'b.pdf'], /give one file to write/],
    [['--top', '1', '--drum', '2', 'a.pdf'], /one thing/],
    [['--nonsense', '1', 'a.pdf'], /--nonsense/],
    [['--top', '-1', 'a.pdf'], /written --top=-2/],
  ])('%j is refused', (args, sentence) => {
    expect(() => readDrawRequest(args)).toThrow(DrawMistake);
    expect(() => readDrawRequest(args)).toThrow(sentence);
  });

  it('shows help if nothing else is given', () => {
    expect(readDrawRequest(['--help'])).toBeUndefined();
  });
});
