import type { IRange } from '@univerjs/core';
import type { FormulaNode, FormulaTree, GeneratorParts } from './engine-internals';
import { noteRing } from './ring-cells';
import { intersect, isInside } from './spill-index';
import { presentSpill } from './spill-repairs';

/** Functions that use the place of a reference, not its value. */
const lookAtPlace: ReadonlySet<string> = new Set(['ROW', 'ROWS', 'COLUMN', 'COLUMNS']);

/** How the engine numbers the kinds of nodes in a parsed formula. */
const kinds = { reference: 1, function: 4, union: 10, prefix: 11, suffix: 12 } as const;

/** Groups of nodes that reach each other (Tarjan 1972), without single nodes that do not reach themselves. */
export function stronglyConnected<T>(edges: ReadonlyMap<T, readonly T[]>): T[][] {
  const index = new Map<T, number>();
  const low = new Map<T, number>();
  const path: T[] = [];
  const onPath = new Set<T>();
  const groups: T[][] = [];
  for (const root of edges.keys()) {
    if (index.has(root)) continue;
    const work: { node: T; next: number }[] = [{ node: root, next: 0 }];
    while (work.length > 0) {
      const at = work.at(-1)!;
      const { node } = at;
      if (at.next === 0) {
        index.set(node, index.size);
        low.set(node, index.get(node)!);
        path.push(node);
        onPath.add(node);
      }
      const targets = edges.get(node) ?? [];
      let isDeeper = false;
      while (at.next < targets.length && !isDeeper) {
        const target = targets[at.next]!;
        at.next += 1;
        if (!index.has(target)) {
          work.push({ node: target, next: 0 });
          isDeeper = true;
        } else if (onPath.has(target)) low.set(node, Math.min(low.get(node)!, index.get(target)!));
      }
      if (isDeeper) continue;
      work.pop();
      const parent = work.at(-1)?.node;
      if (parent !== undefined) low.set(parent, Math.min(low.get(parent)!, low.get(node)!));
      if (low.get(node) !== index.get(node)) continue;
      const group: T[] = [];
      let member: T;
      do {
        member = path.pop()!;
        onPath.delete(member);
        group.push(member);
      } while (member !== node);
      if (group.length > 1 || (edges.get(node) ?? []).includes(node)) groups.push(group);
    }
  }
  return groups;
}

/** The cells that a formula's value depends on, as it is written. */
function rangesRead(generator: GeneratorParts, tree: FormulaTree) {
  const { _interpreter: interpreter } = generator;
  const found: { sheetId: string; range: IRange }[] = [];
  const look = (node: FormulaNode): void => {
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
      if (kind !== kinds.reference) look(child);
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
  look(node);
  return found;
}

/**
 * Notes the formulas that depend on themselves. What a formula filled before is good enough to put formulas in order, but
 * not to call them a ring, so that those which seem to be one are looked at again.
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
