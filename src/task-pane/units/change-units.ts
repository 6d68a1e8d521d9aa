import { HostError, type SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import { backwards, type CellChange, makeChanges } from '../convert-typed/convert';
import type { Findings } from '../convert-typed/findings';
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

/** Changes units and typed numbers in one step, or nothing; returns the changes, so that they can be undone. */
export async function changeUnits(
  host: SheetHost,
  now: WorkbookUnits,
  { units, typedIn, conversions }: UnitsWanted,
): Promise<readonly CellChange[]> {
  const { units: unitsCell } = now;
  if (unitsCell?.place === undefined)
    throw new HostError('missing', 'This workbook has no cell SiltUnits; set the units first.');
  const changes = [...conversions, ...cellChange(unitsCell, units)];
  if (now.typedIn !== undefined) changes.push(...(typedIn === undefined ? [] : cellChange(now.typedIn, typedIn)));
  else await putTypedIn(host, unitsCell, typedIn ?? unitsCell.text);
  await makeChanges(host, changes);
  return changes;
}

export function undoChanges(host: SheetHost, changes: readonly CellChange[]): Promise<void> {
  return makeChanges(host, backwards(changes));
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
