/**
 * Ways in which a person might start: the turns that each piece may have, and its point that is kept left.
 */
import type { Job, Shape } from './cut-job';
import { lay, lengthOf, type Recipe, type Rule } from './cut-layout';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';

export interface Start {
  readonly turns: (shape: Shape) => readonly Rows[];
  readonly rule: Rule;
}

const rules: readonly Rule[] = ['weight', 'right', 'middle', 'left'];

/** Directions of head-to-tail pairs, in a half turn. */
const pairDirections = 24;

/** Pieces head to tail in rows of every direction. */
const pairs = rules.flatMap((rule) =>
  Array.from({ length: pairDirections }, (_, i): Start => {
    const turn = (i * Math.PI) / pairDirections;
    return { turns: (shape) => shape.pair(turn), rule };
  }),
);

const straight = families(['center', 'edge', 'usual']);
const anyTurn = families(['every']);

/** For the length of all pieces: the few turns of straight pieces first. */
export const starts: readonly Start[] = [...straight, ...pairs, ...anyTurn];

/** For a sheet that is filled with some of the pieces: the freest first. */
export const startsOfSheets: readonly Start[] = [...anyTurn, ...straight, ...pairs];

function families(names: readonly (keyof Shape['families'])[]): readonly Start[] {
  return rules.flatMap((rule) =>
    names.map((name): Start => ({ turns: ({ families: { [name]: rows } }) => rows, rule })),
  );
}

/** A start by chance: pieces of each shape head to tail in rows of two directions. */
export function randomStart(random: () => number): Start {
  const oneOf = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)] as T;
  return {
    turns: ({ families: { every }, pair }) => [...pair(oneOf(every).turn), ...pair(oneOf(every).turn)],
    rule: oneOf(rules),
  };
}

/** The recipe of a start for the pieces in an order. */
export function recipeFor(job: Job, order: readonly number[], { turns, rule }: Start): Recipe {
  const rows = new Map(job.shapes.map((shape) => [shape, turns(shape)]));
  return { order, choices: job.pieces.map((_, item) => rows.get(job.shapeOf(item)) ?? []), rule };
}

/** A regular sample of an order, with about as many pieces as asked. */
export function sampleOf(order: readonly number[], size: number): readonly number[] {
  const step = Math.ceil(order.length / size);
  return order.filter((_, i) => i % step === 0);
}

/** The starts, sorted by how far left they lay a sample of the pieces, the best first; as many as the steps allow. */
export function rankedStarts(
  job: Job,
  sample: readonly number[],
  budget: StepBudget,
  mostSteps: number,
): readonly Start[] {
  const ranked: { readonly start: Start; readonly moment: number }[] = [];
  let least = Infinity;
  for (const start of starts) {
    if (ranked.length > 0 && budget.spent > mostSteps) break;
    // A start that ends much farther right than another is not the better one.
    const limits = { length: least * 1.3, budget, mostSteps: Infinity };
    const layout = lay(job, recipeFor(job, sample, start), limits);
    if (layout === undefined) continue;
    least = Math.min(least, lengthOf(layout, job));
    ranked.push({ start, moment: layout.moment });
  }
  return ranked.sort((one, other) => one.moment - other.moment).map(({ start }) => start);
}
