import { expect, test } from 'vitest';
import { withoutDimensions } from '../../src/drawing/dimension-lines';
import { drumSectionDrawing } from '../../src/drawing/drum-section-drawing';
import { extentOf } from '../../src/drawing/extent';
import { hatched } from '../../src/drawing/hatch';
import { metric } from './samples';

const drawing = drumSectionDrawing({
  profile: metric,
  drumDiameter: 0.572,
  depth: 0.6,
  coneHeight: 0.26,
  coneBottom: 0.05,
  rise: 0.04,
  stand: 0.5,
  container: 0.3,
  drainDrop: 0.15,
});
const words = drawing.entities.flatMap((entity) => (entity.shape === 'text' ? [entity] : []));

test('ports are a third of the depth above the cone and below the water, from cone, floor and ground', () => {
  const all = words.map(({ text }) => text);
  // Depth 600: inlet 200 and outlet 400 above the cone's top, which is 300 above the floor and 800 above the ground.
  for (const line of ['200 mm', '400 mm', '600 mm']) expect(all).toContain(`${line} above cone top`);
  for (const line of ['500 mm', '700 mm', '900 mm', '300 mm']) expect(all).toContain(`${line} above drum floor`);
  for (const line of ['1000 mm', '1200 mm', '1400 mm', '800 mm', '500 mm'])
    expect(all).toContain(`${line} above ground`);
});

test('level lines leave the drum at their level', () => {
  const lines = drawing.entities.filter((entity) => entity.shape === 'line');
  for (const level of [0.5, 0.8, 1.0, 1.2, 1.4]) {
    expect(
      lines.some(({ from, to, layer }) => layer === 'text' && from.y === to.y && Math.abs(from.y - level) < 1e-9),
    ).toBe(true);
  }
});

test('words in the columns beside the drum do not overlap, however close the levels', () => {
  for (const depth of [0.05, 0.15, 0.6]) {
    const tight = drumSectionDrawing({
      profile: metric,
      drumDiameter: 0.572,
      depth,
      coneHeight: 0.05,
      rise: 0.01,
      stand: 0.05,
    });
    const column = tight.entities.filter(
      (entity) => entity.shape === 'text' && entity.anchor === 'start' && entity.at.x > 0.3,
    );
    const boxes = withoutDimensions(column, 1)
      .map((one) => extentOf([one]))
      .toSorted((a, b) => b.top - a.top);
    boxes.slice(1).forEach((box, i) => {
      expect(box.top).toBeLessThan(boxes[i]!.bottom + 0.35 * tight.textHeight);
    });
  }
});

test('nothing is on the layer to cut', () => {
  expect(drawing.entities.some((entity) => 'layer' in entity && entity.layer === 'cut')).toBe(false);
});

test('hatching stays inside its outline and fills it evenly', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ];
  const strokes = hatched(square, 0.01, Math.PI / 4);
  // Area covered by strokes times their spacing is the area of the square.
  const long = strokes.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
  expect(long * 0.01).toBeCloseTo(1, 2);
  const { left, bottom, right, top } = extentOf(strokes);
  for (const edge of [left, bottom]) expect(edge).toBeGreaterThanOrEqual(-1e-12);
  for (const edge of [right, top]) expect(edge).toBeLessThanOrEqual(1 + 1e-12);
});

test('a drum without cone or stand is drawn on the ground with its depth alone', () => {
  const plain = drumSectionDrawing({ profile: metric, drumDiameter: 0.572, depth: 0.6 });
  const all = plain.entities.flatMap((entity) => (entity.shape === 'text' ? [entity.text] : []));
  expect(all).toContain('200 mm above drum floor');
  expect(all.join(' ')).not.toMatch(/cone|stand|base/);
});
