import type { FunctionLibrary } from '../../functions/function-library';
import { cellName, quoteSheet } from '../../hosts/address';
import type { Block, SheetHost, Write } from '../../hosts/sheet-host';
import type { SheetData, WorkbookData } from '../../hosts/workbook-model';
import { mostDrums } from '../../workbooks/sheets/cone-cut-plan/drums';
import { coneCutPlan } from '../../workbooks/sheets/cone-cut-plan/workbook';
import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { insertSheets } from '../sheets/insert-sheets';
import { prepare } from '../sheets/prepare';
import type { UnitsWatch } from '../units-watch';
import { UserError } from '../user-error';
import type { Progress } from '../work';
import { typedInName, unitsCaution, unitsName, type WorkbookUnits } from '../workbook-units';
import { fields } from './fields';
import { findJobSheets, type JobSheets, valueAt } from './find-sheets';
import { entryAt, type Job, markingWrites, nameJob } from './job';
import { isAsBuilt } from './untouched';

export interface Around {
  readonly host: SheetHost;
  readonly functionLibrary: FunctionLibrary;
  readonly units: UnitsWatch;
}

const profiles: readonly ReadyProfile[] = ['US', 'metric'];
const firstRow = 5;
const lastRow = firstRow + mostDrums - 1;
const letters = [...'ABCDEFGHIJ'];

/** What a start would find in the open workbook. */
export interface Ground {
  readonly units: WorkbookUnits;
  /** The cone sheets that are there. */
  readonly sheets: JobSheets | undefined;
  /** The profile that they were built for, where nothing on them was typed over. */
  readonly asBuilt: ReadyProfile | undefined;
  /** The first free row for a drum. */
  readonly free: number | undefined;
  /** Whether the units can still be chosen. */
  readonly choosesUnits: boolean;
}

export async function lookAround({ host, units }: Around): Promise<Ground> {
  const [blocks, now] = await Promise.all([host.readUsed(), units.refresh()]);
  const sheets = findJobSheets(blocks);
  const asBuilt = sheets && profiles.find((profile) => now.units?.text === profile && isUntouched(blocks, profile));
  const drums = blocks.find(({ sheet }) => sheet === sheets?.drums);
  const free = drums && rowsFrom(firstRow).find((row) => letters.every((letter) => isBlank(drums, `${letter}${row}`)));
  return { units: now, sheets, asBuilt, free, choosesUnits: now.units === undefined || asBuilt !== undefined };
}

/** Makes a workbook ready for a drum: uses the sheets that are there, or adds them. What was typed is never written over. */
export async function startJob(around: Around, chosen: ReadyProfile, progress: Progress): Promise<Job> {
  const { host, units } = around;
  const ground = await lookAround(around);
  const caution = unitsCaution(ground.units);
  if (caution !== undefined) throw new UserError(caution);
  let { sheets } = ground;
  let row = ground.asBuilt === undefined ? ground.free : firstRow;
  const writes: Write[] = [];
  if (sheets === undefined || row === undefined) {
    sheets = await addConeSheets(around, chosen, progress);
    row = firstRow;
  } else if (ground.asBuilt !== undefined) writes.push(...emptied(ground, chosen, sheets));
  progress.finishing();
  const profile = ground.choosesUnits ? chosen : ground.units.units?.profile?.name;
  writes.push(...usualEntries(sheets, row, profile ?? chosen), ...markingWrites(sheets.drums, row, 'measure'));
  await host.write(writes);
  await nameJob(host, sheets.drums);
  await units.refresh();
  return { sheets, row, step: 'measure' };
}

/** The next free row of the job's sheet, for another drum; undefined where it is full. */
export async function nextDrum({ host, units }: Around, job: Job): Promise<Job | undefined> {
  const { free } = await lookAround({ host, units } as Around);
  const profile = units.now().units?.profile?.name;
  if (free === undefined || profile === undefined) return undefined;
  await host.write([...usualEntries(job.sheets, free, profile), ...markingWrites(job.sheets.drums, free, 'measure')]);
  return { ...job, row: free, step: 'measure' };
}

