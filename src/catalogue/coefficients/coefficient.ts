import type { Kind } from '../../units/kinds';

/** A figure that the add-in uses if none is given, with its source. */
export interface Coefficient {
  /** The name of the scenario input, if there is one. */
  readonly key: string;
  /** The family of functions that uses it, such as LOAD. */
  readonly topic: string;
  readonly kind: Kind;
  /** All in SI. The range is given if sources or practice differ by more than a fifth. */
  readonly low?: number;
  readonly typical: number;
  readonly high?: number;
  readonly source: string;
  /** Whether the figure was read in the source, computed, quoted from memory, or is common practice. */
  readonly known: 'read' | 'computed' | 'memory' | 'common practice';
  /** What it is, per what, and how far sources differ. */
  readonly meaning: string;
}

/** Whether published values differ by more than a fifth, so that help shows the range and not one figure. */
export function differs(one: Coefficient): boolean {
  return one.low !== undefined && one.high !== undefined && one.high > 1.2 * one.low;
}

/** Common practice, because no published figure was found. */
export const practice = { source: 'common practice, no source', known: 'common practice' } as const;

/** A figure in a list that names the family once for all. */
export type TopicFigure = Omit<Coefficient, 'topic'>;

/** Figures that one family of functions uses. */
export function ofTopic(topic: string, figures: readonly TopicFigure[]): readonly Coefficient[] {
  return figures.map((one) => ({ ...one, topic }));
}
