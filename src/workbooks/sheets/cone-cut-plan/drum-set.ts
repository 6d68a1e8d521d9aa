/**
 * The set of cone sheets that a sheet of drums belongs to, by what follows the names of all its sheets: nothing, or for a
 * later set ` 2` or ` (2)`, as spreadsheets number sheets of one name. Undefined for a sheet that is not one of drums.
 */
export function drumSet(sheet: string): string | undefined {
  return /^drums( \d+| \(\d+\))?$/i.exec(sheet)?.[0].slice('drums'.length);
}
