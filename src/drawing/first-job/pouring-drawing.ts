import { arrow } from '../dimension-lines';
import { drawing } from '../drawing';
import type { Drawing, Entity, Point } from '../drawing-model';
import { hatched } from '../hatch';
import { callouts } from '../level-callouts';
import { line, polyline, text } from '../shapes';
import { drumWall } from './tape';

const h = 0.034;
const [radius, height, wall, bore] = [0.28, 0.72, 0.018, 0.12];
const [foot, rim] = [0.05, 0.36];
const layers = 3;

/** How the base is poured: the cone held down, the mix behind it in layers that set one after the other. */
export function pouringDrawing(units: Drawing['units']): Drawing {
  const inner = (y: number): number => bore / 2 + ((radius - bore / 2) * Math.max(0, y - foot)) / (rim - foot);
  const sides: Entity[] = [];
  for (const side of [1, -1]) {
    const mirrored = (points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => ({ x: side * x, y }));
    for (let i = 0; i < layers; i++) {
      const [low, high] = [(rim * i) / layers, (rim * (i + 1)) / layers];
      const corner = low < foot && high > foot ? [{ x: bore / 2, y: foot }] : [];
      const band = mirrored([
        { x: inner(low), y: low },
        { x: radius, y: low },
        { x: radius, y: high },
        { x: inner(high), y: high },
        ...corner,
      ]);
      sides.push(...hatched(band, (0.6 + 0.25 * i) * h, side * (i % 2 === 0 ? Math.PI / 4 : -Math.PI / 4)));
      if (i > 0)
        sides.push(
          ...polyline(
            'mark',
            'outline',
            mirrored([
              { x: inner(low), y: low },
              { x: radius, y: low },
            ]),
          ),
        );
    }
    sides.push(
      ...polyline(
        'mark',
        'outline',
        mirrored([
          { x: bore / 2, y: 0 },
          { x: bore / 2, y: foot },
          { x: radius, y: rim },
        ]),
      ),
    );
  }
  const tip: Point = { x: -radius + 0.9 * h, y: rim + 0.4 * h };
  const edge = radius + wall + 3.5 * h;
  return drawing({
    title: 'Hold the cone down, and pour in layers',
    notes: [],
    entities: [
      ...drumWall(radius, height, bore, wall),
      ...sides,
      {
        shape: 'area',
        layer: 'mark',
        boundary: [
          { x: -bore / 2, y: foot },
          { x: bore / 2, y: foot },
          { x: inner(rim - 0.02), y: rim - 0.02 },
          { x: -inner(rim - 0.02), y: rim - 0.02 },
        ],
        tone: 0.16,
      },
      line('mark', 'thin', { x: -inner(rim - 0.02), y: rim - 0.02 }, { x: inner(rim - 0.02), y: rim - 0.02 }),
      text({ x: 0, y: 0.24 }, 'water or\nweights', h, { bold: true }),
      line('text', 'outline', { x: tip.x + 1.5 * h, y: tip.y + 4 * h }, tip),
      ...arrow(tip, -Math.PI / 2 - 0.35, h),
      text({ x: tip.x + 1.9 * h, y: tip.y + 5 * h }, 'pour here', h, { anchor: 'start' }),
      ...callouts(
        [
          { from: { x: radius - 0.02, y: rim * (2.5 / 3) }, name: 'layer 3', lines: ['last'] },
          { from: { x: radius - 0.03, y: rim * (1.5 / 3) }, name: 'layer 2', lines: ['once 1 has set'] },
          { from: { x: radius - 0.04, y: rim * (0.5 / 3) }, name: 'layer 1', lines: ['first'] },
        ],
        edge,
        h,
      ),
    ],
    textHeight: h,
    fullSize: false,
    units,
  });
}
