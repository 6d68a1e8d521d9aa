import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import { PacketMistake } from '../../workbooks/packet/packet-cells';
import { UserError } from '../user-error';
import type { DrawingFile } from './drawing-file';

export type PacketFormat = 'pdf' | 'xlsx';

const types: Readonly<Record<PacketFormat, string>> = {
  pdf: 'application/pdf',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** The job's papers as one file, from the workbook's present cells. */
export async function jobPacket(
  host: SheetHost,
  functions: Pick<FunctionLibrary, 'catalogue' | 'adapt'>,
  units: string,
  format: PacketFormat,
): Promise<DrawingFile> {
  const blocks = await host.readUsed();
  const write = await writerOf(format);
  const sheets = blocks.map(({ sheet, range, values }) => ({
    name: sheet,
    rows: [
      ...Array.from({ length: range.row }, () => []),
      ...values.map((line) => [...Array.from({ length: range.column }, () => ''), ...line]),
    ],
  }));
  try {
    const content = (await write({ sheets, units, functions })) as Uint8Array<ArrayBuffer>;
    return { name: `job-packet.${format}`, type: types[format], content };
  } catch (error) {
    if (error instanceof PacketMistake) throw new UserError(`No packet: ${error.message}.`);
    throw error;
  }
}

async function writerOf(format: PacketFormat) {
  if (format === 'pdf')
    return (await import(/* webpackChunkName: "job-packet" */ '../../workbooks/packet/packet')).packetFile;
  // In one script with the .xlsx library, which the workbench loads to open and save files.
  return (await import(/* webpackChunkName: "xlsx" */ '../../workbooks/packet/packet-workbook')).packetWorkbook;
}
