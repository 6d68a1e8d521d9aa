import { describe, expect, test } from 'vitest';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { toSvg } from '../../src/drawing/svg';
import { trainDrawing } from '../../src/drawing/train-drawing';
import { drumCone, metric, us } from './samples';

const drawing = patternDrawing({ pattern: drumCone(), profile: us });

test('a separate file is full size: its size in millimeters is that of its box, and arcs keep their radii', () => {
  const svg = toSvg(drawing, { standalone: true });
  const [, x, y, width, height, wide, high] =
    /viewBox="([-\d.]+) ([-\d.]+) ([\d.]+) ([\d.]+)" width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number);
  expect([wide, high]).toEqual([width, height]);
  expect([x, y].every(Number.isFinite)).toBe(true);
  const cut = /<g class="cut"[^>]*>([\s\S]*?)<\/g>/.exec(svg)![1]!;
  const radii = [...cut.matchAll(/A([\d.]+) ([\d.]+) 0 (\d)/g)].map(([, r]) => Number(r));
  // Walls at 45 degrees: the radius is the cone's own times the square root of 2.
  expect(radii).toEqual([expect.closeTo(285.75 * Math.SQRT2, 3), expect.closeTo(50.8 * Math.SQRT2, 3)]);
});

test('an arc over 180 degrees goes the long way round and ends where its edge begins', () => {
  const cut = /<g class="cut"[^>]*>([\s\S]*?)<\/g>/.exec(toSvg(drawing))![1]!;
  const [, fromX, fromY, radius, large, toX, toY] = /M([-\d.]+) ([-\d.]+)A([\d.]+) [\d.]+ 0 (\d) \d ([-\d.]+) ([-\d.]+)/
    .exec(cut)!
    .map(Number) as [number, number, number, number, number, number, number];
  expect(large).toBe(1);
  const open = 2 * Math.PI - (2 * Math.PI) / Math.SQRT2;
  expect(Math.hypot(toX - fromX, toY - fromY)).toBeCloseTo(2 * radius * Math.sin(open / 2), 2);
});

describe('text from cells', () => {
  const name = '</text><script>alert("1")</script><g onload=x> & \u0000\u0007 \ud800 "q"';
  const svg = toSvg(patternDrawing({ pattern: drumCone(), profile: metric, name }), { standalone: true });

  test('is never markup: the file holds only the elements of a drawing', () => {
    expect(svg.match(/<(?!\/?(?:svg|title|g|path|circle|text)\b[^<>]*>)/g)).toBeNull();
    expect(svg).not.toMatch(/<script|<g onload/);
    expect(svg).toContain('&lt;script&gt;');
  });

  test('is shown as it is, without the characters that XML forbids', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: looking for them is the point
    expect(svg).not.toMatch(/[\u0000-\u0008\ud800-\udfff]/);
    expect(svg).toContain('&quot;q&quot;');
  });
});

test('color comes from the page, and nothing needs inline styles or scripts', () => {
  const svg = toSvg(drawing);
  expect(svg).toContain('stroke="currentColor"');
  expect(svg).not.toMatch(/style=|<style|#[0-9a-f]{3,6}|rgb\(|url\(| id=/i);
});

test('in a page, title and notes stay with the page; the title is there for people who cannot see the drawing', () => {
  const svg = toSvg(drawing);
  expect(svg).toContain('<title>Cone pattern, cut 1</title>');
  expect(svg).not.toContain('Cut along');
  expect(toSvg(drawing, { caption: true })).toContain('Cut along');
});

test('the train says in words which stage is the first limit', () => {
  const svg = toSvg(
    trainDrawing({
      units: 'US',
      stages: [
        { name: 'Drums', flow: '20 gpm', solids: '3 mg/L', ammonia: '0.6 mg/L' },
        { name: 'Pads & screens', limiting: true },
      ],
      returning: 'back to the fish',
    }),
  );
  for (const words of ['first limit', 'flow 20 gpm', 'solids 3 mg/L', 'ammonia as N 0.6 mg/L', 'Pads &amp; screens']) {
    expect(svg).toContain(`>${words}</text>`);
  }
});
