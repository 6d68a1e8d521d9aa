import { quoteSheet } from '../../hosts/address';
import type { Write } from '../../hosts/sheet-host';
import { materialsWorkbook } from '../../workbooks/sheets/materials-sheet/workbook';
import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { insertSheets } from '../sheets/insert-sheets';
import { prepare } from '../sheets/prepare';
import type { Progress } from '../work';
import { findJobSheets, type JobSheets, type SheetRole } from './find-sheets';
import { entryAt, type Job } from './job';
import type { Around } from './start-job';
import { isAsBuilt } from './untouched';

/**
 * What the bank's cells take from the cone cut plan, so that one figure is typed once: by their rows on Bank, the sheet
 * and the cell, `#` for the drum's row.
 */
const links: Readonly<Record<string, readonly [SheetRole, string]>> = {
  B6: ['drums', 'K#'],
  B8: ['drums', 'F#'],
  B9: ['drums', 'G#'],
  B10: ['drums', 'H#'],
  B11: ['drums', 'I#'],
  B12: ['drums', 'C15'],
  B13: ['patterns', 'F26'],
  B14: ['drums', 'C18'],
  B15: ['drums', 'C19'],
  B16: ['drums', 'C20'],
  B17: ['baseMix', 'B16'],
  B18: ['baseMix', 'B17'],
  B21: ['stand', 'B16'],
  B22: ['stand', 'B17'],
  B23: ['stand', 'B21'],
};

/** Adds the materials sheets for the job's drum, or uses those that nobody has typed into; gives the job that has them. */
export async function withMaterials(around: Around, job: Job, today: string, progress: Progress): Promise<Job> {
  const { host } = around;
  if (job.sheets.bank !== undefined) return linkedTo(around, job, progress);
  const blocks = await host.readUsed();
  const own = materialsWorkbook(around.units.now().units?.profile?.name ?? 'metric').sheets;
  const isThere = own
    .filter(({ name }) => name !== 'Start' && name !== 'Silt units')
    .every((s) => isAsBuilt(blocks, s));
  const names = isThere ? new Map<string, string>() : await addSheets(around, progress);
  const named = (name: string): string => names.get(name) ?? name;
  const sheets: JobSheets = {
    ...job.sheets,
    bank: named('Bank'),
    parts: named('Parts'),
    materials: named('Materials'),
    calendar: named('Calendar'),
  };
  const next = { ...job, sheets };
  progress.finishing();
  await host.write([
    ...linkWrites(next),
    entryAt(named('Bank'), 'B5', 1),
    entryAt(named('Bank'), 'B7', ''),
    { sheet: named('Materials'), row: 7, column: 0, cells: [['', '', '', '']] },
    entryAt(named('Calendar'), 'B4', today),
  ]);
  return { ...next, sheets: findJobSheets(await host.readUsed(), job.sheets.drums) ?? sheets };
}

/** Turns a bank that was linked to another drum to this one; whatever a person put in place of a link stays. */
async function linkedTo({ host }: Around, job: Job, progress: Progress): Promise<Job> {
  const bank = job.sheets.bank ?? '';
  const { formulas } = await host.read({ sheet: bank, range: { row: 0, column: 1, rows: 23, columns: 1 } });
  const withoutRow = (formula: unknown): string => String(formula).replace(/\d+$/, '');
  const writes = linkWrites(job).filter(({ row, cells }) => {
    const [before, link] = [formulas[row]?.[0], cells[0]?.[0]];
    return before !== link && withoutRow(before) === withoutRow(link);
  });
  progress.finishing();
  if (writes.length > 0) await host.write(writes);
  return job;
}

function linkWrites(job: Job): readonly Write[] {
  const { sheets, row } = job;
  return Object.entries(links).map(([address, [role, cell]]) =>
    entryAt(sheets.bank ?? '', address, `=${quoteSheet(sheets[role] ?? '')}!${cell.replace('#', String(row))}`),
  );
}

/** Adds the sheets after the others; gives the names that they got in place of their own. */
async function addSheets({ host, functionLibrary, units }: Around, progress: Progress) {
  const [sheets, names] = await Promise.all([host.sheets(), host.names()]);
  const build = (profile: ReadyProfile) => {
    const built = materialsWorkbook(profile);
    // The cone cut plan has a sheet that says how cells look already.
    return { ...built, sheets: built.sheets.filter(({ name }) => name !== 'Start') };
  };
  const ready = { id: 'materials-sheet', title: 'Materials sheet', build };
  const present = { sheets, names, units: units.now() };
  const { workbook, clashes } = await prepare(ready, 'metric', present, functionLibrary);
  await insertSheets(host, workbook, progress);
  return clashes;
}
