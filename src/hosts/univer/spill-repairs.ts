import type { IRange, IUnitRange } from '@univerjs/core';
import {
  BaseReferenceObject,
  CalculateFormulaService,
  FORMULA_REF_TO_ARRAY_CACHE,
  FormulaCurrentConfigService,
  FormulaDataModel,
  FormulaRuntimeService,
} from '@univerjs/engine-formula';
import { readAsText } from './blank-repairs';
import {
  type ConfigParts,
  type ReferenceParts,
  type RuntimeParts,
  type ServiceParts,
  type UnitValues,
  withInternals,
} from './engine-internals';
import { forgetRings, ringMessage } from './ring-cells';
import { outside, SpillIndexes } from './spill-index';
import { cell, indexed, SpillState } from './spill-state';
import { errorObject } from './value-objects';

/**
 * Repairs what the engine does wrong with spills:
 * - It knows a formula only by its own cell, so that cells that read its spill kept old values.
 * - If one spill fed another, it looked one step ahead and stopped.
 * - For each cell that it read or filled it searched all spills of the sheet.
 * - If a spill found no room for a moment, the formatted cells that it would fill stayed blank for good.
 * - If two spills overlap, the one computed first filled its cells; it must be the one that begins further up, or left.
 */

/** A calculation that has not settled after this many rounds never will. */
const mostRounds = 200;

const states = new WeakMap<object, SpillState>();
/** The spills before a calculation, by the object that holds their values. */
const spillsBefore = new WeakMap<object, SpillIndexes>();
/** The spills stored in a workbook's file, to compute in the right order from the start. */
const expected = new SpillIndexes();
/** Cells that a formula filled before something else was typed over it. */
const abandoned = new WeakMap<FormulaDataModel, IUnitRange[]>();

/** The cells that are abandoned now; gives a function that abandons them again, if the results that follow do not count. */
export function rememberAbandoned(model: FormulaDataModel): () => void {
  const ranges = abandoned.get(model) ?? [];
  return () => {
    if (ranges.length > 0) abandoned.set(model, [...ranges, ...(abandoned.get(model) ?? [])]);
  };
}

export function expectSpill(unitId: string, sheetId: string, range: IRange): void {
  expected.of(unitId, sheetId).set(range.startRow, range.startColumn, range);
}

function stateOf(runtime: RuntimeParts): SpillState {
  let state = states.get(runtime);
  if (state === undefined) {
    const values = runtime._currentConfigService.getArrayFormulaCellData();
    state = new SpillState(spillsBefore.get(values) ?? new SpillIndexes());
    states.set(runtime, state);
  }
  return state;
}

/** The cells that a formula fills, as far as known: before, now, or in the file. */
export function knownSpills(
  runtime: RuntimeParts,
  unitId: string,
  sheetId: string,
  row: number,
  column: number,
): IRange[] {
  const { before, now } = stateOf(runtime);
  const [was, is] = [before, now].map((spills) => spills.of(unitId, sheetId).get(row, column));
  const hoped = was ?? expected.of(unitId, sheetId).get(row, column);
  return [hoped, is].filter((range) => range !== undefined);
}

/** The first cells of all spills that are known, some more than once. */
export function* knownOrigins(
  runtime: RuntimeParts,
): Generator<readonly [unitId: string, sheetId: string, row: number, column: number]> {
  const { before, now } = stateOf(runtime);
  for (const spills of [before, now, expected])
    for (const [unitId, sheetId, index] of spills.all())
      for (const { row, column } of index.all()) yield [unitId, sheetId, row, column];
}

/** The cells that a formula fills in the running calculation. */
export function presentSpill(runtime: RuntimeParts, unitId: string, sheetId: string, row: number, column: number) {
  return stateOf(runtime).now.of(unitId, sheetId).get(row, column);
}

const valueAt = (values: UnitValues, unitId: string, sheetId: string, row: number, column: number) =>
  values?.[unitId]?.[sheetId]?.getValue(row, column);

function repairReading(): void {
  const reference = withInternals<ReferenceParts>(BaseReferenceObject);
  reference.getCellData = function (this: ReferenceParts, row, column) {
    const [unitId, sheetId] = [this.getUnitId(), this.getSheetId()];
    const now =
      valueAt(this._runtimeData, unitId, sheetId, row, column) ??
      valueAt(this._runtimeArrayFormulaCellData, unitId, sheetId, row, column) ??
      this.getRuntimeFeatureCellValue(row, column);
    if (now) return readAsText(now);
    const before = valueAt(this._arrayFormulaCellData, unitId, sheetId, row, column);
    if (!before) return readAsText(this.getCurrentActiveSheetData()?.cellData.getValue(row, column));
    // Old spills of a formula do not count once it has been computed again.
    const spills = spillsBefore.get(this._arrayFormulaCellData)?.of(unitId, sheetId).at(row, column) ?? [];
    const isGone = spills.some((spill) => valueAt(this._runtimeData, unitId, sheetId, spill.row, spill.column));
    return isGone ? null : readAsText(before);
  };
}

