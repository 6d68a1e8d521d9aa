import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { FormulaRuntimeService } from '@univerjs/engine-formula';
import { type RuntimeParts, withInternals } from './engine-internals';

/**
 * Where the engine takes empty text for a blank cell, and a blank result for none:
 * - A cell that a formula filled with "" was blank to formulas of the same calculation, and text to those of the next.
 *   In Excel it is text.
 * - A formula that gives a blank cell, such as =IF(TRUE,A1), left its own cell without a result, which formulas of the
 *   next calculation read as the number 0. In Excel its result is that number.
 */

/** A formula keeps the engine from taking the cell for a blank one. */
const emptyText = '""';

/** The cell, so that formulas read empty text in it as text. */
export function readAsText(cell: Nullable<ICellData>): Nullable<ICellData> {
  if (cell?.v !== '' || cell.t !== CellValueType.STRING || cell.f) return cell;
  return { ...cell, f: emptyText };
}

export function repairBlankResults(): void {
  const runtime = withInternals<RuntimeParts>(FormulaRuntimeService);
  const { _getValueObjectOfRuntimeData } = runtime;
  runtime._getValueObjectOfRuntimeData = function (this: RuntimeParts, value) {
    if (value === null || value === undefined || value.isNull()) return { v: 0, t: CellValueType.NUMBER };
    return _getValueObjectOfRuntimeData.call(this, value);
  };
}
