import type { DefinedName, SheetData } from '../../hosts/workbook-model';
import { kinds } from '../../units/kinds';
import { columnWidths, framed, print } from './frame';
import type { ReadyProfile } from './sheet-draft';

/** The sheet and the names that hold the units of a workbook. Some programs refuse a name that equals a sheet's name. */
export const unitsSheetName = 'Silt units';
export const unitsNames: readonly DefinedName[] = [
  {
    name: 'SiltUnits',
    refersTo: `'${unitsSheetName}'!$B$4`,
    comment: 'The units profile in which SILT functions read and give numbers.',
  },
  {
    name: 'SiltTypedIn',
    refersTo: `'${unitsSheetName}'!$B$5`,
    comment: 'The units profile in which the numbers of this workbook were typed.',
  },
];

/** The table has room for this many kinds. */
const kindRows = 60;

/** The sheet with the cells SiltUnits and SiltTypedIn and the table of kinds and units. */
export function unitsSheet(profile: ReadyProfile): SheetData {
  const widths = [26, 22, 70];
  const draft = framed({
    name: unitsSheetName,
    title: 'Units of this workbook',
    step: 'A number without a unit is in the unit that this table gives for its kind. Text with a unit, such as 3 1/4 in or 55 gal, always keeps that unit. Changing the profile does not convert the numbers already typed: let the task pane convert them, or type them again and then change the second cell.',
    widths,
  });
  draft
    .put('A4', 'Units in use', 'heading')
    .put('B4', profile, 'input', 'US or metric, with exceptions if you like: US, flow L/min, temperature C')
    .put('C4', 'the cell SiltUnits, the first argument of every function', 'note')
    .put('A5', 'Numbers were typed in', 'heading')
    .put('B5', profile, 'input', 'Set this to the same text after you convert every typed number.')
    .put('C5', 'the cell SiltTypedIn', 'note')
    .put('A7', '=SILT.UNIT.LIST(SiltUnits,TRUE)', 'heading')
    .fill('B7:C7', 'heading')
    .fill(`A8:C${7 + kindRows}`, 'result')
    .choice('B4:B5', ['US', 'metric'], 'US or metric; exceptions may follow, such as US, flow L/min', false);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: '7F7F7F',
    print: print(profile, `A1:C${7 + kinds.length}`, { landscape: false, fitToHeight: 1, titleRows: '7:7' }),
  });
}
