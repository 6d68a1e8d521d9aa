import type { SheetHost } from '../../hosts/sheet-host';
import { saveFile } from '../save-file';
import { waitForResults } from '../still-calculating';
import type { PaneContext } from '../view';
import { jobPacket, type PacketFormat } from './job-packet';

/** Saves the papers of the whole job, with progress shown. */
export async function savePacket(
  { work, notify, functionLibrary, units }: PaneContext,
  host: SheetHost,
  format: PacketFormat,
): Promise<void> {
  await work('Making the job packet', async ({ finishing }) => {
    await waitForResults(host);
    const file = await jobPacket(host, functionLibrary, units.profileText(), format);
    finishing();
    saveFile(file);
    const advice = format === 'pdf' ? ' Print it at 100 % and measure the bars first.' : '';
    notify('done', `Saved ${file.name}.${advice}`);
  });
}
