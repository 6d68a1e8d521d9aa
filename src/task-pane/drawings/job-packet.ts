import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import { PacketMistake } from '../../workbooks/packet/packet-cells';
import { UserError } from '../user-error';
import type { DrawingFile } from './drawing-file';

/** The job's papers as one file, from the workbook's cells as they stand. */
export async function jobPacket(
  host: SheetHost,
  functions: Pick<FunctionLibrary, 'catalogue' | 'adapt'>,
  units: string,
): Promise<DrawingFile> {
  const blocks = await host.readUsed();
  const { packetFile } = await import(/* webpackChunkName: "job-packet" */ '../../workbooks/packet/packet');
  const sheets = blocks.map(({ sheet, range, values }) => ({
    name: sheet,
    rows: [
      ...Array.from({ length: range.row }, () => []),
      ...values.map((line) => [...Array.from({ length: range.column }, () => ''), ...line]),
    ],
  }));
  try {
    const content = packetFile({ sheets, units, functions }) as Uint8Array<ArrayBuffer>;
    return { name: 'job-packet.pdf', type: 'application/pdf', content };
  } catch (error) {
    if (error instanceof PacketMistake) throw new UserError(`No packet: ${error.message}`);
    throw error;
  }
}
