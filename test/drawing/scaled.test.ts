import { describe, expect, test } from 'vitest';
import { withoutDimensions } from '../../src/drawing/dimension-lines';
import type { Drawing } from '../../src/drawing/drawing-model';
import { drumSectionDrawing } from '../../src/drawing/drum-section-drawing';
import { extentOf, grown } from '../../src/drawing/extent';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { scaled } from '../../src/drawing/scaled';
import { trainDrawing } from '../../src/drawing/train-drawing';
import { drumCone, us } from './samples';

const drawings: readonly (readonly [string, Drawing])[] = [
  ['a pattern with arcs and every kind of dimension', patternDrawing({ pattern: drumCone(1, 0.02), profile: us })],
  [
    'a drum with tones',
    drumSectionDrawing({ profile: us, drumDiameter: 0.57, depth: 0.6, coneHeight: 0.24, stand: 0.4 }),
  ],
  ['a diagram', trainDrawing({ stages: [{ name: 'A', flow: 'x' }, { name: 'B' }], units: 'US', returning: 'back' })],
];

describe.each(drawings)('%s made smaller', (_, drawing) => {
  const by = 0.25;
  const smaller = scaled(drawing, by);

  test('has the extent that it states, a quarter of the old one', () => {
    const reached = grown(extentOf(withoutDimensions(smaller.entities, smaller.textHeight)), smaller.textHeight / 2);
    for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
      expect(reached[edge]).toBeCloseTo(drawing.extent[edge] * by, 9);
      expect(smaller.extent[edge]).toBeCloseTo(reached[edge], 9);
    }
  });

  test('becomes the same again when scaled back', () => {
    const text = (one: Drawing) =>
      JSON.stringify(one, (__, value) => (typeof value === 'number' ? Number(value.toFixed(9)) : value));
    expect(text(scaled(smaller, 1 / by))).toBe(text(scaled(drawing, 1)));
  });
});
