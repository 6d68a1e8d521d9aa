import type { ZipEntry } from './zip-container';

/** The fields that a file's own header and the zip's directory share, from `flags` to the length of the extra field. */
function sharedFields(entry: ZipEntry, extraLength: number): Uint8Array {
  const view = new DataView(new ArrayBuffer(24));
  view.setUint16(0, entry.flags, true);
  view.setUint16(2, entry.method, true);
  view.setUint32(4, entry.stamp, true);
  view.setUint32(8, entry.crc, true);
  view.setUint32(12, entry.packed.length, true);
  view.setUint32(16, entry.size, true);
  view.setUint16(20, entry.nameBytes.length, true);
  view.setUint16(22, extraLength, true);
  return new Uint8Array(view.buffer);
}

function numbers(...fields: readonly (readonly [bytes: 2 | 4, value: number])[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(fields.reduce((sum, [bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [bytes, value] of fields) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(view.buffer);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

/** A zip of the files in their order, packed bytes as they are. */
export function writeZip(entries: readonly ZipEntry[]): Uint8Array {
  const files: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const entry of entries) {
    const shared = sharedFields(entry, 0);
    const file = [numbers([4, 0x04034b50], [2, entry.versions >>> 16]), shared, entry.nameBytes, entry.packed];
    directory.push(
      numbers([4, 0x02014b50], [4, entry.versions]),
      sharedFields(entry, entry.extra.length),
      numbers([2, entry.comment.length], [2, 0], [2, entry.internal], [4, entry.external], [4, at]),
      entry.nameBytes,
      entry.extra,
      entry.comment,
    );
    files.push(...file);
    at += file.reduce((sum, part) => sum + part.length, 0);
  }
  const directorySize = directory.reduce((sum, part) => sum + part.length, 0);
  const count = entries.length;
  const end = numbers([4, 0x06054b50], [4, 0], [2, count], [2, count], [4, directorySize], [4, at], [2, 0]);
  return joined([...files, ...directory, end]);
}
