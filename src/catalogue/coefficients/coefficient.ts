import type { Kind } from '../../units/kinds';

/** A figure that the add-in takes where none is given, with where it comes from. */
export interface Coefficient {
  /** The scenario input's name, where there is one. */
  readonly key: string;
  /** The family of functions that it serves, such as LOAD. */
  readonly topic: string;
  readonly kind: Kind;
  /** All in SI. The range is given where authorities or practice spread by more than a fifth. */
  readonly low?: number;
  readonly typical: number;
  readonly high?: number;
  readonly source: string;
  /** Whether the figure was read in the source, worked out, quoted from memory, or is what people do. */
  readonly known: 'read' | 'computed' | 'memory' | 'common practice';
  /** What it is, over what it is taken, and where authorities differ. */
  readonly meaning: string;
}

/** Whether published or practiced values spread by more than a fifth, so that help shows the range and not one figure. */
export function differs(one: Coefficient): boolean {
  return one.low !== undefined && one.high !== undefined && one.high > 1.2 * one.low;
}

/** What people do, where no published figure was found. */
export const practice = { source: 'common practice, no source', known: 'common practice' } as const;

/** A figure whose family is said once, of the whole list. */
export type TopicFigure = Omit<Coefficient, 'topic'>;

/** Figures that serve one family of functions. */
export function ofTopic(topic: string, figures: readonly TopicFigure[]): readonly Coefficient[] {
  return figures.map((one) => ({ ...one, topic }));
}
