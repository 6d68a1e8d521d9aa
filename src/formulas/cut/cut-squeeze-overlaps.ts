// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the number of pieces, and a check would
// slow the search.
/**
 * Pieces on the rows of one sheet, how much each two of them overlap, and how much that weighs.
 */
import type { Job } from './cut-job';
import { poseAt } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import type { Pose } from './laid-piece';
import { type OnRows, sharedLength } from './overlap-area';
import type { TakenRows } from './taken-rows';

export interface Placed extends OnRows {
  readonly item: number;
}

export class Overlaps {
  readonly placed: Placed[];
  private readonly job: Job;
  private readonly budget: StepBudget;
  /** By the numbers of two pieces. */
  private readonly areas: Float64Array;
  private readonly weights: Float64Array;

  constructor(job: Job, placed: readonly Placed[], budget: StepBudget) {
    this.job = job;
    this.budget = budget;
    this.placed = [...placed];
    this.areas = new Float64Array(placed.length * placed.length);
    this.weights = new Float64Array(placed.length * placed.length).fill(1);
  }

  /** Moves pieces that are over the end of a shorter sheet into it, and measures all. */
  moveInto(length: number): void {
    for (const [i, one] of this.placed.entries()) {
      this.placed[i] = { ...one, x: Math.max(0, Math.min(one.x, length - one.rows.length)) };
    }
    for (const i of this.placed.keys()) this.measure(i);
  }

  place(i: number, where: Placed): void {
    this.placed[i] = where;
    this.measure(i);
  }

  /** Puts one piece somewhere by chance, whatever it overlaps there. */
  putAnywhere(random: () => number, length: number): void {
    const i = Math.floor(random() * this.placed.length);
    const one = this.placed[i]!;
    const x = random() * Math.max(0, length - one.rows.length);
    this.placed[i] = { ...one, x, row: Math.floor(random() * (this.job.rowCount - one.rows.count + 1)) };
  }

  /** The area that a piece shares with all others. */
  of(i: number): number {
    const count = this.placed.length;
    let sum = 0;
    for (let j = 0; j < count; j++) sum += this.areas[i * count + j]!;
    return sum;
  }

  /** The same, each area times its weight. */
  weighedOf(i: number): number {
    const count = this.placed.length;
    let sum = 0;
    for (let k = i * count; k < i * count + count; k++) sum += this.areas[k]! * this.weights[k]!;
    return sum;
  }

  overlapping(): number[] {
    return [...this.placed.keys()].filter((i) => this.of(i) > 0);
  }

  /** The area that all pairs share. */
  sum(): number {
    return this.areas.reduce((sum, area) => sum + area, 0) / 2;
  }

  /** Lets each overlap weigh more, the largest by one. */
  weigh(): void {
    const most = this.areas.reduce((one, other) => Math.max(one, other), 0);
    if (most > 0) for (let k = 0; k < this.areas.length; k++) this.weights[k]! += this.areas[k]! / most;
  }

  /** Takes what all pieces but one need. */
  takeOthers(i: number, taken: TakenRows): void {
    taken.clear();
    for (const [j, { rows, row, x }] of this.placed.entries()) {
      if (j === i) continue;
      taken.take(this.job.grown(rows, this.budget), row, x, this.weights[i * this.placed.length + j]!);
    }
  }

  poses(): readonly Pose[] {
    return this.placed.map(({ rows, row, x }) => poseAt(rows, x, row * this.job.rowHeight));
  }

  private measure(i: number): void {
    const count = this.placed.length;
    const one = this.placed[i]!;
    for (const [j, other] of this.placed.entries()) {
      if (j === i) continue;
      const area = this.job.rowHeight * sharedLength(one, other, this.job.grown(other.rows, this.budget));
      this.areas[i * count + j] = area;
      this.areas[j * count + i] = area;
      this.budget.spent += one.rows.count / 2 + 10;
    }
  }
}
