import { describe, expect, it } from 'vitest';
import { leastSquares, type Point, squares } from '../../../src/formulas/numeric/least-squares';

/** Misra1a of the Statistical Reference Datasets of NIST: pressure x, volume y, model b1 (1 - exp(-b2 x)). */
const misra: readonly (readonly [y: number, x: number])[] = [
  [10.07, 77.6],
  [14.73, 114.9],
  [17.94, 141.1],
  [23.93, 190.8],
  [29.61, 239.9],
  [35.18, 289],
  [40.02, 332.8],
  [44.82, 378.4],
  [50.76, 434.8],
  [55.05, 477.3],
  [61.01, 536.8],
  [66.4, 593.1],
  [75.47, 689.1],
  [81.78, 760],
];
const misraLeft = ([a, b]: Point): readonly number[] =>
  misra.map(([y, x]) => y - Math.exp(a) * (1 - Math.exp(-Math.exp(b) * x)));

function counted(residuals: (at: Point) => readonly number[]) {
  const count = { calls: 0, residuals: (at: Point) => residuals(at) };
  count.residuals = (at) => {
    count.calls += 1;
    return residuals(at);
  };
  return count;
}

describe('least squares in two unknowns', () => {
  it.each([
    [500, 1e-4],
    [250, 5e-4],
  ])('fit the data of NIST as certified, from the published start %d, %d', (b1, b2) => {
    const [a, b] = leastSquares(misraLeft, [Math.log(b1), Math.log(b2)]);
    // Certified: 238.94212918 and 0.00055015643181, with a sum of squares of 0.12455138894.
    expect(Math.exp(a) / 238.94212918 - 1).toBeCloseTo(0, 8);
    expect(Math.exp(b) / 5.5015643181e-4 - 1).toBeCloseTo(0, 8);
    expect(squares(misraLeft([a, b]))).toBeCloseTo(0.12455138894, 9);
  });

  it('follow the bent valley of Rosenbrock to 1, 1', () => {
    const valley = counted(([x, y]) => [10 * (y - x * x), 1 - x]);
    const [x, y] = leastSquares(valley.residuals, [-1.2, 1]);
    expect(x).toBeCloseTo(1, 9);
    expect(y).toBeCloseTo(1, 9);
    // Five calls a round; these steps need some tens of rounds, steepest descent thousands.
    expect(valley.calls).toBeLessThan(5 * 70);
  });

  it('of lines meet the closed form in a few rounds', () => {
    // Sums of squares of x + y - 3, x - y - 1, x - 5 are least at x = 3, y = 1.
    const lines = counted(([x, y]) => [x + y - 3, x - y - 1, x - 5]);
    const [x, y] = leastSquares(lines.residuals, [100, -50]);
    expect(x).toBeCloseTo(3, 9);
    expect(y).toBeCloseTo(1, 9);
    expect(lines.calls).toBeLessThan(5 * 25);
  });

  it('come back where a full step leads far away', () => {
    // From 2 the undamped step of atan goes to -3.5, and from there ever farther.
    const [x, y] = leastSquares(([a, b]) => [Math.atan(a), Math.atan(b - 5)], [2, 2]);
    expect(x).toBeCloseTo(0, 9);
    expect(y).toBeCloseTo(5, 9);
  });

  it('leave an unknown that changes nothing where it was', () => {
    const [x, y] = leastSquares(([a]) => [a - 2, 2 * a - 4], [7, 0.5]);
    expect(x).toBeCloseTo(2, 9);
    expect(y).toBe(0.5);
  });

  it('stay at the start where nothing can be better', () => {
    const asked: number[] = [];
    const flat = (at: Point) => {
      asked.push(...at);
      return [1, 2];
    };
    expect(leastSquares(flat, [3, 4])).toEqual([3, 4]);
    expect(asked.filter((figure) => !Number.isFinite(figure))).toEqual([]);
    expect(squares([1, -2, 3])).toBe(14);
  });
});
