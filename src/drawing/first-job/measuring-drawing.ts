import { drawing } from '../drawing';
import type { Drawing, Entity, Point } from '../drawing-model';
import { line, polyline } from '../shapes';
import { drumWall, letter, tape, waterLine } from './tape';

export interface MeasuringDrawingInput {
  /** Where the tape goes for the width: straight across inside, or around the outside. */
  readonly width: 'inside' | 'girth';
  /** What is known of the cone. */
  readonly cone: 'angle' | 'height' | 'slant';
  readonly units: Drawing['units'];
}

const h = 0.034;
/** A drum of no size in particular; only where the tape goes is meant. */
const [radius, height, wall, bore] = [0.28, 0.8, 0.018, 0.12];
const [rim, water] = [0.3, 0.66];
const foot: Point = { x: bore / 2, y: 0.03 };
const head: Point = { x: radius, y: rim };

/** Where the tape goes on a drum: A its width, B its drain, C its cone, D its water. */
export function measuringDrawing({ width, cone, units }: MeasuringDrawingInput): Drawing {
  const mirrored = ({ x, y }: Point): Point => ({ x: -x, y });
  const aside = radius + wall + 2.4 * h;
  return drawing({
    title: 'Where the tape goes',
    notes: [],
    entities: [
      ...drumWall(radius, height, bore, wall),
      ...[
        [foot, head],
        [mirrored(foot), mirrored(head)],
      ].flatMap((points) => polyline('mark', 'dashed', points)),
      ...waterLine(radius, water, h),
      ...(width === 'inside' ? across() : around()),
      ...tape({ x: -bore / 2, y: -0.09 }, { x: bore / 2, y: -0.09 }, h),
      ...letter({ x: bore / 2 + 2 * h, y: -0.09 }, 'B', 'drain bore', h),
      ...coneTape(cone, aside),
      ...upright(aside, rim, water),
      ...letter({ x: aside + 2 * h, y: (rim + water) / 2 }, 'D', 'water', h),
    ],
    textHeight: h,
    fullSize: false,
    units,
  });
}

/** The tape across the inside, at the rim of the cone. */
function across(): readonly Entity[] {
  return [
    ...tape({ x: -radius, y: rim + 0.6 * h }, { x: radius, y: rim + 0.6 * h }, h),
    ...letter({ x: -0.1, y: rim + 3 * h }, 'A', 'across', h),
  ];
}

/** The tape around the outside, seen a little from above: its far half is behind the drum. */
function around(): readonly Entity[] {
  const [wide, deep] = [radius + wall + 0.3 * h, 1.5 * h];
  const level = rim + 0.16;
  const half = (from: number): readonly Point[] =>
    Array.from({ length: 25 }, (_, i) => {
      const turn = from + (Math.PI * i) / 24;
      return { x: wide * Math.cos(turn), y: level + deep * Math.sin(turn) };
    });
  const front = half(Math.PI);
  const lower = front.map(({ x, y }) => ({ x, y: y - 0.6 * h }));
  const marks = front.flatMap((at, i) => {
    const under = lower[i];
    return under === undefined || i % 2 === 0 ? [] : [line('mark', 'thin', at, { x: at.x, y: (at.y + under.y) / 2 })];
  });
  return [
    { shape: 'area', layer: 'mark', boundary: [...front, ...[...lower].reverse()], tone: 0.22 },
    ...polyline('mark', 'dashed', half(0)),
    ...polyline('mark', 'outline', front),
    ...polyline('mark', 'outline', lower),
    ...marks,
    ...letter({ x: -0.12, y: level - deep - 2.6 * h }, 'A', 'around', h),
  ];
}

function coneTape(cone: MeasuringDrawingInput['cone'], aside: number): readonly Entity[] {
  const at: Point = { x: aside + 2 * h, y: (foot.y + head.y) / 2 };
  if (cone === 'height') return [...upright(aside, foot.y, head.y), ...letter(at, 'C', 'height', h)];
  const leader = line('text', 'thin', { x: at.x - h, y: at.y }, { x: (foot.x + head.x) / 2 + h, y: at.y });
  if (cone === 'slant') {
    return [
      ...tape({ x: foot.x - 0.4 * h, y: foot.y + 0.4 * h }, { x: head.x - 0.4 * h, y: head.y - 0.2 * h }, h),
      leader,
      ...letter(at, 'C', 'slant', h),
    ];
  }
  const slope = Math.atan2(head.y - foot.y, head.x - foot.x);
  return [
    line('text', 'thin', foot, { x: radius, y: foot.y }),
    { shape: 'angle dimension', center: foot, radius: 3.6 * h, start: 0, sweep: slope, text: '' },
    line('text', 'thin', { x: at.x - h, y: at.y }, { x: foot.x + 3.6 * h, y: foot.y + 2 * h }),
    ...letter(at, 'C', 'angle', h),
  ];
}

/** A tape upright beside the drum, between two levels that thin lines carry over to it. */
function upright(x: number, low: number, high: number): readonly Entity[] {
  return [
    ...tape({ x, y: low }, { x, y: high }, h),
    ...[low, high].map((y) => line('text', 'thin', { x: radius + wall, y }, { x: x - 0.4 * h, y })),
  ];
}
