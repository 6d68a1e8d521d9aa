import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { drawingFile } from '../../../src/task-pane/drawings/drawing-file';
import { drawingsOf } from '../../../src/task-pane/drawings/drawings-of';
import { sentenceIn } from '../../../src/task-pane/user-error';
import { readDxf } from '../../drawing/read-dxf';
import { readPdf } from '../../drawing/read-pdf';

const patient = { step: async () => undefined };

function patterns(units: string, ...tops: readonly number[]) {
  const row = functionLibrary.catalogue.find(({ name }) => name === 'CONE.PATTERN')!;
  const rows = tops.map(
    (top) =>
      functionLibrary.adapt(row, (_, message) => new Error(message))(units, top, top / 6, top / 2.4)[0] as number[],
  );
  return drawingsOf({ what: 'patterns', units, rows, names: tops.map((top) => `Drum ${top}`) });
}

describe('files of a drawing', () => {
  // Radii of the development of a cone: slant × D / (D - d) and slant × d / (D - d), with slant² = h² + ((D - d) / 2)².
  test('a DXF of inches has the radii of the cone and says that it is in inches', async () => {
    const file = await drawingFile(patterns('US', 24), { format: 'dxf', paper: 'A4', fullSize: true }, patient);
    const { arcs, header } = readDxf(file.content as string);
    const slant = Math.hypot(10, 10);
    const cut = arcs.filter(({ layer }) => layer === 'cut').map(({ radius }) => radius);
    expect(Math.max(...cut)).toBeCloseTo((slant * 24) / 20, 5);
    expect(Math.min(...cut)).toBeCloseTo((slant * 4) / 20, 5);
    expect(header.$INSUNITS).toBe(1);
    expect(file.name).toBe('drum-24-cone-pattern.dxf');
  });

  test('a PDF at full size is a page map and the pages, on the paper asked for', async () => {
    const file = await drawingFile(patterns('metric', 300), { format: 'pdf', paper: 'A4', fullSize: true }, patient);
    const pages = await readPdf(file.content as Uint8Array);
    expect(pages.length).toBeGreaterThan(2);
    for (const { width, height } of pages) {
      expect([width, height].sort((a, b) => a - b).map((mm) => Math.round(mm))).toEqual([210, 297]);
    }
    expect(file.name).toBe('drum-300-cone-pattern.pdf');
  });

  test('a PDF fitted to one page has one page per pattern', async () => {
    const file = await drawingFile(
      patterns('US', 24, 20),
      { format: 'pdf', paper: 'Letter', fullSize: false },
      patient,
    );
    expect(await readPdf(file.content as Uint8Array)).toHaveLength(2);
    expect(file.name).toBe('patterns.pdf');
  });

  test('more than 20 pages are refused in one sentence that says what to do', async () => {
    const wish = { format: 'pdf', paper: 'A4', fullSize: true } as const;
    const refused = await drawingFile(patterns('metric', 1800), wish, patient).catch((error: unknown) =>
      sentenceIn(error),
    );
    expect(refused).toMatch(/full size needs .* of A4, and the limit is 20 pages; make it of more pieces/);
  });

  test('stopped work makes no file', async () => {
    const stop = { step: () => Promise.reject(new Error('stopped')) };
    const wish = { format: 'svg', paper: 'A4', fullSize: true } as const;
    await expect(drawingFile(patterns('US', 24), wish, stop)).rejects.toThrow('stopped');
  });

  test('a diagram is the size of a page, not of a field', async () => {
    const train = {
      what: 'train',
      units: 'US',
      title: 'T',
      stages: [{ name: 'Fish tank' }, { name: 'Pump' }],
      notes: [],
    } as const;
    const file = await drawingFile(drawingsOf(train), { format: 'svg', paper: 'A4', fullSize: false }, patient);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(file.content as string)!.map(Number);
    expect(width).toBeGreaterThan(50);
    expect(Math.max(width!, height!)).toBeLessThan(300);
  });
});
