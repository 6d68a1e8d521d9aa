/**
 * The least x that a turned piece could take on each row of a sheet, 0 until it was looked for. The least of all rows and
 * where it is are asked for far more often than one changes, so they are kept as a tree of the lesser of every two.
 */
export class RowBounds {
  readonly count: number;
  /** The root is at 1, the two below a place at twice that and the next one; the rows are the last `leaves`. */
  private readonly tree: Float64Array;

  private constructor(count: number, tree: Float64Array) {
    this.count = count;
    this.tree = tree;
  }

  static ofRows(count: number): RowBounds {
    const leaves = 2 ** Math.ceil(Math.log2(Math.max(1, count)));
    const tree = new Float64Array(2 * leaves);
    // What is there to fill the tree up is never the least.
    for (let [low, high] = [leaves + count, 2 * leaves]; low < high; [low, high] = [(low + 1) >> 1, high >> 1]) {
      tree.fill(Infinity, low, high);
    }
    return new RowBounds(count, tree);
  }

  copy(): RowBounds {
    return new RowBounds(this.count, this.tree.slice());
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
