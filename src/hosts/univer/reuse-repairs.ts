import { FormulaDependencyGenerator } from '@univerjs/engine-formula';
import { noteSpills } from './dependency-repairs';
import { type ConfigParts, type FormulaTree, type GeneratorParts, withInternals } from './engine-internals';
import { knownOrigins } from './spill-repairs';

/**
 * For every change the engine reads all formulas of the workbook again and lists everything
 * that they refer to. This keeps that list as long as no formula, name or sheet has changed.
 */

interface Kept {
  readonly trees: Map<number, FormulaTree>;
  /** Formulas that are computed with every change, such as those with TODAY. */
  readonly volatile: ReadonlySet<FormulaTree>;
  /** The text of every formula by its place, to see whether one has changed. */
  readonly texts: ReadonlyMap<string, ReadonlyMap<number, string>>;
  /** Formulas whose references the engine has recorded. */
  readonly recorded: readonly FormulaTree[];
  /** Formulas that are found by more than their own cell. */
  noted: readonly FormulaTree[];
}

const kept = new WeakMap<GeneratorParts, Kept>();
const mostColumns = 16_384;

/** Calls back with each formula's place and text; stops when it returns false. */
function everyFormula(config: ConfigParts, found: (sheet: string, place: number, text: string) => boolean): boolean {
  for (const [unitId, sheets] of Object.entries(config.getFormulaData()))
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      const { rowCount = 0, columnCount = 0 } = config.getUnitData()[unitId]?.[sheetId] ?? {};
      // References to whole rows and columns reach as far as the sheet.
      const sheet = `${unitId}\n${sheetId}\n${rowCount},${columnCount}`;
      for (const row in rows) {
        const line = rows[Number(row)];
        for (const column in line) {
          const item = line[Number(column)];
          if (!item) continue;
          const { f, si = '', x = 0, y = 0 } = item;
          const text = si === '' ? f : `${f}\n${si},${x},${y}`;
          if (!found(sheet, Number(row) * mostColumns + Number(column), text)) return false;
        }
      }
    }
  return true;
}

function isRecorded({ _dependencyManagerService: manager }: GeneratorParts, tree: FormulaTree): boolean {
  return manager.getFormulaDependency(tree.unitId, tree.subUnitId, tree.row, tree.column) === tree.treeId;
}

function formulaTexts(config: ConfigParts): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const texts = new Map<string, Map<number, string>>();
  everyFormula(config, (sheet, place, text) => {
    const onSheet = texts.get(sheet) ?? new Map<number, string>();
    texts.set(sheet, onSheet.set(place, text));
    return true;
  });
  return texts;
}

function hasSameFormulas(config: ConfigParts, { texts }: Kept): boolean {
  let left = 0;
  for (const onSheet of texts.values()) left += onSheet.size;
  const isSame = everyFormula(config, (sheet, place, text) => {
    left -= 1;
    return texts.get(sheet)?.get(place) === text;
  });
  return isSame && left === 0;
}

const isEmpty = (record: object | null | undefined): boolean => Object.keys(record ?? {}).length === 0;

/** Whether only values have changed since the last calculation. */
function onlyValuesChanged(config: ConfigParts): boolean {
  return (
    !config.isForceCalculate() &&
    isEmpty(config.getDirtyNameMap()) &&
    isEmpty(config.getDirtyDefinedNameMap()) &&
    isEmpty(config.getDirtySuperTableMap()) &&
    isEmpty(config.getDirtyUnitFeatureMap()) &&
    isEmpty(config.getDirtyUnitOtherFormulaMap()) &&
    isEmpty(config.getClearDependencyTreeCache())
  );
}

function isPlain(generator: GeneratorParts): boolean {
  return (
    generator._featureCalculationManagerService.getReferenceExecutorMap().size === 0 &&
    isEmpty(generator._otherFormulaManagerService.getOtherFormulaData())
  );
}

/** Prepares the kept formulas for another calculation. */
function restoreKept(generator: GeneratorParts, was: Kept): void {
  generator._dependencyTreeCache = was.trees;
  const dirty = generator._updateRangeFlattenCache;
  for (const tree of was.trees.values()) {
    tree.resetState();
    const ranges = dirty.get(tree.unitId)?.get(tree.subUnitId);
    tree.isDirty = was.volatile.has(tree) || (ranges?.some((range) => tree.inRangeData(range)) ?? false);
  }
  for (const tree of was.noted) noteSpills(generator, tree);
  const noted = new Set(was.noted);
  for (const [unitId, sheetId, row, column] of knownOrigins(generator._runtimeService)) {
    const id = generator._dependencyManagerService.getFormulaDependency(unitId, sheetId, row, column);
    const tree = id === undefined || id === null ? undefined : was.trees.get(id);
    if (tree === undefined || noted.has(tree)) continue;
    noteSpills(generator, tree);
    noted.add(tree);
  }
  was.noted = [...noted];
}

function keepTrees(generator: GeneratorParts): void {
  const trees = generator._dependencyTreeCache;
  const volatile = new Set<FormulaTree>();
  for (const tree of trees.values())
    if (generator._detectForcedRecalculationNode(tree, generator._getTreeNode(tree))) volatile.add(tree);
  const texts = formulaTexts(generator._currentConfigService);
  const recorded = [...trees.values()].filter((tree) => isRecorded(generator, tree));
  kept.set(generator, { trees, volatile, texts, recorded, noted: [] });
}

let repaired = false;

export function repairReuse(): void {
  if (repaired) return;
  repaired = true;
  const generator = withInternals<GeneratorParts>(FormulaDependencyGenerator);
  const { generate, _calculateRunList } = generator;
  generator.generate = async function (this: GeneratorParts, wantsModel = false) {
    const config = this._currentConfigService;
    const was = kept.get(this);
    // A formula entered again unchanged has the same text, but the engine has dropped its references.
    const isWhole = was?.recorded.every((tree) => isRecorded(this, tree)) ?? false;
    if (!wantsModel && was !== undefined && isWhole && onlyValuesChanged(config) && hasSameFormulas(config, was)) {
      this._updateRangeFlatten();
      restoreKept(this, was);
      this._dependencyManagerService.openKdTree();
      const order = this._calculateRunList(this._getUpdateTreeListAndMakeDependency());
      this._dependencyTreeCache = new Map();
      this._dependencyManagerService.closeKdTree();
      this._runtimeService.clearArrayObjectCache();
      return order;
    }
    kept.delete(this);
    return generate.call(this, wantsModel);
  };
  // The last step of reading formulas again that still has them all.
  generator._calculateRunList = function (this: GeneratorParts, trees) {
    const order = _calculateRunList.call(this, trees);
    const looksUpPlaces = !isEmpty(this._dependencyRTreeCacheForAddressFunction.toJSON());
    if (kept.has(this) || looksUpPlaces || !isPlain(this)) return order;
    keepTrees(this);
    // The engine empties its own list when it is done.
    this._dependencyTreeCache = new Map(this._dependencyTreeCache);
    return order;
  };
}
