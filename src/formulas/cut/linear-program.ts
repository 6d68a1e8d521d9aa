// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the counts of rows and columns, and a
// check would slow the search.
/**
 * The largest value of a linear form under linear limits, by the simplex method with bounded variables (Dantzig, 1963).
 */

/** A smaller coefficient stops nothing, as dividing by it would lose too many digits; a smaller gain is none. */
const least = 1e-6;
/** Smaller coefficients are rounding errors; left in place they would soon fill all rows. */
const dust = 1e-11;
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
  /** The gains of each column, with what rows that are over their limit gain by it. */
  private readonly prices: Float64Array;
  /** The coefficients of one row that are not zero, by column. */
  private readonly used: Int32Array;
  private readonly usedValues: Float64Array;
  /** Those of one column, by row. */
  private entryRows = new Int32Array(0);
  private entries = new Float64Array(0);

  constructor(columns: number) {
    this.columns = columns;
    this.lowest = new Float64Array(columns);
    this.highest = new Float64Array(columns);
    this.gains = new Float64Array(columns);
    this.ofColumn = new Int32Array(columns);
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
    this.entryRows = new Int32Array(this.mostRows);
    this.entries = new Float64Array(this.mostRows);
  }

  /** Adds to a coefficient of the last row. */
  add(column: number, coefficient: number): void {
    this.coefficients[(this.rows - 1) * this.columns + column]! += coefficient;
  }

  /** The values of the variables at the largest value of the form, until the next call. The rows are used up. */
  solve(): Float64Array {
    const { columns, rows, prices, values, low, high, ofRow, ofColumn } = this;
    prices.set(this.gains);
    values.fill(0, 0, columns);
    low.set(this.lowest);
    high.set(this.highest);
    for (let j = 0; j < columns; j++) ofColumn[j] = j;
    for (let i = 0; i < rows; i++) {
      ofRow[i] = columns + i;
      if (values[columns + i]! < -tiny) this.addToPrices(i, -loss);
    }
    for (let steps = 10 * (columns + rows); steps > 0; steps--) {
      const column = this.bestColumn();
      if (column < 0) break;
      this.work += rows + columns;
      const moved = ofColumn[column]!;
      const way = prices[column]! > 0 ? 1 : -1;
      const count = this.takeColumn(column);
      const { row, reach } = this.stop(moved, way, count);
      this.move(way * reach, count);
      values[moved]! += way * reach;
      if (row < 0) {
        values[moved] = way > 0 ? high[moved]! : low[moved]!;
        continue;
      }
      const stopped = ofRow[row]!;
      const isLow = Math.abs(values[stopped]! - low[stopped]!) < Math.abs(values[stopped]! - high[stopped]!);
      // Rounding may leave it a little over the limit that it comes back to.
      if (stopped >= columns && values[stopped]! < -tiny) this.addToPrices(row, loss);
      values[stopped] = isLow ? low[stopped]! : high[stopped]!;
      ofRow[row] = moved;
      ofColumn[column] = stopped;
      this.exchange(row, column, count);
    }
    return values;
  }

  /** Takes the coefficients of a column that are not zero, and counts them. */
  private takeColumn(column: number): number {
    const { columns, rows, coefficients, entries, entryRows } = this;
    let count = 0;
    for (let i = 0, at = column; i < rows; i++, at += columns) {
      const entry = coefficients[at]!;
      if (entry < dust && entry > -dust) {
        coefficients[at] = 0;
        continue;
      }
      entries[count] = entry;
      entryRows[count++] = i;
    }
    return count;
  }

  /** The row that first stops a variable on its way, and how far it may go; −1 if its own bound stops it. */
  private stop(moved: number, way: number, count: number): { readonly row: number; readonly reach: number } {
    const { values, low, high, ofRow, entries, entryRows } = this;
    let reach = way > 0 ? high[moved]! - values[moved]! : values[moved]! - low[moved]!;
    let row = -1;
    let size = 0;
    for (let k = 0; k < count; k++) {
      const rate = entries[k]! * way;
      if (rate < least && rate > -least) continue;
      const name = ofRow[entryRows[k]!]!;
      const value = values[name]!;
      // A row over its limit stops nothing on the way further over, and is stopped at the limit on the way back.
      const isOver = value < low[name]! - tiny;
      if (isOver && rate > 0) continue;
      const bound = isOver || rate > 0 ? low[name]! : high[name]!;
      const room = Math.max(0, (value - bound) / rate);
      // Of rows that stop it at once the one with the largest coefficient loses the fewest digits.
      if (room > reach + tiny || (room > reach - tiny && Math.abs(rate) <= size)) continue;
      reach = Math.min(room, reach);
      row = entryRows[k]!;
      size = Math.abs(rate);
    }
    return { row, reach };
  }

  /** Moves the rows along with the variable of the column taken; prices follow rows that go over their limit or come back. */
  private move(by: number, count: number): void {
    const { columns, values, ofRow, entries, entryRows } = this;
    for (let k = 0; k < count; k++) {
      const name = ofRow[entryRows[k]!]!;
      const wasOver = values[name]! < -tiny;
      values[name]! -= entries[k]! * by;
      const isOver = values[name]! < -tiny;
      if (name >= columns && isOver !== wasOver) this.addToPrices(entryRows[k]!, isOver ? -loss : loss);
    }
  }

  private addToPrices(row: number, times: number): void {
    const { columns, coefficients, prices } = this;
    for (let j = 0, at = row * columns; j < columns; j++, at++) prices[j]! += times * coefficients[at]!;
  }

  /** The column whose variable adds most to the form and may still move that way; −1 if there is none. */
  private bestColumn(): number {
    const { columns, prices, ofColumn, values, low, high } = this;
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

  /** Rewrites all rows and the prices for a row and the column taken, which change places. */
  private exchange(row: number, column: number, entryCount: number): void {
    const { columns, coefficients, prices, used, usedValues, entries, entryRows } = this;
    const start = row * columns;
    const pivot = coefficients[start + column]!;
    let count = 0;
    for (let j = 0; j < columns; j++) {
      const coefficient = coefficients[start + j]!;
      if (j === column) continue;
      if (coefficient < dust && coefficient > -dust) {
        coefficients[start + j] = 0;
        continue;
      }
      const value = coefficient / pivot;
      coefficients[start + j] = value;
      usedValues[count] = value;
      used[count++] = j;
    }
    coefficients[start + column] = 1 / pivot;
    for (let e = 0; e < entryCount; e++) {
      const at = entryRows[e]! * columns;
      if (at === start) continue;
      const times = entries[e]!;
      for (let k = 0; k < count; k++) coefficients[at + used[k]!]! -= times * usedValues[k]!;
      coefficients[at + column] = -times / pivot;
    }
    this.work += entryCount * count;
    const times = prices[column]!;
    for (let k = 0; k < count; k++) prices[used[k]!]! -= times * usedValues[k]!;
    prices[column] = -times / pivot;
  }
}
