import type { IUnitRange } from '@univerjs/core';
import {
  DependencyManagerService,
  FormulaDependencyGenerator,
  FormulaDependencyTree,
  FormulaDependencyTreeVirtual,
} from '@univerjs/engine-formula';
import { type FormulaTree, type GeneratorParts, type ManagerParts, withInternals } from './engine-internals';
import { findRings } from './rings';
import { knownSpills } from './spill-repairs';

/**
 * Repairs the order in which formulas depend on each other:
 * - A formula is found by the cells that it fills as well as by its own.
 * - Formulas that refer to each other in a ring were computed once from their old values; they are errors.
 * - With each calculation it recorded again which cells each formula reads. Now it does so only if they are others, or if
 * it has dropped the record of their sheet, as it does when rows or columns come or go.
 */

/** The spills of a formula, through which it is found besides its own cell. */
const filled = new WeakMap<FormulaTree, readonly IUnitRange[]>();

/** Records the cells that a formula fills, as far as known. */
export function noteSpills(generator: GeneratorParts, tree: FormulaTree): FormulaTree {
  const { unitId, subUnitId: sheetId, row, column } = tree;
  const ranges = knownSpills(generator._runtimeService, unitId, sheetId, row, column);
  if (ranges.length === 0) filled.delete(tree);
  else
    filled.set(
      tree,
      ranges.map((range) => ({ unitId, sheetId, range })),
    );
  return tree;
}

function repairFinding(generator: GeneratorParts): void {
  for (const { prototype } of [FormulaDependencyTree, FormulaDependencyTreeVirtual]) {
    const { toRTreeItem } = prototype;
    prototype.toRTreeItem = function (this: FormulaDependencyTree & FormulaDependencyTreeVirtual) {
      const spills = filled.get(this);
      const own = toRTreeItem.call(this);
      return spills === undefined ? own : [...own, ...spills];
    };
  }
  const { _createFDtree, _createVirtualFDtree } = generator;
  generator._createFDtree = function (this: GeneratorParts, ...given) {
    return noteSpills(this, _createFDtree.apply(this, given));
  };
  generator._createVirtualFDtree = function (this: GeneratorParts, ...given) {
    return noteSpills(this, _createVirtualFDtree.apply(this, given));
  };
}

/** Puts formulas in an order to compute from the end, and records which read which. */
function repairOrder(generator: GeneratorParts): void {
  generator._calculateRunList = function (this: GeneratorParts, trees) {
    const order: FormulaTree[] = [];
    const readers = new Map<number, readonly number[]>();
    const done = new Set<number>();
    for (let tree = trees.pop(); tree !== undefined; tree = trees.pop()) {
      if (tree.isSkip()) continue;
      const waiting: FormulaTree[] = [];
      if (!tree.isAdded()) {
        const cells = tree.toRTreeItem();
        const found = this._dependencyManagerService.searchDependency(cells, done);
        for (const id of this._dependencyRTreeCacheForAddressFunction.bulkSearch(cells, done)) found.add(id as number);
        readers.set(tree.treeId, [...found]);
        for (const id of found) {
          const reader = this._dependencyTreeCache.get(id);
          if (reader !== undefined && reader !== tree && !reader.isAdded()) waiting.push(reader);
        }
      }
      if (waiting.length === 0) {
        order.push(tree);
        tree.setSkip();
        done.add(tree.treeId);
      } else {
        tree.setAdded();
        trees.push(tree, ...waiting);
      }
    }
    findRings(this, readers);
    return order;
  };
  // The code above finds rings in less time.
  generator._checkIsCycleDependency = () => false;
}

/** The references recorded for a formula, by the engine's own record of them. */
let written = new WeakMap<object, string>();

function repairRecord(): void {
  const manager = withInternals<ManagerParts>(DependencyManagerService);
  const { addDependencyRTreeCache, _removeDependencyRTreeCacheById } = manager;
  manager._removeDependencyRTreeCacheById = function (this: ManagerParts, ...sheet) {
    written = new WeakMap();
    _removeDependencyRTreeCacheById.apply(this, sheet);
  };
  manager.addDependencyRTreeCache = function (this: ManagerParts, tree) {
    const ranges = tree.rangeList;
    if (ranges.length === 0) return;
    const record = ranges
      .map(
        ({ sheetId, range }) => `${sheetId}:${range.startRow},${range.startColumn},${range.endRow},${range.endColumn}`,
      )
      .join(' ');
    const before = this._allTreeMap.get(tree.treeId);
    if (before !== undefined) {
      if (written.get(before) === record) return;
      this._removeDependencyRTreeCache(tree.treeId);
      this._removeAllTreeMap(tree.treeId);
    }
    addDependencyRTreeCache.call(this, tree);
    const after = this._allTreeMap.get(tree.treeId);
    if (after !== undefined) written.set(after, record);
  };
}

let repaired = false;

export function repairDependencies(): void {
  if (repaired) return;
  repaired = true;
  const generator = withInternals<GeneratorParts>(FormulaDependencyGenerator);
  repairFinding(generator);
  repairOrder(generator);
  repairRecord();
}
