import type { SheetHost, Write } from '../../hosts/sheet-host';
import { typedFormula } from '../../workbooks/typed-formula';

/** A spreadsheet that was opened without the add-in keeps `#NAME?` in its cells until they are entered again. */
export async function reEnterFormulas(host: SheetHost): Promise<number> {
  const writes: Write[] = [];
  for (const { sheet, range, values, formulas } of await host.readUsed()) {
    formulas.forEach((line, down) => {
      line.forEach((formula, across) => {
        const value = values[down]?.[across];
        const isLost = typeof value === 'object' && value.error.code === '#NAME?';
        if (formula === undefined || !isLost || !/\bSILT\.|_xldudf_SILT_/i.test(formula)) return;
        writes.push({ sheet, row: range.row + down, column: range.column + across, cells: [[typedFormula(formula)]] });
      });
    });
  }
  if (writes.length > 0) await host.write(writes);
  return writes.length;
}
