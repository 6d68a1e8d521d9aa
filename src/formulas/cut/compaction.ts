// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the number of pieces, and a check would
// slow the search.
/**
 * Moves and turns all pieces of a sheet together so that they need less of its length.
 *
 * Near places give the first order of the distances between pieces. A linear program finds the small movements of all
 * pieces that shorten the sheet most and keep them apart; then the distances are taken again, with smaller movements as
 * the gain fades (the compaction of Li and Milenkovic, 1995, with turns).
 */
import { cosine, sine } from '../numeric/portable-angles';
import { overlaps, overlapsDeeply } from './crossing';
import type { StepBudget } from './cut-sheet';
import { type LaidPiece, laidPiece, type Pose } from './laid-piece';
import { LinearProgram } from './linear-program';
import { type Near, nearPlaces, rightEnd } from './nearness';
import type { Piece } from './piece';
import type { OutlinePart } from './piece-outline';

export interface PosedPiece {
  readonly piece: Piece;
  readonly outline: readonly OutlinePart[];
  readonly pose: Pose;
}

export interface CompactionLimits {
  readonly width: number;
  readonly gap: number;
  readonly rounds: number;
  readonly budget: StepBudget;
  /** A layout that will hardly become shorter than this is given up. */
  readonly enough?: number;
  /** Only the first so many pieces move, as far left as they can together; without it all, for the least length. */
  readonly movable?: number;
}

export interface Compacted {
  readonly poses: readonly Pose[];
  readonly length: number;
}

/** Pieces may touch; rounding must not turn that into an overlap. m */
const apart = 1e-9;
/** The program aims at this much more, so that what the first order leaves out does no harm. m */
const margin = { least: 1e-6, most: 1e-5 };
/**
 * The largest movement of the first round, as a share of the sheet's width and of the longest piece: on a sheet that is much
 * wider than its pieces all of them would be in each other's way.
 */
const firstMovement = { width: 0.02, piece: 0.1 };
/**
 * Movements become smaller after a round that left so much overlap for its gain, or gained so little for its movement; and
 * in the last rounds, which only remove what overlaps.
 */
const overlapPerGain = 0.2;
const leastGain = 0.15;
const smaller = 0.5;
const lastRounds = 3;
const smallerAtLast = 0.3;
/**
 * After so many rounds a layout is given up that is longer than it should become by more than so many movements, as hardly
 * any becomes so much shorter; one that gains a good share of a movement a round, by more than all rounds left could gain.
 */
const hopeful = { rounds: 2, movements: 1.5, gain: 0.5 };
/**
 * Pieces that lie deep in each other after so many rounds are not moved apart, and an overlap left after so many by more
 * than a share of a movement hardly ever is, as the movements become smaller.
 */
const hopeless = { deepAfter: 1, overlapAfter: 2, overlap: 0.5 };
/** The most rounds more for a layout that still gains such a share of its length a round, or has so small an overlap left, m. */
const further = { rounds: 4, gain: 3e-4, overlap: 1e-4 };

/** The largest movement of laid pieces in the first round. */
export function largestMovement(laid: readonly LaidPiece[], width: number): number {
  const longest = Math.max(...laid.map(radiusOf)) * 2;
  return Math.min(firstMovement.width * width, firstMovement.piece * longest);
}