function isBlockedCell(runtime: RuntimeParts, unitId: string, sheetId: string, row: number, column: number): boolean {
  const now = valueAt(runtime._runtimeData, unitId, sheetId, row, column);
  const shown =
    now ?? runtime._currentConfigService.getUnitData()[unitId]?.[sheetId]?.cellData.getValue(row, column) ?? undefined;
  return shown?.v === '#SPILL!';
}

/**
 * Where a formula finds no room, the engine writes empty text into the formatted cells that it would fill: into the sheet
 * itself, where it stays and hides what fills them later, even if that calculation does not count.
 */
function leaveBlank(runtime: RuntimeParts, unitId: string, sheetId: string, range: IRange): void {
  const cells = runtime._currentConfigService.getUnitData()[unitId]?.[sheetId]?.cellData;
  for (let row = range.startRow; row <= range.endRow; row += 1)
    for (let column = range.startColumn; column <= range.endColumn; column += 1)
      // Empty text that somebody typed, or a formula gave, has its type.
      for (const one of [cells?.getValue(row, column), valueAt(runtime._runtimeData, unitId, sheetId, row, column)])
        if (one?.v === '' && (one.t === undefined || one.t === null) && !one.f) delete one.v;
}

/** Clears the cells that a formula filled earlier in the same calculation, before it fills cells again. */
function takeBackSpill(runtime: RuntimeParts, unitId: string, sheetId: string, row: number, column: number): void {
  const state = stateOf(runtime);
  const range = state.now.of(unitId, sheetId).get(row, column);
  state.blocked.of(unitId, sheetId).delete(row, column);
  delete runtime._unitArrayFormulaRange[unitId]?.[sheetId]?.[row]?.[column];
  const values = runtime._runtimeArrayFormulaCellData[unitId]?.[sheetId];
  if (range === undefined) {
    values?.realDeleteValue(row, column);
    return;
  }
  state.now.of(unitId, sheetId).delete(row, column);
  for (let atRow = range.startRow; atRow <= range.endRow; atRow += 1)
    for (let atColumn = range.startColumn; atColumn <= range.endColumn; atColumn += 1)
      values?.realDeleteValue(atRow, atColumn);
}

function repairFilling(): void {
  const service = withInternals<RuntimeParts>(FormulaRuntimeService);
  const { setRuntimeData, reset } = service;
  service.reset = function (this: RuntimeParts) {
    states.delete(this);
    forgetRings(this);
    reset.call(this);
  };
  service.setRuntimeData = function (this: RuntimeParts, value) {
    const { currentUnitId: unitId, currentSubUnitId: sheetId, currentRow: row, currentColumn: column } = this;
    const state = stateOf(this);
    const known = knownSpills(this, unitId, sheetId, row, column);
    const wasComputed = valueAt(this._runtimeData, unitId, sheetId, row, column) !== undefined;
    if (wasComputed) takeBackSpill(this, unitId, sheetId, row, column);
    const ring = ringMessage(this, unitId, sheetId, row, column);
    setRuntimeData.call(this, ring === undefined ? value : errorObject('#CYCLE!', ring));
    // A formula in a circle is read before it is computed, and what was read is remembered.
    if (ring !== undefined) FORMULA_REF_TO_ARRAY_CACHE.clear();
    const wanted = this._unitArrayFormulaRange[unitId]?.[sheetId]?.[row]?.[column] as IRange | undefined;
    const isBlocked = wanted !== undefined && isBlockedCell(this, unitId, sheetId, row, column);
    if (isBlocked) {
      state.blocked.of(unitId, sheetId).set(row, column, wanted);
      leaveBlank(this, unitId, sheetId, wanted);
    }
    const filled = isBlocked ? undefined : wanted;
    if (filled !== undefined) {
      state.now.of(unitId, sheetId).set(row, column, filled);
      // Cells whose spill was not known may have been read too early.
      const grown = (known.length === 0 ? [undefined] : known).map((range) => outside(filled, range));
      const least = grown.reduce((one, other) => (cellCount(other) < cellCount(one) ? other : one));
      for (const range of least) state.addDirty(unitId, sheetId, range);
    }
    expected.of(unitId, sheetId).delete(row, column);
    for (const range of known)
      if (range !== filled) for (const free of outside(range, filled)) state.addVacated(unitId, sheetId, free);
  };
  service._isInOtherArrayFormulaRange = function (
    this: RuntimeParts,
    unitId,
    sheetId,
    formulaRow,
    formulaColumn,
    row,
    column,
  ) {
    const state = stateOf(this);
    const others = [
      ...state.now.of(unitId, sheetId).at(row, column),
      ...state.before
        .of(unitId, sheetId)
        .at(row, column)
        .filter(
          (spill) =>
            valueAt(this._runtimeData, unitId, sheetId, spill.row, spill.column) === undefined &&
            !isBlockedCell(this, unitId, sheetId, spill.row, spill.column) &&
            isFormula(this, unitId, sheetId, spill.row, spill.column),
        ),
    ];
    let isTaken = false;
    for (const other of others) {
      if (other.row === formulaRow && other.column === formulaColumn) continue;
      if (other.row < formulaRow || (other.row === formulaRow && other.column < formulaColumn)) isTaken = true;
      else state.addDirty(unitId, sheetId, cell(other.row, other.column));
    }
    return isTaken;
  };
}

