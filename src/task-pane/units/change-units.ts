import type { FunctionLibrary } from '../../functions/function-library';
import { HostError, type SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import { readProfile } from '../../units/profile';
import { type Book, openBook } from '../cell-formula/book';
import { backwards, type CellChange, makeChanges } from '../convert-typed/convert';
import type { Findings } from '../convert-typed/findings';
import { lookForTyped } from '../convert-typed/look';
import { typedSince } from '../convert-typed/typed-since';
import type { Progress } from '../work';
import { sameUnits, type UnitsCell, type WorkbookUnits } from '../workbook-units';
import { putTypedIn } from './unit-cells';

/** The profile in which numbers were typed; that of SiltUnits if there is no SiltTypedIn. */
export function typedProfile({ units, typedIn }: WorkbookUnits): Profile | undefined {
  return typedIn?.profile ?? (typedIn === undefined ? units?.profile : undefined);
}

/** Whether numbers were typed in units other than the ones that they are read in. */
export function isTypedOtherwise(now: WorkbookUnits): boolean {
  const typed = typedProfile(now);
  const read = now.units?.profile;
  return typed !== undefined && read !== undefined && !sameUnits(typed, read);
}

/** How many things the pane has to say about what was found. */
export function isEmpty({ plain, apart, byHand }: Findings): boolean {
  return plain.length + apart.length + byHand.length === 0;
}

export interface UnitsWanted {
  /** The new profile of SiltUnits. */
  readonly units: string;
  /** The new profile of SiltTypedIn; left out if typed numbers do not change. */
  readonly typedIn?: string;
  readonly conversions: readonly CellChange[];
}

/** A change of units that was made, with what is needed to undo it. */
export interface UnitsChange {
  readonly changes: readonly CellChange[];
  /** The workbook before it. */
  readonly before: Book;
  readonly from: Profile | undefined;
  /** The text of SiltUnits after it. */
  readonly to: string;
}

/** Changes units and typed numbers in one step, or nothing; returns the change, so that it can be undone. */
export async function changeUnits(
  host: SheetHost,
  now: WorkbookUnits,
  { units, typedIn, conversions }: UnitsWanted,
): Promise<UnitsChange> {
  const { units: unitsCell } = now;
  if (unitsCell?.place === undefined)
    throw new HostError('missing', 'This workbook has no cell SiltUnits; set the units first.');
  const changes = [...conversions, ...cellChange(unitsCell, units)];
  if (now.typedIn !== undefined) changes.push(...(typedIn === undefined ? [] : cellChange(now.typedIn, typedIn)));
  else await putTypedIn(host, unitsCell, typedIn ?? unitsCell.text);
  const before = await makeChanges(host, changes);
  return { changes, before, from: unitsCell.profile, to: units };
}

/** Undoes a change of units; what was typed since then is converted back with it. Returns how many such cells there were. */
export async function undoUnits(
  host: SheetHost,
  functionLibrary: FunctionLibrary,
  { changes, before, from, to }: UnitsChange,
  progress: Progress,
): Promise<number> {
  const since = await (from === undefined || from.text === to
    ? []
    : lookForTyped(host, functionLibrary, { from: readProfile(to), to: from }, progress).then(async (findings) =>
        typedSince(findings, { before, now: openBook(await host.readUsed(), []) }, changes),
      ));
  progress.finishing();
  await makeChanges(host, [...backwards(changes), ...since]);
  return since.length;
}

function cellChange({ place, text, isWorkedOut, refersTo }: UnitsCell, wanted: string): readonly CellChange[] {
  if (text === wanted) return [];
  if (place === undefined || isWorkedOut) {
    throw new HostError(
      'occupied',
      `${refersTo} holds a formula; change the cell that it reads, or type a profile there.`,
    );
  }
  const { row, column } = place.range;
  return [{ spot: { sheet: place.sheet, row, column }, before: text, after: wanted }];
}
