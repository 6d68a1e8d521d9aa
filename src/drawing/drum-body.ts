import type { TankPort } from '../formulas/tank/tank-ports';
import { arrow } from './dimension-lines';
import type { Entity, Point } from './drawing-model';
import { hatched } from './hatch';
import { closedPolyline, corners, line, polyline, text } from './shapes';
import { textWidth } from './text-width';

/** A drum in section, about its middle line; heights count from the ground. */
export interface DrumFigures {
  readonly drumDiameter: number;
  readonly depth: number;
  readonly coneHeight: number;
  readonly coneTop: number;
  readonly coneBottom: number;
  readonly rise: number;
  readonly stand: number;
  readonly drumHeight: number;
  readonly container: number | undefined;
  readonly drainDrop: number | undefined;
  readonly ports: readonly TankPort[];
}

export interface DrumLevels {
  readonly floor: number;
  readonly coneFoot: number;
  readonly coneHead: number;
  readonly water: number;
  readonly rim: number;
}

export function drumLevels({ stand, rise, coneHeight, depth, drumHeight }: DrumFigures): DrumLevels {
  const coneFoot = stand + rise;
  const coneHead = coneFoot + coneHeight;
  return { floor: stand, coneFoot, coneHead, water: coneHead + depth, rim: stand + drumHeight };
}

export function drumBody(figures: DrumFigures, h: number, word: (meters: number) => string): readonly Entity[] {
  return [
    ...water(figures, h),
    ...(figures.coneHeight > 0 ? coneAndBase(figures, h) : []),
    ...wall(figures, h),
    ...figures.ports.flatMap((port, i) => pipe(figures, figures.stand + port.aboveFloor, i === 0 ? -1 : 1, h)),
    ...ground(figures, h),
    ...(figures.stand > 0 ? [...standFrame(figures, h), ...drain(figures, h, word)] : []),
  ];
}

const mirrored = (points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => ({ x: -x, y }));

function water(figures: DrumFigures, h: number): readonly Entity[] {
  const { drumDiameter, coneTop, coneBottom, coneHeight } = figures;
  const { coneFoot, coneHead, water: surface } = drumLevels(figures);
  const radius = drumDiameter / 2;
  const right =
    coneHeight > 0
      ? [
          { x: coneBottom / 2, y: coneFoot },
          { x: coneTop / 2, y: coneHead },
          { x: radius, y: coneHead },
          { x: radius, y: surface },
        ]
      : [
          { x: radius, y: coneHead },
          { x: radius, y: surface },
        ];
  const side = 0.55 * h;
  const mark = { x: -0.45 * radius, y: surface };
  const ripples = [1, 2, 3].map((i) => {
    const half = (1.6 - 0.4 * i) * h;
    const y = surface - 0.5 * i * h;
    return line('mark', 'thin', { x: mark.x - half, y }, { x: mark.x + half, y });
  });
  return [
    { shape: 'area', layer: 'mark', boundary: [...right, ...[...mirrored(right)].reverse()], tone: 0.09 },
    line('mark', 'thin', { x: -radius, y: surface }, { x: radius, y: surface }),
    ...closedPolyline('mark', 'thin', [
      mark,
      { x: mark.x - side, y: surface + 1.7 * side },
      { x: mark.x + side, y: surface + 1.7 * side },
    ]),
    ...ripples,
    line('mark', 'center', { x: 0, y: drumLevels(figures).rim + h }, { x: 0, y: coneFoot - h }),
  ];
}

function coneAndBase(figures: DrumFigures, h: number): readonly Entity[] {
  const { drumDiameter, coneTop, coneBottom, rise } = figures;
  const { floor, coneFoot, coneHead } = drumLevels(figures);
  const radius = drumDiameter / 2;
  const inner = coneBottom / 2;
  const base: readonly Point[] = [
    { x: inner, y: floor },
    { x: radius, y: floor },
    { x: radius, y: coneHead },
    { x: coneTop / 2, y: coneHead },
    { x: inner, y: coneFoot },
  ];
  const sheet = [
    { x: inner, y: coneFoot },
    { x: coneTop / 2, y: coneHead },
  ];
  const sump = [
    { x: inner, y: floor },
    { x: inner, y: coneFoot },
  ];
  const label = { x: -radius - 1.6 * h, y: floor + 0.35 * (coneHead - floor) };
  const hasRoom = coneHead - floor > 4.5 * h;
  return [
    ...hatched(base, 0.75 * h, Math.PI / 4),
    ...hatched(mirrored(base), 0.75 * h, -Math.PI / 4),
    ...[sheet, mirrored(sheet)].flatMap((points) => polyline('mark', 'outline', points)),
    ...(rise > 0 ? [sump, mirrored(sump)].flatMap((points) => polyline('mark', 'outline', points)) : []),
    ...(hasRoom
      ? [
          line('text', 'thin', { x: -radius + 0.8 * h, y: label.y }, { x: label.x + 0.4 * h, y: label.y }),
          text(label, 'base\nmix', h, { anchor: 'end' }),
        ]
      : []),
  ];
}

