/**
 * Moves many pieces together a few at a time, from left to right: a program of all of them would take far longer.
 */
import { type Compacted, type CompactionLimits, compacted, largestMovement, type PosedPiece } from './compaction';
import { type LaidPiece, laidPiece } from './laid-piece';

/** The pieces that move at a time, and how many of them are left behind at the next time. */
const windowSize = 12;
const windowStep = 6;
const rounds = 8;
/** Pieces farther away than so many of the largest movements are not in the way: all rounds together move none so far. */
const farAway = 20;

/** A pass that makes the length less by a smaller share than this is the last one. */
const leastGain = 0.0001;

/** The layout after as many passes as make it shorter, until the steps are spent. */
export function compactedInWindows(
  pieces: readonly PosedPiece[],
  limits: CompactionLimits,
  mostSteps: number,
): Compacted {
  const lengthOf = (some: readonly PosedPiece[]) =>
    Math.max(...some.map(({ piece, outline, pose }) => laidPiece(piece, outline, pose).right));
  let best = pieces;
  let length = lengthOf(pieces);
  for (let passes = 0; limits.budget.spent < mostSteps; passes++) {
    const next = movedLeft(best, limits);
    const gain = length - lengthOf(next);
    best = next;
    length -= gain;
    if (gain < leastGain * length && passes > 2) break;
  }
  return { poses: best.map(({ pose }) => pose), length };
}

/** The pieces, each as far left as those beside it allow. */
function movedLeft(
  pieces: readonly PosedPiece[],
  limits: Pick<CompactionLimits, 'width' | 'gap' | 'budget'>,
): readonly PosedPiece[] {
  const moved = [...pieces];
  const boxes = pieces.map(({ piece, outline, pose }) => laidPiece(piece, outline, pose));
  const order = [...pieces.keys()].sort((i, j) => leftOf(boxes, i) - leftOf(boxes, j));
  const reach = farAway * largestMovement(boxes, limits.width) + limits.gap;
  for (let start = 0; start + windowStep / 2 < order.length; start += windowStep) {
    const movable = order.slice(start, start + windowSize);
    const left = Math.min(...movable.map((i) => leftOf(boxes, i)));
    const right = Math.max(...movable.map((i) => (boxes[i] as LaidPiece).right));
    const beside = order.filter((i) => {
      const box = boxes[i] as LaidPiece;
      return !movable.includes(i) && box.right > left - reach && box.left < right + reach;
    });
    const some = [...movable, ...beside];
    const found = compacted(
      some.map((i) => moved[i] as PosedPiece),
      { width: limits.width, gap: limits.gap, budget: limits.budget, rounds, movable: movable.length },
    );
    if (found === undefined) continue;
    for (const [at, i] of movable.entries()) {
      const { piece, outline } = moved[i] as PosedPiece;
      const pose = found.poses[at] as PosedPiece['pose'];
      moved[i] = { piece, outline, pose };
      boxes[i] = laidPiece(piece, outline, pose);
    }
  }
  return moved;
}

function leftOf(boxes: readonly LaidPiece[], i: number): number {
  return (boxes[i] as LaidPiece).left;
}
