/**
 * How a formula says that its numbers cannot work together.
 *
 * Formulas know only SI figures, so a refusal carries the figures raw and leaves wording them in the user's units to
 * whoever called. `advice` completes the sentence "<argument>: <given> is not allowed; <advice>" and may hold
 * `{name}` marks; each mark is replaced by the figure of that name.
 */

/** A figure in SI, worded in the kind of the argument it is `like` (by default the argument of the mark's own name). */
export type Figure = number | { readonly value: number; readonly like: string };

export interface RefusalDetail {
  readonly figures?: Readonly<Record<string, Figure>>;
  /** `unavailable` where no published value covers the input: the cell shows #N/A instead of #VALUE!. */
  readonly reason?: 'not allowed' | 'unavailable';
}

export class Refusal extends Error {
  /** The catalogue name of the argument at fault; the whole call where it is empty. */
  readonly argument: string;
  readonly advice: string;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly reason: 'not allowed' | 'unavailable';

  constructor(argument: string, advice: string, detail: RefusalDetail = {}) {
    super(`${argument}: ${advice}`);
    this.name = 'Refusal';
    this.argument = argument;
    this.advice = advice;
    this.figures = detail.figures ?? {};
    this.reason = detail.reason ?? 'not allowed';
  }
}
