/**
 * How a formula says that its numbers cannot work together.
 *
 * Formulas know only SI figures, so a refusal carries them in SI, and the caller writes them in the user's units.
 * `advice` completes the sentence "<argument>: <given> is not allowed; <advice>" and may hold
 * `{name}` marks; each mark is replaced by the figure of that name.
 */

/** A figure in SI, written in the kind of the argument that it is `like` (by default the one with the mark's name). */
export type Figure =
  | number
  | {
      readonly value: number;
      readonly like: string;
      /** Significant digits, if the figure is only approximate. */
      readonly digits?: number;
    };

export interface RefusalDetail {
  readonly figures?: Readonly<Record<string, Figure>>;
  /** `unavailable` if no published value covers the input: the cell shows #N/A instead of #VALUE!. */
  readonly reason?: 'not allowed' | 'unavailable';
}

export class Refusal extends Error {
  /** The catalogue name of the argument at fault; the whole call if it is empty. */
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
