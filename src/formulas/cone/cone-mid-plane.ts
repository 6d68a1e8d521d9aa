/**
 * From what the tape read to the middle of the sheet, which is what neither stretches nor shrinks when it is rolled.
 *
 * Rims are cut square to the sheet, so that with wall angle a the diameter at the mid-plane is
 * outside - t sin a = inside + t sin a. Height is between the mid-plane rims. Lengths in m, angles in rad.
 */

import { Refusal } from '../refusal';
import { refuseWideBottom } from './cone';

/** `fit`: top is the bore that the rim goes into (outside), bottom the bore of the drain (inside). */
export type Measured = 'fit' | 'inside' | 'outside' | 'middle';
export const measuredWays: readonly Measured[] = ['fit', 'inside', 'outside', 'middle'];

export interface MeasuredCone {
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly thickness: number;
  readonly measured: Measured;
  /** The gap all round that is left at the top. */
  readonly clearance: number;
}

export interface MidPlaneCone {
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly wallAngle: number;
}

/** How many t sin a a measured diameter lies outside the mid-plane: at the top, and at the bottom. */
const offsets: Readonly<Record<Measured, readonly [top: number, bottom: number]>> = {
  fit: [1, -1],
  outside: [1, 1],
  inside: [-1, -1],
  middle: [0, 0],
};

/**
 * The mid-plane frustum of a measured cone; the wall angle under `fit` is found to machine precision.
 *
 * tan a = 2 h / (D - d), with D = top - 2 clearance -+ t sin a and d = bottom +- t sin a. Equal diameters are a cylinder,
 * whose mid-plane diameter is that of its top; bottom 0 is a point. Refuses a bottom wider than the top, and a clearance
 * or a thickness that leaves no cone. Source: geometry of an offset of a cone.
 */
export function coneMidPlane(cone: MeasuredCone): MidPlaneCone {
  const { top, bottom, height, thickness, measured, clearance } = cone;
  refuseWideBottom(top, bottom);
  const [atTop, measuredAtBottom] = offsets[measured];
  const atBottom = bottom === 0 ? 0 : measuredAtBottom;
  if (top === bottom) {
    const middle = top - 2 * clearance - atTop * thickness;
    if (middle <= 0) throw tooThick(top - 2 * clearance);
    return { top: middle, bottom: middle, height, wallAngle: Math.PI / 2 };
  }
  const step = top - 2 * clearance - bottom;
  if (step <= 0) {
    throw new Refusal('clearance', 'give less than half of what top is wider than bottom ({limit})', {
      figures: { limit: { value: (top - bottom) / 2, like: 'clearance' } },
    });
  }
  const narrowing = atTop - atBottom;
  const wallAngle = selfConsistentAngle(step, narrowing * thickness, height);
  if (wallAngle === undefined) throw tooThick(step / narrowing);
  const offset = thickness * Math.sin(wallAngle);
  const middleBottom = bottom - atBottom * offset;
  if (middleBottom < 0) throw tooThick(bottom / Math.sin(wallAngle));
  return { top: top - 2 * clearance - atTop * offset, bottom: middleBottom, height, wallAngle };
}

/**
 * The smallest a that solves (w - k sin a) tan a = 2 h: the one that is reached as the sheet grows from nothing.
 *
 * w what top is wider than bottom, k the thicknesses by which the sheet narrows that. The left side rises from 0 until
 * sin a (1 + cos2 a) = w/k, falls, and rises again to the upright where w > k.
 */
function selfConsistentAngle(step: number, narrowing: number, height: number): number | undefined {
  if (narrowing === 0) return Math.atan2(2 * height, step);
  const short = (angle: number) =>
    (step - narrowing * Math.sin(angle)) * Math.sin(angle) < 2 * height * Math.cos(angle);
  const upright = Math.PI / 2;
  const crest = firstCrest(step / narrowing);
  if (!short(crest)) return bisect(short, 0, crest);
  return step > narrowing ? bisect(short, crest, upright) : undefined;
}

/** Where sin a (1 + cos2 a) first reaches the ratio; the upright where it never does. */
function firstCrest(ratio: number): number {
  const turn = Math.asin(Math.sqrt(2 / 3));
  const below = (angle: number) => Math.sin(angle) * (1 + Math.cos(angle) ** 2) < ratio;
  return ratio < 0 || below(turn) ? Math.PI / 2 : bisect(below, 0, turn);
}

/** From any number to the next one to 0, halving ends by then. */
const HALVINGS = 1100;

/** The place where a test turns from true to false, halved until no number is left between. */
function bisect(test: (x: number) => boolean, from: number, to: number): number {
  let low = from;
  let high = to;
  let middle = low;
  for (let step = 0; step < HALVINGS; step++) {
    middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (test(middle)) low = middle;
    else high = middle;
  }
  return middle;
}

function tooThick(limit: number): Refusal {
  return new Refusal('thickness', 'leaves no cone of these diameters; give less than {limit}', {
    figures: { limit: { value: limit, like: 'thickness' } },
  });
}
