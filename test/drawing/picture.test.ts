import { decode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { drawing } from '../../src/drawing/drawing';
import type { Entity } from '../../src/drawing/drawing-model';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { Ink } from '../../src/drawing/picture/ink';
import { toPicture } from '../../src/drawing/picture/picture';
import { strokesOf } from '../../src/drawing/picture/stroke-letters';
import { drumCone, us } from './samples';

const at = (x: number, y: number) => ({ x, y });

/** How much ink lies on the picture, in whole pixels. */
const amount = ({ cover }: Ink): number => cover.reduce((sum, one) => sum + one / 255, 0);

describe('ink', () => {
  // The expected amounts are plane geometry: length times thickness and the round ends, and the area of a polygon.
  it.each([
    ['level', at(20, 50), at(120, 50)],
    ['upright', at(50, 20), at(50, 120)],
    ['steep', at(31, 20), at(62, 133)],
    ['flat', at(20, 62), at(131, 41)],
  ])('of a %s line is its length times its thickness', (_name, from, to) => {
    for (const thickness of [1, 1.5, 3.4]) {
      const ink = new Ink(160, 160);
      ink.line(from, to, thickness);
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const wanted = length * thickness + (Math.PI * thickness ** 2) / 4;
      expect(Math.abs(amount(ink) - wanted) / wanted).toBeLessThan(0.03);
    }
  });

  it('of a tone is the area of its polygon times the tone, also where that is hollow', () => {
    const arrow = [at(10.3, 10.2), at(90.7, 50.1), at(10.3, 90.4), at(40.2, 50.1)];
    const doubled = arrow.reduce((sum, from, i) => {
      const to = arrow[(i + 1) % arrow.length]!;
      return sum + from.x * to.y - to.x * from.y;
    }, 0);
    const ink = new Ink(100, 100);
    ink.tone(arrow, 0.4);
    const wanted = (Math.abs(doubled) / 2) * 0.4;
    expect(Math.abs(amount(ink) - wanted) / wanted).toBeLessThan(0.01);
  });

  it('that lies outside the picture is left out', () => {
    const ink = new Ink(10, 10);
    ink.line(at(-50, -50), at(-5, -5), 2);
    ink.tone([at(20, 20), at(30, 20), at(30, 30)], 1);
    expect(amount(ink)).toBe(0);
  });
});

describe('stroke letters', () => {
  it('have a shape for every character of the drawings and for accents', () => {
    const unknown = strokesOf('?').strokes;
    for (const letter of 'AZaz09,.()/°·×±½¼−–éüñçÅ')
      expect([letter, strokesOf(letter).strokes]).not.toEqual([letter, unknown]);
    expect(strokesOf('é').strokes.length).toBeGreaterThan(strokesOf('e').strokes.length);
    expect(strokesOf('魚').strokes).toEqual(unknown);
    expect(strokesOf('\u0007').strokes).toEqual([]);
  });
});

describe('a picture', () => {
  it('of a pattern is a gray PNG file with the drawing and its caption', async () => {
    const pattern = patternDrawing({ pattern: drumCone(), profile: us, row: 1, name: 'Fern' });
    const { png, width, height } = await toPicture(pattern);
    const read = decode(png);
    expect([read.width, read.height, read.channels, read.depth]).toEqual([width, height, 1, 8]);
    expect(Math.max(width, height)).toBeGreaterThan(600);
    // The caption below the drawing is text too.
    const { extent } = pattern;
    const drawn = Math.round((width * (extent.top - extent.bottom)) / (extent.right - extent.left));
    expect(height).toBeGreaterThan(drawn + 60);
    expect(read.data.subarray(width * drawn).some((value) => value < 100)).toBe(true);
  });

  it('of a very long drawing stays within four thousand pixels', async () => {
    const line: Entity = { shape: 'line', layer: 'cut', style: 'dashed', from: at(0, 0), to: at(1000, 1) };
    const long = drawing({
      title: 'Long',
      notes: [],
      entities: [line],
      textHeight: 0.01,
      fullSize: true,
      units: 'metric',
    });
    const { width, height } = await toPicture(long);
    expect(width).toBe(4000);
    expect(height).toBeLessThan(40);
  });
});
