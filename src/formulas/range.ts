/** A figure with the spread that authorities or practice give it. */
export interface Range {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}
