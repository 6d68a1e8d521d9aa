import type { ICellData, IRange, IUnitRange, Nullable, ObjectMatrix, RTree } from '@univerjs/core';
import type {
  BaseReferenceObject,
  BaseValueObject,
  FormulaDataModel,
  FormulaDependencyGenerator,
  IAllRuntimeData,
  IDependencyManagerService,
  IFeatureCalculationManagerService,
  IFormulaCurrentConfigService,
  IFormulaDatasetConfig,
  IFormulaDependencyTree,
  IFormulaRuntimeService,
  IOtherFormulaManagerService,
} from '@univerjs/engine-formula';
import type { Subject } from 'rxjs';
import type { StoredSpills } from './spill-state';

/**
 * Private parts of the engine that the repairs replace or call. They are right for the one version that is pinned.
 */

/** A class of the engine with the private parts that its own types hide; tests of the repairs notice if one is gone. */
export function withInternals<Parts>(engineClass: { readonly prototype: object }): Parts {
  return engineClass.prototype as Parts;
}

/** Values by workbook and sheet. */
export type UnitValues = Readonly<
  Record<string, Readonly<Record<string, ObjectMatrix<Nullable<ICellData>> | undefined>> | undefined>
>;

/** The workbook as one calculation sees it. */
export interface ConfigParts extends Omit<IFormulaCurrentConfigService, never> {
  readonly _formulaDataModel: FormulaDataModel;
  _dirtyRanges: IUnitRange[];
  _forceCalculate: boolean;
}

/** The results of one calculation so far. */
export interface RuntimeParts extends Omit<IFormulaRuntimeService, 'setRuntimeData'> {
  readonly _currentConfigService: ConfigParts;
  readonly _runtimeData: UnitValues;
  readonly _runtimeArrayFormulaCellData: UnitValues;
  readonly _unitArrayFormulaRange: Record<string, Record<string, Record<number, Record<number, unknown>>>> &
    StoredSpills;
  setRuntimeData(value: BaseValueObject): void;
  /** A result as the data of a cell. */
  _getValueObjectOfRuntimeData(value: Nullable<BaseValueObject>): ICellData;
  _isInOtherArrayFormulaRange(
    unitId: string,
    sheetId: string,
    formulaRow: number,
    formulaColumn: number,
    row: number,
    column: number,
  ): boolean;
}

export interface ReferenceParts {
  readonly _runtimeData: UnitValues;
  readonly _arrayFormulaCellData: UnitValues;
  readonly _runtimeArrayFormulaCellData: UnitValues;
  getUnitId(): string;
  getSheetId(): string;
  getCurrentActiveSheetData(): { readonly cellData: ObjectMatrix<Nullable<ICellData>> } | undefined;
  getRuntimeFeatureCellValue(row: number, column: number): Nullable<ICellData>;
  getCellData(row: number, column: number): Nullable<ICellData>;
}

export interface ServiceParts {
  readonly _executeLock: { acquire(key: string, work: () => Promise<void>): Promise<void> };
  readonly _executionInProgressListener$: Subject<ReturnType<IFormulaRuntimeService['getRuntimeState']>>;
  readonly _executionCompleteListener$: Subject<IAllRuntimeData>;
  _isCalculateTreeModel: boolean;
  readonly _runtimeService: RuntimeParts;
  readonly _currentConfigService: ConfigParts;
  _apply(again?: boolean): Promise<unknown>;
  _executeStep(): Promise<true | undefined>;
  execute(config: IFormulaDatasetConfig): Promise<void>;
}

/** One formula and its place. */
export type FormulaTree = IFormulaDependencyTree;
/** A part of a parsed formula. */
export type FormulaNode = ReturnType<FormulaDependencyGenerator['_getTreeNode']>;

/** What puts formulas in order. */
export interface GeneratorParts {
  readonly _runtimeService: RuntimeParts;
  readonly _dependencyManagerService: IDependencyManagerService;
  readonly _dependencyRTreeCacheForAddressFunction: RTree;
  readonly _currentConfigService: ConfigParts;
  readonly _otherFormulaManagerService: IOtherFormulaManagerService;
  readonly _featureCalculationManagerService: IFeatureCalculationManagerService;
  readonly _updateRangeFlattenCache: ReadonlyMap<string, ReadonlyMap<string, readonly IRange[]>>;
  _dependencyTreeCache: Map<number, FormulaTree>;
  readonly _interpreter: {
    execute(data: { node: FormulaNode; refOffsetX: number; refOffsetY: number }): BaseReferenceObject;
  };
  generate(wantsModel?: boolean): Promise<FormulaTree[]>;
  _updateRangeFlatten(): void;
  _getUpdateTreeListAndMakeDependency(): FormulaTree[];
  _detectForcedRecalculationNode(tree: FormulaTree, node: FormulaNode): boolean;
  _getTreeNode(tree: FormulaTree): FormulaNode;
  _createFDtree(unitId: string, sheetId: string, ...rest: unknown[]): FormulaTree;
  _createVirtualFDtree(tree: FormulaTree, item: unknown): FormulaTree;
  _calculateRunList(trees: FormulaTree[]): FormulaTree[];
  _checkIsCycleDependency(trees: readonly FormulaTree[]): boolean;
}

/** The record of which cells each formula reads. */
export interface ManagerParts {
  readonly _allTreeMap: ReadonlyMap<number, object>;
  _removeDependencyRTreeCache(treeId: number): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId: string): void;
  _removeAllTreeMap(treeId: number): void;
  addDependencyRTreeCache(tree: FormulaTree): void;
}