/** Drum wall and floor as two lines, with the hole of the drain left open. */
function wall(figures: DrumFigures, h: number): readonly Entity[] {
  const { drumDiameter, coneBottom, coneHeight, stand } = figures;
  const { floor, rim } = drumLevels(figures);
  const inside = drumDiameter / 2;
  const outside = inside + 0.45 * h;
  const under = floor - 0.45 * h;
  const hole = coneHeight > 0 && stand > 0 ? coneBottom / 2 : 0;
  const half = [
    { x: hole, y: floor },
    { x: inside, y: floor },
    { x: inside, y: rim },
    { x: outside, y: rim },
    { x: outside, y: under },
    { x: hole, y: under },
  ];
  return [half, mirrored(half)].flatMap((points) => polyline('mark', 'outline', points));
}

/** Where a level line leaves a pipe: the outer end of the outlet, the tip of the inlet's arrow. */
export function pipeEnd(wall: number, side: -1 | 1, h: number): number {
  return side < 0 ? -wall + 3.8 * h : wall + 4.2 * h;
}

/** A short pipe through the wall with an arrow for the flow of water; the inlet is on the left. */
function pipe({ drumDiameter }: DrumFigures, y: number, side: -1 | 1, h: number): readonly Entity[] {
  const inside = side * (drumDiameter / 2 - 1.4 * h);
  const outside = side * (drumDiameter / 2 + 4 * h);
  const bore = 0.75 * h;
  const tip = side < 0 ? inside + 2 * h : outside - 0.6 * h;
  const tail = side < 0 ? outside + 0.6 * h : inside - 2.2 * h;
  return [
    line('mark', 'outline', { x: inside, y: y + bore }, { x: outside, y: y + bore }),
    line('mark', 'outline', { x: inside, y: y - bore }, { x: outside, y: y - bore }),
    line('mark', 'thin', { x: tail, y }, { x: tip, y }),
    ...arrow({ x: tip, y }, 0, h),
    text({ x: outside - side * 1.6 * h, y: y + 1.8 * h }, side < 0 ? 'inlet' : 'outlet', 0.85 * h),
  ];
}

function ground({ drumDiameter }: DrumFigures, h: number): readonly Entity[] {
  const reach = drumDiameter / 2 + 3.5 * h;
  const strokes = Math.floor((2 * reach) / (1.2 * h));
  return [
    line('mark', 'outline', { x: -reach, y: 0 }, { x: reach, y: 0 }),
    ...Array.from({ length: strokes }, (_, i) => {
      const x = -reach + (i + 1) * 1.2 * h;
      return line('mark', 'thin', { x, y: 0 }, { x: x - 0.8 * h, y: -0.8 * h });
    }),
    text({ x: 0, y: -1.8 * h }, 'ground', h),
  ];
}

function standFrame({ drumDiameter, coneBottom, stand }: DrumFigures, h: number): readonly Entity[] {
  const outside = drumDiameter / 2 + h;
  const top = stand - 0.45 * h;
  const deck = Math.max(top - 1.2 * h, 0.5 * top);
  const hole = coneBottom / 2 + 0.8 * h;
  const leg = 1.4 * h;
  return [1, -1].flatMap((side) => [
    ...closedPolyline('mark', 'outline', corners(side * hole, deck, side * outside, top)),
    ...closedPolyline(
      'mark',
      'outline',
      corners(side * (outside - 0.3 * h - leg), 0, side * (outside - 0.3 * h), deck),
    ),
  ]);
}

/** The pipe down from the cone with its valve, and the pail if its height is given. */
function drain(figures: DrumFigures, h: number, word: (meters: number) => string): readonly Entity[] {
  const { drumDiameter, stand, container, coneBottom, drainDrop } = figures;
  const half = Math.max(Math.min(coneBottom / 2, 1.2 * h), 0.6 * h);
  const drop = Math.min(drainDrop ?? Math.min(5 * h, 0.5 * stand), 0.95 * stand);
  const end = stand - drop;
  const start = stand - 0.45 * h;
  const middle = (start - 1.2 * h + end) / 2;
  const size = Math.min(0.9 * h, drop / 3);
  const valve = closedPolyline('mark', 'outline', [
    { x: -size, y: middle + size },
    { x: size, y: middle + size },
    { x: -size, y: middle - size },
    { x: size, y: middle - size },
  ]);
  // Words stand between the pipe and a leg, if there is room.
  const leg = drumDiameter / 2 - 0.7 * h;
  const words = coneBottom > 0 ? [word(coneBottom), 'drain'] : ['valve'];
  const hasRoom = half + h + Math.max(...words.map((line) => textWidth(line, 0.85 * h))) < leg;
  const sides = [-half, half].map((x) => line('mark', 'outline', { x, y: start }, { x, y: end }));
  const pail =
    container === undefined
      ? []
      : [
          ...polyline('mark', 'outline', [
            { x: -2.6 * h, y: Math.min(container, end) },
            { x: -2.1 * h, y: 0 },
            { x: 2.1 * h, y: 0 },
            { x: 2.6 * h, y: Math.min(container, end) },
          ]),
          hasRoom
            ? text({ x: 3.2 * h, y: Math.min(container, end) / 2 }, 'pail', h, { anchor: 'start' })
            : text({ x: 0, y: Math.min(container, end) / 2 }, 'pail', h),
        ];
  return [
    ...sides,
    ...valve,
    ...(hasRoom ? [text({ x: half + h, y: middle }, words.join('\n'), 0.85 * h, { anchor: 'start' })] : []),
    ...pail,
  ];
}