/** What most first cones have, and what shows this drum where a sheet shows one at a time. */
function usualEntries(sheets: JobSheets, row: number, profile: ReadyProfile): readonly Write[] {
  const { drums, patterns, stand } = sheets;
  const name = `=${quoteSheet(drums)}!A${row}`;
  return [
    entryAt(drums, `A${row}`, 'My drum'),
    entryAt(drums, `G${row}`, fields.angle.worked?.formula('45', row) ?? ''),
    entryAt(drums, `H${row}`, 1),
    entryAt(drums, `I${row}`, profile === 'US' ? 0.75 : 20),
    entryAt(patterns, 'B15', name),
    entryAt(stand, 'B25', name),
  ];
}

/** Takes the invented drums out of sheets that nobody has typed into, and turns them to the chosen units. */
function emptied({ asBuilt, units }: Ground, chosen: ReadyProfile, sheets: JobSheets): readonly Write[] {
  const writes: Write[] = [];
  if (asBuilt !== undefined && asBuilt !== chosen) {
    const before = coneCutPlan(asBuilt);
    for (const { name, cells } of coneCutPlan(chosen).sheets) {
      const old = before.sheets.find((sheet) => sheet.name === name);
      for (const cell of cells) {
        const was = old?.cells.find(({ row, column }) => row === cell.row && column === cell.column);
        if (cell.value === undefined || typeof cell.value === 'object' || was?.value === cell.value) continue;
        if (name === 'Silt units' || cell.formula !== undefined) continue;
        writes.push(entryAt(name, cellName(cell.row, cell.column), cell.value));
      }
    }
    for (const cell of [units.units, units.typedIn]) {
      if (cell?.place === undefined) throw new UserError(`${unitsName} and ${typedInName} must be cells; see Units.`);
      const { row, column } = cell.place.range;
      writes.push({ sheet: cell.place.sheet, row, column, cells: [[chosen]] });
    }
  }
  const blank = letters.map(() => '');
  for (const row of rowsFrom(firstRow)) writes.push({ sheet: sheets.drums, row: row - 1, column: 0, cells: [blank] });
  return writes;
}

async function addConeSheets({ host, functionLibrary, units }: Around, chosen: ReadyProfile, progress: Progress) {
  const [sheets, names] = await Promise.all([host.sheets(), host.names()]);
  const ready = { id: 'cone-cut-plan', title: 'Cone cut plan', build: withoutDrums };
  const { workbook } = await prepare(ready, chosen, { sheets, names, units: units.now() }, functionLibrary);
  await insertSheets(host, workbook, progress);
  await units.refresh();
  const added = new Set(workbook.sheets.map(({ name }) => name));
  const found = findJobSheets((await host.readUsed()).filter(({ sheet }) => added.has(sheet)));
  if (found === undefined) throw new Error('the sheets that were added are not as they were built');
  return found;
}

function withoutDrums(profile: ReadyProfile): WorkbookData {
  const built = coneCutPlan(profile);
  const isDrum = ({ row, column }: { readonly row: number; readonly column: number }): boolean =>
    row >= firstRow - 1 && row < lastRow && column < letters.length;
  const empty = (sheet: SheetData): SheetData => ({
    ...sheet,
    cells: sheet.cells.map((cell) => {
      if (!isDrum(cell) || cell.formula !== undefined) return cell;
      const { value: _, ...rest } = cell;
      return rest;
    }),
  });
  return { ...built, sheets: built.sheets.map((sheet) => (sheet.name === 'Drums' ? empty(sheet) : sheet)) };
}

function rowsFrom(first: number): readonly number[] {
  return Array.from({ length: lastRow - first + 1 }, (_, i) => first + i);
}

function isBlank(block: Block, address: string): boolean {
  return valueAt(block, address) === '';
}

/** Whether the cone sheets hold what they were built with, and nothing more among the drums. */
function isUntouched(blocks: readonly Block[], profile: ReadyProfile): boolean {
  const built = coneCutPlan(profile).sheets.filter(({ name }) => name !== 'Start' && name !== 'Silt units');
  const drums = blocks.find(({ sheet }) => sheet === 'Drums');
  const spare = rowsFrom(firstRow + 3);
  return (
    drums !== undefined &&
    spare.every((row) => letters.every((letter) => isBlank(drums, `${letter}${row}`))) &&
    built.every((sheet) => isAsBuilt(blocks, sheet))
  );
}
