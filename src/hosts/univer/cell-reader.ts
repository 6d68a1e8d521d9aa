import type { ICellData, Injector, Nullable, Workbook, Worksheet } from '@univerjs/core';
import { FormulaDataModel, IFunctionService } from '@univerjs/engine-formula';
import { type CellRange, contains, rangeName } from '../address';
import type { CellError, CellResult } from '../workbook-model';
import { plainCellData } from './cell-data';
import { findReason } from './error-source';
import { explain } from './error-text';
import { fromEngineRange } from './snapshot';

export interface ReadCell {
  readonly value: CellResult;
  /** As typed; undefined in a cell that holds a plain value or takes part in another cell's spill. */
  readonly formula: string | undefined;
  /** The cells that this cell's formula fills, if more than one. */
  readonly spill: string | undefined;
}

function isBlank(cell: Nullable<ICellData>): boolean {
  return !cell || (!cell.f && (cell.v === null || cell.v === undefined) && !cell.p);
}

/** Reads cells of an open workbook: what was typed, its result, and the reason of an error. */
export class CellReader {
  private readonly model: FormulaDataModel;
  private readonly isKnown: (name: string) => boolean;
  private readonly workbook: Workbook;

  constructor(injector: Injector, workbook: Workbook) {
    this.workbook = workbook;
    this.model = injector.get(FormulaDataModel);
    const functions = injector.get(IFunctionService);
    this.isKnown = (name) => functions.hasExecutor(name);
  }

  read(sheet: Worksheet, row: number, column: number): ReadCell {
    const formula = this.formulaAt(sheet, row, column);
    const value = this.rawAt(sheet, row, column);
    const spill = formula === undefined ? undefined : this.spillAt(sheet, row, column);
    return {
      value: typeof value === 'object' ? { error: this.reason(sheet, row, column, value.error) } : value,
      formula,
      spill: spill === undefined ? undefined : rangeName(spill),
    };
  }

  private formulaAt(sheet: Worksheet, row: number, column: number): string | undefined {
    const text = this.model.getFormulaStringByCell(row, column, sheet.getSheetId(), this.workbook.getUnitId());
    return text ? text : undefined;
  }

  private spillsOf(sheet: Worksheet) {
    return this.model.getArrayFormulaRange()[this.workbook.getUnitId()]?.[sheet.getSheetId()];
  }

  /** Not `getCell` of the sheet, which rounds for display. */
  private rawAt(sheet: Worksheet, row: number, column: number): CellResult {
    const own = sheet.getCellMatrix().getValue(row, column);
    if (!isBlank(own)) return plainCellData(own);
    return plainCellData(
      this.model.getArrayFormulaCellData()[this.workbook.getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column],
    );
  }

  /** The range that a cell's formula fills; the engine also keeps spills that found no room, which do not count. */
  private spillAt(sheet: Worksheet, row: number, column: number): CellRange | undefined {
    const range = this.spillsOf(sheet)?.[row]?.[column];
    if (!range || sheet.getCellMatrix().getValue(row, column)?.v === '#SPILL!') return undefined;
    return { ...fromEngineRange(range), row, column };
  }

  /** The ranges that formulas of a sheet fill. */
  spills(sheet: Worksheet): CellRange[] {
    return Object.entries(this.spillsOf(sheet) ?? {}).flatMap(([row, line]) =>
      Object.keys(line ?? {}).flatMap((column) => this.spillAt(sheet, Number(row), Number(column)) ?? []),
    );
  }

  /** The formula that fills a cell: its own, or the one whose spill it is in. */
  private sourceAt(sheet: Worksheet, row: number, column: number): string | undefined {
    const own = this.formulaAt(sheet, row, column);
    if (own !== undefined) return own;
    const spill = this.spills(sheet).find((range) => contains(range, row, column));
    return spill === undefined ? undefined : this.formulaAt(sheet, spill.row, spill.column);
  }

  private reason(sheet: Worksheet, row: number, column: number, error: CellError): CellError {
    if (error.message !== '') return error;
    const formula = this.sourceAt(sheet, row, column);
    if (formula === undefined) return explain(error, undefined, this.isKnown);
    const found = findReason({ sheet: sheet.getName(), formula, code: error.code }, (name, atRow, atColumn) => {
      const other = this.workbook.getSheetBySheetName(name);
      if (!other) return { error: undefined, formula: undefined };
      const value = this.rawAt(other, atRow, atColumn);
      return {
        error: typeof value === 'object' ? value.error : undefined,
        formula: this.sourceAt(other, atRow, atColumn),
      };
    });
    return found === undefined ? explain(error, formula, this.isKnown) : { code: error.code, message: found };
  }
}