function cellCount(ranges: readonly IRange[]): number {
  return ranges.reduce(
    (sum, range) => sum + (range.endRow - range.startRow + 1) * (range.endColumn - range.startColumn + 1),
    0,
  );
}

function isFormula(runtime: RuntimeParts, unitId: string, sheetId: string, row: number, column: number): boolean {
  return runtime._currentConfigService.getFormulaData()[unitId]?.[sheetId]?.[row]?.[column] !== undefined;
}

/** Remembers the spill of an overwritten formula until its readers have been computed. */
function repairOverwriting(): void {
  const { updateArrayFormulaRange } = FormulaDataModel.prototype;
  FormulaDataModel.prototype.updateArrayFormulaRange = function (unitId, sheetId, cellValue) {
    const spills = this.getArrayFormulaRange()[unitId]?.[sheetId] ?? {};
    for (const [row, line] of Object.entries(cellValue))
      for (const column of Object.keys(line ?? {})) {
        const range = spills[Number(row)]?.[Number(column)];
        expected.of(unitId, sheetId).delete(Number(row), Number(column));
        if (range) abandoned.set(this, [...(abandoned.get(this) ?? []), { unitId, sheetId, range }]);
      }
    return updateArrayFormulaRange.call(this, unitId, sheetId, cellValue);
  };
}

function repairSettling(): void {
  const config = withInternals<ConfigParts>(FormulaCurrentConfigService);
  const { load, loadDataLite } = config;
  config.load = function (this: ConfigParts, data) {
    load.call(this, data);
    spillsBefore.set(this.getArrayFormulaCellData(), indexed(this.getArrayFormulaRange()));
    this._dirtyRanges = [...this._dirtyRanges, ...(abandoned.get(this._formulaDataModel) ?? [])];
  };
  config.loadDataLite = function (this: ConfigParts, rowData) {
    loadDataLite.call(this, rowData);
    spillsBefore.set(this.getArrayFormulaCellData(), indexed(this.getArrayFormulaRange()));
  };
  const service = withInternals<ServiceParts>(CalculateFormulaService);
  service._executeStep = async function (this: ServiceParts) {
    const { _runtimeService: runtime, _currentConfigService: data } = this;
    const state = stateOf(runtime);
    const model = data._formulaDataModel;
    const left = abandoned.get(model) ?? [];
    for (const { unitId, sheetId, range } of left) state.addVacated(unitId, sheetId, range);
    let given = await this._apply();
    for (let round = 0; given !== undefined && round < mostRounds; round += 1) {
      const dirty = state.takeDirty((...place) => isBlockedCell(runtime, ...place));
      if (dirty.length === 0) {
        // Others were abandoned meanwhile.
        abandoned.set(model, (abandoned.get(model) ?? []).slice(left.length));
        return true;
      }
      FORMULA_REF_TO_ARRAY_CACHE.clear();
      data._forceCalculate = false;
      data.loadDirtyRangesAndExcludedCell(dirty, {});
      given = await this._apply(true);
    }
    return given === undefined ? undefined : true;
  };
}

let repaired = false;

export function repairSpills(): void {
  if (repaired) return;
  repaired = true;
  repairReading();
  repairFilling();
  repairOverwriting();
  repairSettling();
}
