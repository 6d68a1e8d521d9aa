/** A figure with its published or practical range. */
export interface Range {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** A range in SI, from figures in a unit that is worth `scale`. */
export function range(low: number, typical: number, high: number, scale = 1): Range {
  return { low: low * scale, typical: typical * scale, high: high * scale };
}
