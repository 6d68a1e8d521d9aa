import type { FunctionLibrary } from '../../functions/function-library';
import type { DefinedName, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { readProfile } from '../../units/profile';
import type { ReadyMade, ReadyProfile } from '../../workbooks/sheets/ready-made';
import { UserError } from '../user-error';
import { sameUnits, typedInName, unitsCaution, unitsName, type WorkbookUnits } from '../workbook-units';
import { freeName } from './free-name';
import { inProfile } from './in-profile';
import { renamed } from './rename';

/** What the open workbook has already. */
export interface Present {
  readonly sheets: readonly string[];
  readonly names: readonly DefinedName[];
  readonly units: WorkbookUnits;
}

export interface Prepared {
  readonly workbook: WorkbookData;
  /** Names of sheets that exist already, each with the new name it would get instead. */
  readonly clashes: ReadonlyMap<string, string>;
  readonly byHand: readonly string[];
}

/** The profile for new sheets: the workbook's own; undefined if it has none, so that one must be chosen. */
function profileOfWorkbook({ units, typedIn }: WorkbookUnits): string | undefined {
  if (units === undefined) return undefined;
  if (typedIn === undefined && units.profile !== undefined) {
    throw new UserError('This workbook has SiltUnits but no SiltTypedIn; set its units once in Units, then insert.');
  }
  const caution = unitsCaution({ units, typedIn });
  if (caution !== undefined) throw new UserError(caution);
  return units.text;
}

/**
 * Makes a ready-made workbook fit the open one: in its profile, with its units cells if it has them, under free
 * names. Throws a sentence if the workbook must be corrected first.
 */
export async function prepare(
  ready: ReadyMade,
  chosen: ReadyProfile,
  { sheets, names, units }: Present,
  functionLibrary: FunctionLibrary,
): Promise<Prepared> {
  const profile = readProfile(profileOfWorkbook(units) ?? chosen);
  const from = readProfile(profile.name);
  const built = ready.build(profile.name);
  const { workbook, byHand } = sameUnits(from, profile)
    ? { workbook: built, byHand: [] }
    : await inProfile(built, { from, to: profile }, functionLibrary);
  const own = units.units === undefined ? workbook : withoutUnits(workbook);
  const taken = [...sheets];
  const clashes = new Map<string, string>();
  const newNames = new Map<string, string>();
  const held = new Set(names.map(({ name }) => name.toLowerCase()));
  const planned = own.sheets.map(({ name }) => name);
  for (const sheet of own.sheets) {
    if (!taken.some((one) => one.toLowerCase() === sheet.name.toLowerCase())) continue;
    const next = freeName(sheet.name, [...taken, ...planned]);
    clashes.set(sheet.name, next);
    taken.push(next);
    for (const { name } of sheet.tables ?? []) newNames.set(name, `${name}${next.slice(sheet.name.length).trim()}`);
  }
  for (const { name } of own.names ?? []) if (held.has(name.toLowerCase())) newNames.set(name, freeWord(name, held));
  return { workbook: renamed(own, { sheets: clashes, names: newNames }), clashes, byHand };
}

/** A workbook that has its units already keeps them; new sheets follow those. */
function withoutUnits(workbook: WorkbookData): WorkbookData {
  const own = new Set([unitsName.toLowerCase(), typedInName.toLowerCase()]);
  const names = (workbook.names ?? []).filter(({ name }) => !own.has(name.toLowerCase()));
  const places = (workbook.names ?? [])
    .filter(({ name }) => own.has(name.toLowerCase()))
    .map(({ refersTo }) => refersTo);
  const isUnits = ({ name }: SheetData): boolean =>
    places.some((place) => place.startsWith(`'${name}'!`) || place.startsWith(`${name}!`));
  return { ...workbook, names, sheets: workbook.sheets.filter((sheet) => !isUnits(sheet)) };
}

function freeWord(name: string, held: ReadonlySet<string>): string {
  for (let number = 2; ; number++) if (!held.has(`${name}${number}`.toLowerCase())) return `${name}${number}`;
}
