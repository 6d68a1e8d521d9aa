import type { Caution } from '../caution';

/**
 * What a check of a plan has to say: a sentence, perhaps with figures beside those of the scenario, or nothing. Marks are
 * named as the scenario names its figures.
 */
export type PossibleCaution = string | Caution | false | undefined;
