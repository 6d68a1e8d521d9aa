/**
 * A straight line through points, by least squares.
 */

export interface Line {
  readonly slope: number;
  readonly intercept: number;
  /** Sum of squares of what the line leaves over. */
  readonly residual: number;
  /** Sum of squares of x about its mean; 0 where all x are one. */
  readonly spread: number;
}

/** The line of least squares of y on x; its slope is not a number where all x are one. Source: ordinary least squares. */
export function fitLine(x: readonly number[], y: readonly number[]): Line {
  const meanX = mean(x);
  const meanY = mean(y);
  let xx = 0;
  let xy = 0;
  x.forEach((value, i) => {
    xx += (value - meanX) ** 2;
    xy += (value - meanX) * ((y[i] ?? Number.NaN) - meanY);
  });
  const slope = xy / xx;
  const intercept = meanY - slope * meanX;
  const residual = x.reduce((sum, value, i) => sum + ((y[i] ?? Number.NaN) - intercept - slope * value) ** 2, 0);
  return { slope, intercept, residual, spread: xx };
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
