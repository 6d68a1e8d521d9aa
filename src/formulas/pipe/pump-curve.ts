/**
 * A pump's head over its flow, from the points of a maker's sheet.
 */
import { Refusal } from '../refusal';

export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/** A point of the curve and its slope there. */
interface Knot extends PumpPoint {
  readonly slope: number;
}

/** A curve through the points that never rises where they do not: its first point, and the spans up to the last. */
export interface PumpCurve {
  readonly leastFlow: number;
  readonly mostFlow: number;
  readonly spans: readonly (readonly [from: Knot, to: Knot])[];
}

/**
 * Monotone cubic curve through pump points, in order of flow; two points give a straight line.
 *
 * Refuses one point, two heads at one flow, and a head that rises with flow, because a pump would hunt on it. Source: Fritsch and Butland, SIAM
 * Journal on Scientific and Statistical Computing 5:300 (1984).
 */
export function pumpCurve(points: readonly PumpPoint[]): PumpCurve {
  const [first, ...rest] = [...points].sort((a, b) => a.flow - b.flow);
  const last = rest.at(-1);
  if (first === undefined || last === undefined) {
    throw new Refusal('curve', 'give at least two points of flow and head');
  }
  const chords: Chord[] = [];
  let from = first;
  for (const to of rest) {
    refuseRise(from, to);
    const width = to.flow - from.flow;
    chords.push({ from, to, width, secant: (to.head - from.head) / width });
    from = to;
  }
  const spans = chords.map((chord, i) => {
    const startSlope = slopeBetween(chords[i - 1], chord) ?? endSlope(chord, chords[i + 1]);
    const endingSlope = slopeBetween(chord, chords[i + 1]) ?? endSlope(chord, chords[i - 1]);
    return [
      { ...chord.from, slope: startSlope },
      { ...chord.to, slope: endingSlope },
    ] as const;
  });
  return { leastFlow: first.flow, mostFlow: last.flow, spans };
}

/** The straight line between two neighboring points. */
interface Chord {
  readonly from: PumpPoint;
  readonly to: PumpPoint;
  readonly width: number;
  readonly secant: number;
}

function refuseRise(from: PumpPoint, to: PumpPoint): void {
  const figures = { at: to.flow };
  if (to.flow === from.flow) throw new Refusal('curve', 'two heads are given at {at:flow}; give one', { figures });
  if (to.head > from.head) {
    throw new Refusal('curve', 'the head rises toward {at:flow}; a pump’s head falls as its flow grows', { figures });
  }
}

/** Slope where two chords meet; undefined at an end of the curve, where there is only one. */
function slopeBetween(before: Chord | undefined, after: Chord | undefined): number | undefined {
  if (before === undefined || after === undefined) return undefined;
  if (before.secant === 0 || after.secant === 0) return 0;
  const first = 2 * after.width + before.width;
  const second = after.width + 2 * before.width;
  return (first + second) / (first / before.secant + second / after.secant);
}

/** Slope at an end from three points, kept from overshooting; that of the straight line where there are only two. */
function endSlope({ width, secant }: Chord, next: Chord | undefined): number {
  if (next === undefined) return secant;
  const slope = ((2 * width + next.width) * secant - width * next.secant) / (width + next.width);
  if (slope > 0 || secant === 0) return 0;
  return Math.max(slope, 3 * secant);
}

/** Head at a flow within the curve, m. */
export function pumpHead({ spans }: PumpCurve, flow: number): number {
  const span = spans.find(([, to]) => flow <= to.flow) ?? spans.at(-1);
  if (span === undefined) return 0;
  const [from, to] = span;
  const width = to.flow - from.flow;
  const t = (flow - from.flow) / width;
  const rest = 1 - t;
  return (
    from.head * (1 + 2 * t) * rest * rest +
    to.head * t * t * (3 - 2 * t) +
    width * (from.slope * t * rest * rest - to.slope * t * t * rest)
  );
}
