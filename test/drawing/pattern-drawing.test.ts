import { describe, expect, test } from 'vitest';
import { arrow } from '../../src/drawing/dimension-lines';
import { type Drawing, type Entity, type LengthDimension, type Point, polar } from '../../src/drawing/drawing-model';
import { wordAngle, wordLength } from '../../src/drawing/length-text';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { textWidth } from '../../src/drawing/text-width';
import { drumCone, inch, metric, patternOf, us } from './samples';

const lengths = ({ entities }: Drawing): readonly LengthDimension[] =>
  entities.filter((entity) => entity.shape === 'length dimension');

describe('a dimension says what it spans', () => {
  test.each([
    ['over 180 degrees', drumCone(1, inch)],
    ['in three pieces', drumCone(3, inch)],
    ['slightly tapered', patternOf(0.572, 0.5, 0.41, 2, 0.025)],
    ['to a point', patternOf(0.572, 0, 0.41, 2, 0.025)],
    ['a cylinder', patternOf(0.572, 0.572, 0.41, 2, 0.025)],
  ])('%s', (_name, pattern) => {
    const sizes = lengths(patternDrawing({ pattern, profile: metric }));
    expect(sizes.map(({ text }) => text.replace(/ [\d.]+ mm$/, ''))).toEqual(
      expect.arrayContaining(['blank length', 'blank width', 'lap']),
    );
    for (const { text, from, to } of sizes) {
      const said = Number(/([\d.]+) mm$/.exec(text)![1]);
      expect(Math.abs(Math.hypot(to.x - from.x, to.y - from.y) * 1000 - said)).toBeLessThan(0.051);
    }
  });

  test('radii and sector angle are those of the pattern row', () => {
    const pattern = drumCone();
    const { entities } = patternDrawing({ pattern, profile: metric });
    const radii = entities.filter((entity) => entity.shape === 'radius dimension');
    expect(radii.map(({ radius }) => radius)).toEqual([pattern.outerRadius, pattern.innerRadius]);
    // 360/sqrt 2 for walls at 45 degrees.
    const angle = entities.find((entity) => entity.shape === 'angle dimension')!;
    expect(angle.sweep).toBeCloseTo((2 * Math.PI) / Math.SQRT2, 12);
    expect(angle.text).toContain('254.56°');
  });
});

test('the title says whose it is and how many to cut', () => {
  expect(patternDrawing({ pattern: drumCone(3), profile: us, name: 'Drum 2' }).title).toBe(
    'Drum 2: cone pattern, cut 3 alike',
  );
  expect(patternDrawing({ pattern: patternOf(1, 1, 1), profile: us }).title).toBe('Cylinder pattern, cut 1');
});

test('a name from a cell is kept to one short line', () => {
  const { title } = patternDrawing({ pattern: drumCone(), profile: us, name: `a\n b ${'x'.repeat(30_000)}` });
  expect(title).toMatch(/^a b x+\.\.\.: cone pattern, cut 1$/);
  expect(title.length).toBeLessThan(100);
});

test('a row whose numbers do not agree is refused with its place', () => {
  const pattern = { ...drumCone(), outerRadius: 0.5 };
  expect(() => patternDrawing({ pattern, profile: us, row: 4 })).toThrow(/row 4/);
});

test('lengths are worded to a tenth of a millimeter, or in hundredths of an inch with the tape reading beside', () => {
  expect(wordLength(metric, 0.40414)).toBe('404.1 mm');
  // 15.91 in lies between 15 28/32 and 15 30/32; 15 29/32 is 15.906.
  expect(wordLength(us, 15.91 * inch)).toBe('15.91 in (15 29/32)');
  expect(wordLength(us, 0.25 * inch)).toBe('0.25 in (1/4)');
  expect(wordLength(us, 22 * inch)).toBe('22 in');
  expect(wordLength(us, 21.99 * inch)).toBe('21.99 in (22)');
  expect(wordAngle(Math.PI)).toBe('180°');
});

test('an arrow’s strokes meet at its point and stay behind it', () => {
  for (const stroke of arrow({ x: 2, y: 3 }, Math.PI / 2, 1)) {
    if (stroke.shape !== 'line') throw new Error('an arrow is made of lines');
    expect(stroke.from).toEqual({ x: 2, y: 3 });
    expect(stroke.to.y).toBeLessThan(3);
  }
});

/** Points along a line or an arc. */
function pointsOf(entity: Entity): readonly Point[] {
  const shares = Array.from({ length: 201 }, (_, i) => i / 200);
  if (entity.shape === 'line') {
    const { from, to } = entity;
    return shares.map((t) => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }));
  }
  if (entity.shape !== 'arc') return [];
  const { center, radius, start, sweep } = entity;
  return shares.map((t) => polar(center, radius, start + t * sweep));
}

describe('no cut runs through the words at the arc center', () => {
  test.each([
    ['45 degrees', drumCone(1, 0.75 * inch)],
    ['60 degrees', patternOf(0.57, 0.1, 0.407, 1, 0.02)],
    ['30 degrees', patternOf(0.57, 0.1, 0.136, 1, 0.02)],
    ['a wide drain', patternOf(0.57, 0.25, 0.2, 1, 0.02)],
    ['a wide lap', patternOf(0.57, 0.1, 0.235, 1, 0.06)],
  ])('%s', (_name, pattern) => {
    const { entities } = patternDrawing({ pattern, profile: metric });
    const words = entities.find((entity) => entity.shape === 'text' && entity.text === 'arc center')!;
    if (words.shape !== 'text') throw new Error('there are no words');
    const wide = textWidth(words.text, words.height);
    const left = words.at.x - { start: 0, middle: wide / 2, end: wide }[words.anchor];
    const isInWords = ({ x, y }: Point): boolean =>
      x > left && x < left + wide && Math.abs(y - words.at.y) < words.height / 2;
    const cuts = entities.filter((entity) => 'layer' in entity && entity.layer === 'cut').flatMap(pointsOf);
    expect(cuts.length).toBeGreaterThan(300);
    expect(cuts.filter(isInWords)).toEqual([]);
  });
});
