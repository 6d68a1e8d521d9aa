/**
 * The last part of the search: many of the layouts that it met are compacted, and the shortest one is changed further.
 * Layouts that are about as long on rows differ by some per cent once all their pieces move together.
 */
import { type CompactionLimits, compacted, type PosedPiece } from './compaction';
import { compactedInWindows } from './compaction-windows';
import { changed } from './cut-changes';
import type { Job } from './cut-job';
import { isShorter, type Layout, layoutOf, lengthOf, momentOf, type Spot } from './cut-layout';
import { laidNear } from './cut-near';
import { poseAt } from './cut-rows';
import type { Sheet, StepBudget } from './cut-sheet';
import type { Pose } from './laid-piece';

/** Layouts that are at most so many times as long as the shortest are worth compacting; a change may be twice as much. */
const longest = 1.06;
/** The share of the steps for the layouts that were met; the others are for changes of the best one. */
const shareOfMet = 0.5;
const rounds = 12;
/** The share of the length by which a change may be worse at first. */
const worseAtFirst = 0.003;
/** More pieces than this are compacted a few at a time. */
const fewPieces = 40;

export interface CloserLimits {
  readonly budget: StepBudget;
  readonly mostSteps: number;
  /** A layout no longer than this ends the search. */
  readonly enough: number;
  readonly random: () => number;
}

/** A layout, and the poses of the pieces on its last sheet once they are compacted. */
interface Closer {
  readonly layout: Layout;
  readonly poses: readonly Pose[];
  /** With the sheets before the last. */
  readonly length: number;
}

/**
 * The shortest layout found from one, which is sound, and from those that a search met, which may lie on rough rows.
 * Only the pieces of the last sheet are moved.
 */
export function movedCloser(sound: Layout, met: readonly Layout[], jobs: MetJobs, limits: CloserLimits): Layout {
  const { budget, mostSteps, random, enough } = limits;
  let best: Closer = {
    ...{ layout: sound, poses: [], length: lengthOf(sound, jobs.sound) },
    ...closerOf(sound, jobs.sound, limits),
  };
  const inTurn = [...met].sort((one, other) => lengthOf(one, jobs.met) - lengthOf(other, jobs.met));
  const [least = Infinity] = inTurn.map((layout) => lengthOf(layout, jobs.met));
  const near = inTurn.filter((layout) => lengthOf(layout, jobs.met) <= longest * least);
  const begun = budget.spent;
  const until = begun + shareOfMet * (mostSteps - begun);
  let current: Closer | undefined;
  for (let i = 0; i < near.length && budget.spent < until && best.length > enough; i++) {
    const layout = near[i === 0 ? 0 : Math.floor(random() * near.length)] as Layout;
    const next = closerOf(layout, jobs.met, limits, best.length);
    if (next === undefined || next.length >= (current?.length ?? Infinity)) continue;
    current = next;
    if (next.length < best.length) best = next;
  }
  const sheets: Sheet[] = [];
  while (current !== undefined && budget.spent < mostSteps && best.length > enough) {
    const left = (mostSteps - budget.spent) / (mostSteps - begun);
    const worse = worseAtFirst * left * (best.length - (sound.sheets - 1) * jobs.sound.length);
    budget.spent += jobs.met.rowCount;
    const most = Math.max(least, Math.min(lengthOf(current.layout, jobs.met), longest * least)) * longest;
    const targets = changed(current.layout.spots, jobs.met, random);
    const laid = laidNear(jobs.met, targets, { length: most, budget, mostSteps }, sheets);
    const next = laid && closerOf(laid, jobs.met, limits, current.length + worse);
    if (next === undefined || next.length > current.length + worse) continue;
    current = next;
    if (next.length < best.length) best = next;
  }
  const layout = layoutAt(jobs.sound, best);
  return layout !== undefined && isShorter(layout, sound, jobs.sound) ? layout : sound;
}

/** The job of the sound layout, and that of the layouts that were met. */
export interface MetJobs {
  readonly sound: Job;
  readonly met: Job;
}

/** The layout compacted, unless it overlaps or will hardly become as short as asked. */
function closerOf(layout: Layout, job: Job, limits: CloserLimits, enough = Infinity): Closer | undefined {
  const whole = (layout.sheets - 1) * job.length;
  const pieces = posedOf(layout, job);
  const { width, sheet } = job;
  const how: CompactionLimits = { width, gap: sheet.gap, rounds, budget: limits.budget, enough: enough - whole };
  const found = pieces.length > fewPieces ? compactedInWindows(pieces, how, limits.mostSteps) : compacted(pieces, how);
  return found && { layout, poses: found.poses, length: whole + found.length };
}

/** The pieces of the last sheet where they lie. */
export function posedOf({ spots, sheets }: Layout, job: Job): readonly PosedPiece[] {
  const onLast = spots.filter(({ sheet }) => sheet === sheets - 1);
  return onLast.map(({ item, rows, x, y }) => {
    const { piece, outline } = job.shapeOf(item);
    return { piece, outline, pose: poseAt(rows, x, y) };
  });
}

/** The layout with the poses of its last sheet, as one of a job on other rows; undefined if it has no rows for a turn. */
export function layoutAt(job: Job, { layout, poses }: Pick<Closer, 'layout' | 'poses'>): Layout | undefined {
  let taken = 0;
  const spots: Spot[] = [];
  for (const spot of layout.spots) {
    const pose = spot.sheet === layout.sheets - 1 ? poses[taken++] : undefined;
    if (pose === undefined) {
      spots.push(spot);
      continue;
    }
    const rows = job.shapeOf(spot.item).at(pose.turn);
    if (rows === undefined) return undefined;
    spots.push({ ...spot, rows, x: pose.x - rows.originX, y: pose.y - rows.originY });
  }
  return layoutOf(spots, momentOf(spots, job));
}