/** The shortest layout found without an overlap; undefined if there was none. */
export function compacted(pieces: readonly PosedPiece[], limits: CompactionLimits): Compacted | undefined {
  const { width, gap, rounds, budget, enough = Infinity, movable = pieces.length } = limits;
  const isForLength = limits.movable === undefined;
  const poses = pieces.map(({ pose }) => pose);
  const program = new LinearProgram(3 * movable + 1);
  const laid = pieces.map(({ piece, outline, pose }) => laidPiece(piece, outline, pose));
  let length = Math.max(...laid.map(({ right }) => right));
  // What is to become less: the length, or the mean distance of the movable pieces from the left.
  let score = isForLength ? length : 0;
  let movement = largestMovement(laid, width);
  let beyond = margin.least;
  let gained = Infinity;
  let best: (Compacted & { readonly score: number }) | undefined;
  const mostRounds = rounds + further.rounds;
  let last = rounds;
  for (let round = 0; ; round++) {
    const places = nearPlaces(laid, movable, length, width, 2.2 * movement + gap + beyond);
    budget.spent += 200 * movable + 5 * movable * pieces.length + 25 * places.length;
    let nearest = Infinity;
    for (const { one, distance } of places) nearest = Math.min(nearest, one < 0 ? distance : distance - gap - apart);
    if (nearest >= 0 && score < (best?.score ?? Infinity)) best = { poses: poses.slice(), length, score };
    const overlap = Math.max(0, -nearest);
    if (isForLength && round === hopeless.deepAfter && overlapsDeeply(laid, places)) return undefined;
    if (isForLength && round >= hopeless.overlapAfter && overlap > hopeless.overlap * movement) return undefined;
    if (round === last - lastRounds && last < mostRounds && gained > further.gain * length) last++;
    if (round >= last && (overlap === 0 || overlap > further.overlap || round >= mostRounds)) break;
    const hopedFor = gained < hopeful.gain * movement ? hopeful.movements : mostRounds - round;
    if (isForLength && round >= hopeful.rounds && length > enough + hopedFor * movement) return undefined;
    if (round >= last - lastRounds) movement *= smallerAtLast;
    else if (overlap > overlapPerGain * gained || gained < leastGain * movement) movement *= smaller;
    if (round > 5 && overlap > 0 && overlap < further.overlap) beyond = Math.min(margin.most, 1.3 * beyond);
    const found = smallMovements(program, laid, places, { movement, keep: gap + beyond, beyond, movable, isForLength });
    budget.spent += 0.3 * program.work;
    gained = isForLength ? found[3 * movable]! : 0;
    for (let i = 0; i < movable; i++) {
      const { piece, outline } = pieces[i]!;
      const pose = movedPose(laid[i]!, poses[i]!, found, 3 * i);
      if (!isForLength) gained -= found[3 * i]! / movable;
      poses[i] = pose;
      laid[i] = laidPiece(piece, outline, pose);
    }
    score -= gained;
    if (isForLength) length -= gained;
  }
  if (best === undefined) return undefined;
  const atBest = pieces.map(({ piece, outline }, i) => laidPiece(piece, outline, best!.poses[i]!));
  return overlaps(atBest, movable) ? undefined : best;
}

interface Aim {
  /** The largest movement of a piece along and across, and of its far end when it turns. */
  readonly movement: number;
  /** The distance to keep between pieces, and from the sheet's edges. */
  readonly keep: number;
  readonly beyond: number;
  readonly movable: number;
  readonly isForLength: boolean;
}

/** For each piece its movement along and across the sheet and of its far end; at last, the gain in length. */
function smallMovements(
  program: LinearProgram,
  laid: readonly LaidPiece[],
  places: readonly Near[],
  { movement, keep, beyond, movable, isForLength }: Aim,
): Float64Array {
  const shorter = 3 * movable;
  program.clear();
  program.work = 0;
  program.lowest.fill(-movement);
  program.highest.fill(movement);
  for (let i = 0; i < movable; i++) {
    if (!isForLength) program.gains[3 * i] = -1 / movable;
    if (laid[i]!.piece.shape === 'rectangle') program.lowest[3 * i + 2] = program.highest[3 * i + 2] = 0;
  }
  if (isForLength) program.gains[shorter] = 1;
  else program.lowest[shorter] = program.highest[shorter] = 0;
  for (let i = 0; i < places.length; i++) {
    const near = places[i]!;
    // Limits that differ a little keep the method from going round in circles.
    program.addRow(near.distance - (near.one < 0 ? beyond : keep) + 1e-11 * (i % 7));
    if (near.other < movable) addMovement(program, laid, near, near.other, -1);
    if (near.one >= 0 && near.one < movable) addMovement(program, laid, near, near.one, 1);
    if (near.one === rightEnd) program.add(shorter, 1);
  }
  return program.solve();
}

function addMovement(
  program: LinearProgram,
  laid: readonly LaidPiece[],
  { x, y, apartX, apartY }: Near,
  i: number,
  way: number,
): void {
  const piece = laid[i]!;
  program.add(3 * i, way * apartX);
  program.add(3 * i + 1, way * apartY);
  const turned = apartY * (x - middleX(piece)) - apartX * (y - middleY(piece));
  program.add(3 * i + 2, (way * turned) / radiusOf(piece));
}

/** Pieces turn about the middle of their box. */
function middleX({ left, right }: LaidPiece): number {
  return (left + right) / 2;
}

function middleY({ bottom, top }: LaidPiece): number {
  return (bottom + top) / 2;
}

function radiusOf({ left, right, bottom, top }: LaidPiece): number {
  const [length, width] = [right - left, top - bottom];
  return Math.sqrt(length * length + width * width) / 2;
}

function movedPose(piece: LaidPiece, { x, y, turn }: Pose, movements: Float64Array, at: number): Pose {
  const by = movements[at + 2]! / radiusOf(piece);
  const [cos, sin] = [cosine(by), sine(by)];
  const fromX = x - middleX(piece);
  const fromY = y - middleY(piece);
  return {
    turn: turn + by,
    x: middleX(piece) + fromX * cos - fromY * sin + movements[at]!,
    y: middleY(piece) + fromX * sin + fromY * cos + movements[at + 1]!,
  };
}
