import type { CatalogueRow } from '../../catalogue/define';
import { type CellRange, cellName, contains, rangeName } from '../../hosts/address';
import type { SheetHost } from '../../hosts/sheet-host';
import type { PaneContext } from '../view';
import { cellFormula, type Field } from './field-text';
import type { CallResult } from './live-result';

export interface InsertedCall {
  readonly fields: readonly Field[];
  /** Why one of them cannot be read. */
  readonly fault: string | undefined;
  /** The units argument; undefined for a function that takes none. */
  readonly unitsText: string | undefined;
  readonly headings: boolean;
  /** What it gives now, to know how many cells it fills. */
  readonly result: CallResult | undefined;
}

/** Writes the cell formula at the selection; asks before it overwrites anything. */
export async function insertCall(context: PaneContext, row: CatalogueRow, call: InsertedCall): Promise<void> {
  const { host, notify, ask, work } = context;
  if (host === undefined) return;
  if (call.fault !== undefined) {
    notify('fault', `${call.fault}.`);
    return;
  }
  await work(`Inserting SILT.${row.name}`, async () => {
    const { sheet, range } = await host.selection();
    const at = { row: range.row, column: range.column };
    const cell = cellName(at.row, at.column);
    if (call.fields.some((field) => readsCell(field, sheet, at))) {
      notify('fault', `${cell} is one of the cells that the formula reads; select another cell, then insert it there.`);
      return;
    }
    const needed = { ...at, ...sizeOf(call) };
    const question = await overwriteQuestion(host, sheet, needed);
    if (
      question !== undefined &&
      (await ask({ sentence: question, answers: ['Insert it', 'Leave the cells'] })) !== 'Insert it'
    ) {
      return;
    }
    const formula = cellFormula(
      row.name,
      { units: call.unitsText, fields: call.fields, headings: call.headings },
      sheet,
    );
    await host.write([{ sheet, ...at, cells: [[formula]] }]);
    notify('done', `Inserted in ${sheet}!${rangeName(needed)}: ${formula}`);
  });
}

function sizeOf({ result, headings }: InsertedCall): { readonly rows: number; readonly columns: number } {
  if (result?.is !== 'result') return { rows: 1, columns: 1 };
  return { rows: result.rows.length + (headings ? 1 : 0), columns: result.rows[0]?.length ?? 1 };
}

function readsCell(field: Field, sheet: string, at: { readonly row: number; readonly column: number }): boolean {
  if (field.is !== 'cells' || field.place.sheet.toLowerCase() !== sheet.toLowerCase()) return false;
  return contains(field.place.range, at.row, at.column);
}

/** A question whether to overwrite cells that are not empty; undefined if all are empty. */
async function overwriteQuestion(host: SheetHost, sheet: string, needed: CellRange): Promise<string | undefined> {
  const { values, formulas } = await host.read({ sheet, range: needed });
  const isTaken = (down: number, across: number): boolean =>
    formulas[down]?.[across] !== undefined || values[down]?.[across] !== '';
  const cell = cellName(needed.row, needed.column);
  if (isTaken(0, 0)) return `${cell} is not empty: overwrite it?`;
  const taken = values.some((line, down) => line.some((_, across) => isTaken(down, across)));
  if (!taken) return undefined;
  return `The result needs ${rangeName(needed)}, and some of these cells are not empty. They are not overwritten, but ${cell} will show #SPILL! until you clear them. Insert it anyway?`;
}
