export interface StepCall {
  readonly say: string;
  readonly formula: string;
  /** `date` shows the answer as a date. */
  readonly unit?: string;
  /** Which column of the first row is meant. */
  readonly column?: number;
  /** Shows everything that it spills; the formula then asks for headings. */
  readonly table?: boolean;
}

/** A step of the job, as a page of the guide. */
export interface Step {
  readonly slug: string;
  readonly title: string;
  /** Sentences may hold calls in braces: see `withResults`. */
  readonly what: string;
  readonly why: readonly string[];
  /** The function whose example drawing shows it. */
  readonly picture?: string;
  /** Which ready-made sheets do this step. */
  readonly sheet: string;
  readonly calls: readonly StepCall[];
  /** Markup of its own, such as a worksheet. */
  readonly more?: () => string;
  readonly wrong: readonly string[];
  readonly cautions: readonly string[];
}
