// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the counts of rows and columns, and a
// check would slow the search.
/**
 * The largest value of a linear form under linear limits, by the simplex method with bounded variables (Dantzig, 1963).
 */

/** Smaller coefficients and gains are rounding errors. */
const least = 1e-9;
/** A row may be over its limit by so little. */
const tiny = 1e-12;
/** What the form loses for each unit by which a row is over its limit, so that few rows stay over it. */
const loss = 100;

/**
 * Limits on so many variables: of each row, the sum of coefficients times variables is at most the row's limit, which may
 * be missed where there is no other way. It is filled and solved many times, and keeps its memory.
 */
export class LinearProgram {
  readonly columns: number;
  rows = 0;
  /** Multiplications spent in solving. */
  work = 0;
  /** The bounds of each variable, around 0. */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  /** What one of each variable adds to the form. */
  readonly gains: Float64Array;
  private mostRows = 0;
  private coefficients = new Float64Array(0);
  /** By the name of a variable: those of the columns first, then how far each row is below its limit. */
  private values = new Float64Array(0);
  private low = new Float64Array(0);
  private high = new Float64Array(0);
  /** The name of the variable that each row gives by those of the columns, and of each column's. */
  private ofRow = new Int32Array(0);
  private readonly ofColumn: Int32Array;
  private readonly form: Float64Array;
  private readonly prices: Float64Array;
  private readonly used: Int32Array;
  private readonly usedValues: Float64Array;

  constructor(columns: number) {
    this.columns = columns;
    this.lowest = new Float64Array(columns);
    this.highest = new Float64Array(columns);
    this.gains = new Float64Array(columns);
    this.ofColumn = new Int32Array(columns);
    this.form = new Float64Array(columns);
    this.prices = new Float64Array(columns);
    this.used = new Int32Array(columns);
    this.usedValues = new Float64Array(columns);
    this.grow();
  }

  clear(): void {
    this.coefficients.fill(0, 0, this.rows * this.columns);
    this.rows = 0;
  }

  /** A row of zeros with a limit. */
  addRow(limit: number): void {
    if (this.rows === this.mostRows) this.grow();
    this.values[this.columns + this.rows] = limit;
    this.rows++;
  }

  private grow(): void {
    const { columns, coefficients, values } = this;
    this.mostRows = 2 * this.mostRows + 16;
    this.coefficients = new Float64Array(this.mostRows * columns);
    this.coefficients.set(coefficients);
    this.values = new Float64Array(this.mostRows + columns);
    this.values.set(values);
    this.low = new Float64Array(this.mostRows + columns);
    this.high = new Float64Array(this.mostRows + columns).fill(Infinity);
    this.ofRow = new Int32Array(this.mostRows);
  }

  /** Adds to a coefficient of the last row. */
  add(column: number, coefficient: number): void {
    this.coefficients[(this.rows - 1) * this.columns + column]! += coefficient;
  }

  /** The values of the variables at the largest value of the form, until the next call. The rows are used up. */
  solve(): Float64Array {
    const { columns, rows, coefficients, form, values, low, high, ofRow, ofColumn } = this;
    form.set(this.gains);
    values.fill(0, 0, columns);
    low.set(this.lowest);
    high.set(this.highest);
    for (let i = 0; i < rows; i++) ofRow[i] = columns + i;
    for (let j = 0; j < columns; j++) ofColumn[j] = j;
    for (let steps = 10 * (columns + rows); steps > 0; steps--) {
      const prices = this.pricesNow();
      const column = this.bestColumn(prices);
      if (column < 0) break;
      this.work += rows + columns;
      const moved = ofColumn[column]!;
      const way = prices[column]! > 0 ? 1 : -1;
      let reach = way > 0 ? high[moved]! - values[moved]! : values[moved]! - low[moved]!;
      let row = -1;
      let size = 0;
      for (let i = 0, at = column; i < rows; i++, at += columns) {
        const rate = coefficients[at]! * way;
        if (rate < least && rate > -least) continue;
        const name = ofRow[i]!;
        const value = values[name]!;
        // A row over its limit stops nothing on the way further over, and is stopped at the limit on the way back.
        const isOver = value < low[name]! - tiny;
        if (isOver && rate > 0) continue;
        const bound = isOver || rate > 0 ? low[name]! : high[name]!;
        const room = Math.max(0, (value - bound) / rate);
        // Of rows that stop it at once the one with the largest coefficient loses the fewest digits.
        if (room > reach + tiny || (room > reach - tiny && Math.abs(rate) <= size)) continue;
        reach = Math.min(room, reach);
        row = i;
        size = Math.abs(rate);
      }
      for (let i = 0, at = column; i < rows; i++, at += columns) {
        if (coefficients[at] !== 0) values[ofRow[i]!]! -= coefficients[at]! * way * reach;
      }
      values[moved]! += way * reach;
      if (row < 0) {
        values[moved] = way > 0 ? high[moved]! : low[moved]!;
        continue;
      }
      const stopped = ofRow[row]!;
      const isLow = Math.abs(values[stopped]! - low[stopped]!) < Math.abs(values[stopped]! - high[stopped]!);
      values[stopped] = isLow ? low[stopped]! : high[stopped]!;
      ofRow[row] = moved;
      ofColumn[column] = stopped;
      this.exchange(row, column);
    }
    return values;
  }

  /** The gains of each column, with what rows that are over their limit gain by it. */
  private pricesNow(): Float64Array {
    const { columns, rows, coefficients, form, prices, ofRow, values } = this;
    let now = form;
    for (let i = 0; i < rows; i++) {
      if (ofRow[i]! < columns || values[ofRow[i]!]! >= -tiny) continue;
      if (now === form) {
        prices.set(form);
        now = prices;
      }
      const start = i * columns;
      for (let j = 0; j < columns; j++) prices[j]! -= loss * coefficients[start + j]!;
    }
    return now;
  }

  /** The column whose variable adds most to the form and may still move that way; −1 if there is none. */
  private bestColumn(prices: Float64Array): number {
    const { columns, ofColumn, values, low, high } = this;
    let column = -1;
    let most = least;
    for (let j = 0; j < columns; j++) {
      const price = prices[j]!;
      if (price <= most && price >= -most) continue;
      const name = ofColumn[j]!;
      if (price > 0 ? values[name]! >= high[name]! : values[name]! <= low[name]!) continue;
      most = Math.abs(price);
      column = j;
    }
    return column;
  }

  /** Rewrites all rows and the form for a row and a column that change places. */
  private exchange(row: number, column: number): void {
    const { columns, rows, coefficients, form, used, usedValues } = this;
    const start = row * columns;
    const pivot = coefficients[start + column]!;
    let count = 0;
    for (let j = 0; j < columns; j++) {
      if (coefficients[start + j] === 0 || j === column) continue;
      const value = coefficients[start + j]! / pivot;
      coefficients[start + j] = value;
      usedValues[count] = value;
      used[count++] = j;
    }
    coefficients[start + column] = 1 / pivot;
    for (let i = 0, at = 0; i < rows; i++, at += columns) {
      const times = coefficients[at + column]!;
      if (times === 0 || i === row) continue;
      for (let k = 0; k < count; k++) coefficients[at + used[k]!]! -= times * usedValues[k]!;
      coefficients[at + column] = -times / pivot;
      this.work += count;
    }
    const times = form[column]!;
    for (let k = 0; k < count; k++) form[used[k]!]! -= times * usedValues[k]!;
    form[column] = -times / pivot;
  }
}
