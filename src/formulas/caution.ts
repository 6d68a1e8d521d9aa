import type { Figure } from './refusal';

/** A sentence of warning whose `{marks}` are figures in SI, shown in the user's units. */
export interface Caution {
  readonly text: string;
  readonly figures?: Readonly<Record<string, Figure>>;
}
