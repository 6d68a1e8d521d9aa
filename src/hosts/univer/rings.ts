import type { IRange } from '@univerjs/core';
import type { FormulaNode, FormulaTree, GeneratorParts } from './engine-internals';
import { noteRing } from './ring-cells';
import { intersect, isInside } from './spill-index';
import { presentSpill } from './spill-repairs';

/** Functions that use the place of a reference, not its value. */
const lookAtPlace: ReadonlySet<string> = new Set(['ROW', 'ROWS', 'COLUMN', 'COLUMNS']);

/** How the engine numbers the kinds of nodes in a parsed formula. */
const kinds = { reference: 1, function: 4, union: 10, prefix: 11, suffix: 12 } as const;

interface Visit<T> {
  readonly node: T;
  readonly index: number;
  /** The lowest index that it reaches. */
  low: number;
  isOnPath: boolean;
  /** The nodes still to visit, the next one last. */
  readonly targets: T[];
}

/** Groups of nodes that reach each other (Tarjan 1972), without single nodes that do not reach themselves. */
export function stronglyConnected<T>(edges: ReadonlyMap<T, readonly T[]>): T[][] {
  const visits = new Map<T, Visit<T>>();
  const path: Visit<T>[] = [];
  const groups: T[][] = [];
  const visit = (node: T): Visit<T> => {
    const index = visits.size;
    const opened = { node, index, low: index, isOnPath: true, targets: [...(edges.get(node) ?? [])].reverse() };
    visits.set(node, opened);
    path.push(opened);
    return opened;
  };
  for (const root of edges.keys()) {
    if (visits.has(root)) continue;
    const work = [visit(root)];
    for (let top = work.at(-1); top !== undefined; top = work.at(-1)) {
      const target = top.targets.pop();
      if (target !== undefined) {
        const known = visits.get(target);
        if (known === undefined) work.push(visit(target));
        else if (known.isOnPath) top.low = Math.min(top.low, known.index);
        continue;
      }
      work.pop();
      const parent = work.at(-1);
      if (parent !== undefined) parent.low = Math.min(parent.low, top.low);
      if (top.low !== top.index) continue;
      const group = path.splice(path.indexOf(top)).reverse();
      for (const member of group) member.isOnPath = false;
      if (group.length > 1 || (edges.get(top.node) ?? []).includes(top.node))
        groups.push(group.map(({ node }) => node));
    }
  }
  return groups;
}

/** The cells that the text of a formula refers to. */
function rangesRead(generator: GeneratorParts, tree: FormulaTree) {
  const { _interpreter: interpreter } = generator;
  const found: { sheetId: string; range: IRange }[] = [];
  const collectRanges = (node: FormulaNode): void => {
    for (const child of node.getChildren() as FormulaNode[]) {
      const kind = child.nodeType as number;
      const token = child.getToken();
      if (kind === kinds.function && lookAtPlace.has(token.toUpperCase())) continue;
      const isRange =
        kind === kinds.reference ||
        kind === kinds.union ||
        (kind === kinds.prefix && token === '@') ||
        (kind === kinds.suffix && token === '#');
      if (isRange) {
        const value = interpreter.execute({ node: child, refOffsetX: tree.refOffsetX, refOffsetY: tree.refOffsetY });
        child.setValue(null);
        if (value.isReferenceObject()) found.push(value.toUnitRange());
      }
      if (kind !== kinds.reference) collectRanges(child);
    }
  };
  generator._runtimeService.setCurrent(
    tree.row,
    tree.column,
    tree.rowCount,
    tree.columnCount,
    tree.subUnitId,
    tree.unitId,
  );
  const node = generator._getTreeNode(tree);
  collectRanges(node);
  return found;
}

/**
 * Records the formulas that depend on themselves. The cells filled earlier are good enough to order formulas, but not
 * to call them a ring, so apparent rings are checked again.
 */
export function findRings(generator: GeneratorParts, readers: ReadonlyMap<number, readonly number[]>): void {
  const runtime = generator._runtimeService;
  for (const group of stronglyConnected(readers)) {
    const trees = group.flatMap((id) => generator._dependencyTreeCache.get(id) ?? []);
    const edges = new Map<FormulaTree, FormulaTree[]>();
    for (const tree of trees) {
      const read = rangesRead(generator, tree);
      const sources = trees.filter((source) => {
        const spill = presentSpill(runtime, source.unitId, source.subUnitId, source.row, source.column);
        return read.some(
          ({ sheetId, range }) =>
            sheetId === source.subUnitId &&
            (isInside(range, source.row, source.column) || (spill !== undefined && intersect(range, spill))),
        );
      });
      edges.set(tree, sources);
    }
    for (const ring of stronglyConnected(edges)) noteRing(runtime, ring);
  }
}
