/**
 * Inside diameters of plastic pipe by its name, and the smallest that carries a flow.
 */
import { Refusal } from '../refusal';
import { circleArea } from '../tank/tank-shape';

const INCH = 0.0254;
const MILLIMETER = 1e-3;

/** A pipe's name: so many inches nominal, or so many millimeters outside diameter. */
export interface NominalSize {
  readonly series: 'inch' | 'metric';
  readonly size: number;
}

/**
 * Average inside diameter, in, of PVC pipe by nominal size, schedules 40 and 80: the outside diameter less two walls of the least
 * thickness and half its tolerance. Source: ASTM D1785, tables 1 and 2.
 */
const inches: readonly (readonly [size: number, forty: number, eighty: number])[] = [
  [0.5, 0.602, 0.526],
  [0.75, 0.804, 0.722],
  [1, 1.029, 0.936],
  [1.25, 1.36, 1.255],
  [1.5, 1.59, 1.476],
  [2, 2.047, 1.913],
  [2.5, 2.445, 2.29],
  [3, 3.042, 2.864],
  [4, 3.998, 3.786],
  [5, 5.016, 4.768],
  [6, 6.031, 5.709],
  [8, 7.942, 7.565],
  [10, 9.976, 9.493],
  [12, 11.889, 11.294],
];

/**
 * Nominal wall, mm, of PVC-U pressure pipe by outside diameter, PN 10 and PN 16; 0 where the class is not made. Source: EN ISO 1452-2,
 * table 2 (design coefficient 2.5 up to 90 mm, 2.0 from 110 mm), from memory; from 40 to 90 mm a chart after DIN 8062 has the same.
 */
const metric: readonly (readonly [outside: number, ten: number, sixteen: number])[] = [
  [20, 0, 1.5],
  [25, 0, 1.9],
  [32, 1.6, 2.4],
  [40, 1.9, 3.0],
  [50, 2.4, 3.7],
  [63, 3.0, 4.7],
  [75, 3.6, 5.6],
  [90, 4.3, 6.7],
  [110, 4.2, 6.6],
  [125, 4.8, 7.4],
  [140, 5.4, 8.3],
  [160, 6.2, 9.5],
  [200, 7.7, 11.9],
];

/** Schedules 40 and 80 by the inch, pressure classes 10 and 16 by the millimeter. */
export const schedules = { inch: [40, 80], metric: [10, 16] } as const;

interface Sized {
  readonly size: number;
  readonly bore: number;
}

/** The sizes of each schedule and pressure class that was asked for, because a sheet asks for one again and again. */
const known = new Map<number, readonly Sized[]>();

/** Every size made in a schedule or pressure class, smallest first, with its bore in m; empty where there is no such class. */
export function pipeSizes(series: NominalSize['series'], schedule: number): readonly Sized[] {
  const column = (schedules[series] as readonly number[]).indexOf(schedule);
  if (column < 0) return [];
  const sizes = known.get(schedule) ?? sizesIn(series, column);
  known.set(schedule, sizes);
  return sizes;
}

function sizesIn(series: NominalSize['series'], column: number): readonly Sized[] {
  if (series === 'inch') return inches.map(([size, ...bores]) => ({ size, bore: (bores[column] ?? 0) * INCH }));
  return metric
    .map(([size, ...walls]) => ({ size, wall: walls[column] ?? 0 }))
    .filter(({ wall }) => wall > 0)
    .map(({ size, wall }) => ({ size, bore: (size - 2 * wall) * MILLIMETER }));
}

/**
 * Average inside diameter of a pipe, m, by its nominal size and schedule or pressure class.
 *
 * Not available for a size or class that is not in the tables. Source: ASTM D1785; EN ISO 1452-2.
 */
export function pipeBore(nominal: NominalSize, schedule: number): number {
  const sizes = pipeSizes(nominal.series, schedule);
  if (sizes.length === 0) {
    const advice =
      nominal.series === 'inch'
        ? 'give 40 or 80 for a size in inches'
        : 'give a pressure class, 10 or 16, for a size in millimeters';
    throw new Refusal('schedule', advice, { reason: 'unavailable' });
  }
  const found = sizes.find(({ size }) => size === nominal.size);
  if (found === undefined) {
    const names = sizes.map(({ size }) => nominalName({ series: nominal.series, size })).join(', ');
    throw new Refusal('nominal', `sizes with a published bore are ${names}`, { reason: 'unavailable' });
  }
  return found.bore;
}

/**
 * Name of the smallest pipe in which a flow, m3/s, is not faster than `fastest`, m/s; schedules 40 and 80 are by the inch, pressure
 * classes 10 and 16 by the millimeter.
 *
 * Refuses a flow too large for the widest pipe in the tables. Source: continuity; ASTM D1785; EN ISO 1452-2.
 */
export function pipeSize(flow: number, fastest: number, schedule: number): string {
  const series = (schedules.metric as readonly number[]).includes(schedule) ? 'metric' : 'inch';
  const sizes = pipeSizes(series, schedule);
  const widest = sizes.at(-1);
  if (widest === undefined) {
    throw new Refusal('schedule', 'give 40 or 80, or the metric pressure classes 10 or 16', { reason: 'unavailable' });
  }
  const fitting = sizes.find(({ bore }) => flow <= fastest * circleArea(bore) * (1 + 1e-9));
  if (fitting === undefined) {
    const name = nominalName({ series, size: widest.size });
    throw new Refusal('flow', `the widest pipe known here, ${name}, carries {most}; use several side by side`, {
      figures: { most: { value: fastest * circleArea(widest.bore), like: 'flow' } },
      reason: 'unavailable',
    });
  }
  return nominalName({ series, size: fitting.size });
}

const fractions: Readonly<Record<number, string>> = { 0.25: '1/4', 0.5: '1/2', 0.75: '3/4' };

/** `2-1/2 in`, `63 mm`: what a pipe is asked for by. */
export function nominalName({ series, size }: NominalSize): string {
  if (series === 'metric') return `${size} mm`;
  const whole = Math.floor(size);
  const fraction = fractions[size - whole];
  if (fraction === undefined) return `${size} in`;
  return whole === 0 ? `${fraction} in` : `${whole}-${fraction} in`;
}
