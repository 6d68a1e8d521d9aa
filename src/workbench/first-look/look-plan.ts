/**
 * How the first look computes its cells: what the build has made of their formulas, for the function script alone, so that
 * their numbers need not wait for the spreadsheet.
 */

export type LookValue = string | number | boolean | null;

/** An error as a function throws it or puts it into a cell. */
export interface LookError {
  readonly code: string;
}

/** A formula or a part of one. */
export type LookNode =
  | readonly ['value', LookValue]
  | readonly ['name', string]
  /** Row and column of the upper left cell, count of rows and of columns. */
  | readonly ['cells', number, number, number, number]
  | readonly ['call', string, ...LookNode[]]
  | readonly ['=' | '<>' | '&' | 'both', LookNode, LookNode]
  | readonly ['isError', LookNode]
  | readonly ['if', LookNode, LookNode, LookNode];

export interface LookFormula {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  readonly is: LookNode;
  /** Decimals that its numbers are shown with. */
  readonly decimals?: number;
}

export interface LookPlan {
  /** Values of named cells. */
  readonly names: Readonly<Record<string, LookValue>>;
  /** Row, column and value of the cells that were typed. */
  readonly typed: readonly (readonly [row: number, column: number, value: LookValue])[];
  /** Each after those that it depends on. */
  readonly formulas: readonly LookFormula[];
}

export type CallFunction = (name: string, given: readonly unknown[]) => unknown;

export interface LookCell {
  readonly row: number;
  readonly column: number;
  readonly value: unknown;
  readonly decimals: number | undefined;
}

type Block = readonly (readonly unknown[])[];

const key = (row: number, column: number): string => `${row},${column}`;

/** Computes all cells of a plan; each function is called as the spreadsheet calls it. */
export function computeLook({ names, typed, formulas }: LookPlan, call: CallFunction): readonly LookCell[] {
  const cells = new Map<string, unknown>(typed.map(([row, column, value]) => [key(row, column), value]));
  const computed: LookCell[] = [];
  for (const { row, column, rows, columns, is, decimals } of formulas) {
    const result = blockOf(is, { names, cells, call });
    for (let down = 0; down < rows; down++) {
      for (let across = 0; across < columns; across++) {
        const value = at(result, down, across);
        cells.set(key(row + down, column + across), value);
        computed.push({ row: row + down, column: column + across, value, decimals });
      }
    }
  }
  return computed;
}

interface Known {
  readonly names: LookPlan['names'];
  readonly cells: ReadonlyMap<string, unknown>;
  readonly call: CallFunction;
}

function blockOf(node: LookNode, known: Known): Block {
  switch (node[0]) {
    case 'value':
      return [[node[1]]];
    case 'name':
      return [[known.names[node[1]] ?? null]];
    case 'cells': {
      const [, row, column, rows, columns] = node;
      return blockBy(rows, columns, (down, across) => known.cells.get(key(row + down, column + across)) ?? null);
    }
    case 'call': {
      const [, name, ...given] = node;
      const result = known.call(
        name,
        given.map((one) => single(blockOf(one, known))),
      );
      return Array.isArray(result) ? (result as Block) : [[result]];
    }
    case 'if':
      return cellByCell(node.slice(1) as LookNode[], known, ([condition, yes, no]) => (condition === true ? yes : no));
    case '=':
      return cellByCell([node[1], node[2]], known, ([one, other]) => isSame(one, other));
    case '<>':
      return cellByCell([node[1], node[2]], known, ([one, other]) => !isSame(one, other));
    case 'both':
      return cellByCell([node[1], node[2]], known, ([one, other]) => one === true && other === true);
    case 'isError':
      return blockOf(node[1], known).map((line) => line.map(isError));
    case '&':
      return cellByCell([node[1], node[2]], known, ([one, other]) => `${textOf(one)}${textOf(other)}`);
  }
}

/** Combines parts as spreadsheet arrays do. An error that decides is the result. */
function cellByCell(nodes: readonly LookNode[], known: Known, combine: (values: readonly unknown[]) => unknown): Block {
  const blocks = nodes.map((node) => blockOf(node, known));
  const rows = Math.max(...blocks.map((block) => block.length));
  const columns = Math.max(...blocks.map(([first]) => first?.length ?? 0));
  // Of an IF only the condition decides; a branch that is not taken may be in error.
  const deciding = nodes.length === 3 ? 1 : nodes.length;
  return blockBy(rows, columns, (down, across) => {
    const values = blocks.map((block) => at(block, down, across));
    return values.slice(0, deciding).find(isError) ?? combine(values);
  });
}

function blockBy(rows: number, columns: number, value: (row: number, column: number) => unknown): Block {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_unused, column) => value(row, column)),
  );
}

/** A cell of a block; one that is only one row or column serves for all. */
function at(block: Block, row: number, column: number): unknown {
  const line = block.length === 1 ? block[0] : block[row];
  return line?.length === 1 ? line[0] : line?.[column];
}

function single(block: Block): unknown {
  return block.length === 1 && block[0]?.length === 1 ? block[0][0] : block;
}

export function isError(value: unknown): value is LookError {
  return typeof value === 'object' && value !== null && 'code' in value;
}

/** A blank cell is the same as blank text, and as 0; the build leaves out comparisons with anything else. */
function isSame(one: unknown, other: unknown): boolean {
  const isNumber = typeof one === 'number' || typeof other === 'number';
  return (one ?? (isNumber ? 0 : '')) === (other ?? (isNumber ? 0 : ''));
}

/** Text as it is joined; the build leaves out formulas that join numbers. */
function textOf(value: unknown): unknown {
  return value ?? '';
}
