import type { Figure } from './refusal';

/** A sentence of warning whose `{marks}` are figures in SI, worded in the user's units by whoever shows it. */
export interface Caution {
  readonly text: string;
  readonly figures?: Readonly<Record<string, Figure>>;
}
