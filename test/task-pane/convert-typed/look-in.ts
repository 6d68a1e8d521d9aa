import { functionLibrary } from '../../../src/functions/function-library';
import { cellName } from '../../../src/hosts/address';
import type { CellResult } from '../../../src/hosts/workbook-model';
import type { Conversion, Findings } from '../../../src/task-pane/convert-typed/findings';
import { lookForTyped } from '../../../src/task-pane/convert-typed/look';
import { readProfile } from '../../../src/units/profile';
import { MemoryHost } from '../memory-host';

export const unitsCells = { 'Silt units': { B3: 'US', B4: 'US' } } as const;
export const unitsNames = { SiltUnits: "'Silt units'!$B$3", SiltTypedIn: "'Silt units'!$B$4" } as const;

export const noProgress = { step: async () => undefined, finishing: () => undefined };

/** A workbook of one sheet beside the units cells. */
export function hostWith(cells: Readonly<Record<string, CellResult>>, names: Readonly<Record<string, string>> = {}) {
  return new MemoryHost({ Farm: cells, ...unitsCells }, { ...unitsNames, ...names });
}

/** What a change of units finds on that sheet. */
export function look(
  cells: Readonly<Record<string, CellResult>>,
  { from = 'US', to = 'metric', names = {}, host = hostWith(cells, names) } = {},
): Promise<Findings> {
  return lookForTyped(host, functionLibrary, { from: readProfile(from), to: readProfile(to) }, noProgress);
}

/** Found cells as `B5 22.5 in -> 571.5 mm`, with the reason behind where one is listed apart. */
export function lines(found: readonly Conversion[]): string[] {
  return found
    .map(({ spot, shown, choices, apart }) => {
      const next = choices.map((choice) => choice.shown).join(' | ');
      return `${cellName(spot.row, spot.column)} ${shown} -> ${next}${apart === undefined ? '' : ` (${apart})`}`;
    })
    .sort();
}
