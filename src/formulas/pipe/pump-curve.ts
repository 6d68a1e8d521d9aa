/**
 * A pump's head over its flow, from the points of a maker's sheet.
 */
import { Refusal } from '../refusal';

export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/** A curve through the points that never rises where they do not. */
export interface PumpCurve {
  readonly flows: readonly number[];
  readonly heads: readonly number[];
  readonly slopes: readonly number[];
}

/**
 * Monotone cubic curve through pump points, in order of flow; two points give a straight line.
 *
 * Cannot take one point, two heads at one flow, or a head that rises with flow, on which a pump hunts. Source: Fritsch and Butland, SIAM
 * Journal on Scientific and Statistical Computing 5:300 (1984).
 */
export function pumpCurve(points: readonly PumpPoint[]): PumpCurve {
  const sorted = [...points].sort((a, b) => a.flow - b.flow);
  if (sorted.length < 2) throw new Refusal('curve', 'give at least two points of flow and head');
  const flows = sorted.map(({ flow }) => flow);
  const heads = sorted.map(({ head }) => head);
  for (let i = 1; i < flows.length; i++) {
    const at = { value: flows[i]!, like: 'flow' };
    if (flows[i] === flows[i - 1]) {
      throw new Refusal('curve', 'two heads are given at {at}; give one', { figures: { at } });
    }
    if (heads[i]! > heads[i - 1]!) {
      throw new Refusal('curve', 'the head rises toward {at}; a pump’s head falls as its flow grows', {
        figures: { at },
      });
    }
  }
  return { flows, heads, slopes: slopesOf(flows, heads) };
}

function slopesOf(flows: readonly number[], heads: readonly number[]): readonly number[] {
  const last = flows.length - 1;
  const width = (i: number) => flows[i + 1]! - flows[i]!;
  const secant = (i: number) => (heads[i + 1]! - heads[i]!) / width(i);
  if (last === 1) return [secant(0), secant(0)];
  return flows.map((_, i) => {
    if (i === 0) return endSlope(width(0), width(1), secant(0), secant(1));
    if (i === last) return endSlope(width(last - 1), width(last - 2), secant(last - 1), secant(last - 2));
    const before = secant(i - 1);
    const after = secant(i);
    if (before === 0 || after === 0) return 0;
    const first = 2 * width(i) + width(i - 1);
    const second = width(i) + 2 * width(i - 1);
    return (first + second) / (first / before + second / after);
  });
}

/** Slope at an end from three points, kept from overshooting. */
function endSlope(near: number, far: number, secant: number, next: number): number {
  const slope = ((2 * near + far) * secant - near * next) / (near + far);
  if (slope > 0 || secant === 0) return 0;
  return Math.max(slope, 3 * secant);
}

/** Head at a flow within the curve, m. */
export function pumpHead({ flows, heads, slopes }: PumpCurve, flow: number): number {
  let i = 0;
  while (i < flows.length - 2 && flow > flows[i + 1]!) i++;
  const width = flows[i + 1]! - flows[i]!;
  const t = (flow - flows[i]!) / width;
  const rest = 1 - t;
  return (
    heads[i]! * (1 + 2 * t) * rest * rest +
    heads[i + 1]! * t * t * (3 - 2 * t) +
    width * (slopes[i]! * t * rest * rest - slopes[i + 1]! * t * t * rest)
  );
}
