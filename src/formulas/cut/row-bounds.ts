/**
 * The least x that a turned piece could have on each row of a sheet, 0 before the first search. The least of all rows
 * is needed far more often than one changes, so a tree holds the lesser of every two.
 */
export class RowBounds {
  readonly count: number;
  /** The root is at 1, and the two places below n are at 2n and 2n + 1; the rows are the last `leaves`. */
  private readonly tree: Float64Array;

  constructor(count: number) {
    let leaves = 1;
    while (leaves < count) leaves *= 2;
    this.count = count;
    this.tree = new Float64Array(2 * leaves);
    // Places that only fill the tree are never the least.
    for (let [low, high] = [leaves + count, 2 * leaves]; low < high; [low, high] = [(low + 1) >> 1, high >> 1]) {
      this.tree.fill(Infinity, low, high);
    }
  }

  get least(): number {
    return this.tree[1] as number;
  }

  /** The first of the rows that have the least bound. */
  get leastRow(): number {
    const { tree } = this;
    const leaves = tree.length >> 1;
    let place = 1;
    while (place < leaves) {
      place *= 2;
      if ((tree[place + 1] as number) < (tree[place] as number)) place += 1;
    }
    return place - leaves;
  }

  set(row: number, x: number): void {
    const { tree } = this;
    let place = (tree.length >> 1) + row;
    tree[place] = x;
    for (place >>= 1; place > 0; place >>= 1) {
      const one = tree[2 * place] as number;
      const other = tree[2 * place + 1] as number;
      tree[place] = Math.min(one, other);
    }
  }
}
