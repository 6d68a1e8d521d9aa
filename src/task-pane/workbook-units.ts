import { parseRange, splitSheet } from '../hosts/address';
import type { Place, SheetHost } from '../hosts/sheet-host';
import type { DefinedName } from '../hosts/workbook-model';
import { type Profile, readProfile } from '../units/profile';
import { Unreadable } from '../units/unreadable';
import { unitsSheetName } from '../workbooks/sheets/units-sheet';
import { shownValue } from './follow/grid';

export const unitsName = 'SiltUnits';
export const typedInName = 'SiltTypedIn';

/** One of the two named cells: its place and its profile. */
export interface UnitsCell {
  readonly refersTo: string;
  /** Undefined if the name does not refer to one cell. */
  readonly place: Place | undefined;
  readonly text: string;
  /** True if the cell holds a formula, which must not be overwritten. */
  readonly isWorkedOut: boolean;
  /** Undefined if the cell holds no profile; `fault` says why. */
  readonly profile: Profile | undefined;
  readonly fault: string | undefined;
}

/** The two units cells of a workbook; undefined if the name is not defined. */
export interface WorkbookUnits {
  readonly units: UnitsCell | undefined;
  readonly typedIn: UnitsCell | undefined;
}

export const noUnits: WorkbookUnits = { units: undefined, typedIn: undefined };

export async function readWorkbookUnits(host: Pick<SheetHost, 'read' | 'names'>): Promise<WorkbookUnits> {
  const names = await host.names();
  const find = async (wanted: string): Promise<UnitsCell | undefined> => {
    const name = names.find((one) => one.name.toLowerCase() === wanted.toLowerCase());
    return name === undefined ? undefined : readCell(host, name.refersTo);
  };
  return { units: await find(unitsName), typedIn: await find(typedInName) };
}

async function readCell(host: Pick<SheetHost, 'read'>, refersTo: string): Promise<UnitsCell> {
  const place = oneCell(refersTo);
  if (place === undefined) {
    const fault = `the name refers to ${refersTo}, not to one cell`;
    return { refersTo, place, text: '', isWorkedOut: false, profile: undefined, fault };
  }
  const { values, formulas } = await host.read(place);
  const value = values[0]?.[0] ?? '';
  const text = shownValue(value);
  const cell = { refersTo, place, text, isWorkedOut: formulas[0]?.[0] !== undefined };
  try {
    return { ...cell, profile: readProfile(typeof value === 'object' ? text : value), fault: undefined };
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return { ...cell, profile: undefined, fault: error.message };
  }
}

/** The cell that a name refers to; undefined for ranges, constants and formulas. */
export function oneCell(refersTo: string): Place | undefined {
  const { sheet, rest } = splitSheet(refersTo.replace(/^=/, ''));
  const range = parseRange(rest);
  if (sheet === undefined || range === undefined || range.rows !== 1 || range.columns !== 1) return undefined;
  return { sheet, range };
}

/** Whether two profiles read every number in the same way. */
export function sameUnits(one: Profile, other: Profile): boolean {
  return [...one.index].every(([kind, unit]) => {
    const there = other.index.get(kind);
    return there !== undefined && there.scale === unit.scale && there.shift === unit.shift;
  });
}

/** Our names that the workbook uses for something else. */
export function foreignNames({ units, typedIn }: WorkbookUnits): readonly DefinedName[] {
  const found: DefinedName[] = [];
  if (units !== undefined && isForeign(units)) found.push({ name: unitsName, refersTo: units.refersTo });
  if (typedIn !== undefined && isForeign(typedIn)) found.push({ name: typedInName, refersTo: typedIn.refersTo });
  return found;
}

function isForeign({ place, profile, text }: UnitsCell): boolean {
  if (place === undefined) return true;
  return profile === undefined && text.trim() !== '' && place.sheet !== unitsSheetName;
}

/** The sentence to show while typed numbers are in other units than the functions read; undefined where they agree. */
export function unitsCaution({ units, typedIn }: WorkbookUnits): string | undefined {
  if (units === undefined || typedIn === undefined || foreignNames({ units, typedIn }).length > 0) return undefined;
  if (units.profile === undefined) return `SiltUnits: ${units.fault}; choose a profile in Units.`;
  if (typedIn.profile === undefined)
    return `SiltTypedIn: ${typedIn.fault}; choose in Units what numbers were typed in.`;
  if (sameUnits(units.profile, typedIn.profile)) return undefined;
  return `Numbers were typed in ${typedIn.text} but are read as ${units.text}; convert them in Units before using any result.`;
}
