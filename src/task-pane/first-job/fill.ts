import type { SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import { contentOf, replacedBy } from './entries';
import { cellOf, type FieldId, fields } from './fields';
import { entryAt, type Job, sheetOf } from './job';

/** Writes what was typed into a field's cell, in one step that can be undone. Throws ArgumentError, and then writes nothing. */
export async function fillField(
  host: SheetHost,
  job: Job,
  id: FieldId,
  { text, profile }: { readonly text: string; readonly profile: Profile },
): Promise<void> {
  const content = contentOf(id, text, job.row, profile);
  const at = (one: FieldId, value: typeof content) =>
    entryAt(sheetOf(job, fields[one].sheet), cellOf(one, job.row), value);
  await host.write([at(id, content), ...replacedBy(id).map((other) => at(other, ''))]);
}
