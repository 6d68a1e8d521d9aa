import { deflateSync, inflateSync } from 'fflate';
import { crc32 } from './crc32';

/** One file inside a zip, with its packed bytes. */
export interface ZipEntry {
  readonly name: string;
  readonly nameBytes: Uint8Array;
  readonly method: number;
  readonly flags: number;
  /** Date and time as the zip stores them. */
  readonly stamp: number;
  readonly crc: number;
  readonly packed: Uint8Array;
  readonly size: number;
  readonly extra: Uint8Array;
  readonly comment: Uint8Array;
  readonly versions: number;
  readonly internal: number;
  readonly external: number;
}

/** The bytes are not a whole zip; the message says what is wrong. */
export class DamagedZip extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'DamagedZip';
  }
}

const endSignature = 0x06054b50;
const directorySignature = 0x02014b50;
const localSignature = 0x04034b50;
const stored = 0;
const deflated = 8;
const encrypted = 1;
/** Set where sizes follow the data; they are written before the data here, so the flag is cleared. */
const sizesFollow = 8;
const utf8Names = 0x800;

function endOfDirectory(view: DataView): number {
  // A comment of up to 65535 bytes may follow the record of 22 bytes.
  const earliest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= earliest; at -= 1) if (view.getUint32(at, true) === endSignature) return at;
  throw new DamagedZip('it is no zip file, or its end is missing');
}

function nameOf(bytes: Uint8Array, flags: number): string {
  if (flags & utf8Names) return new TextDecoder().decode(bytes);
  return String.fromCharCode(...bytes);
}

/** The files of a zip in the order of its directory. */
export function readZip(bytes: Uint8Array): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const end = endOfDirectory(view);
    const count = view.getUint16(end + 10, true);
    let at = view.getUint32(end + 16, true);
    if (count === 0xffff || at === 0xffffffff) throw new DamagedZip('it is larger than a plain zip can be');
    return Array.from({ length: count }, () => {
      const [entry, next] = readEntry(bytes, view, at);
      at = next;
      return entry;
    });
  } catch (thrown) {
    if (thrown instanceof RangeError) throw new DamagedZip('it is cut short');
    throw thrown;
  }
}

function readEntry(bytes: Uint8Array, view: DataView, at: number): [entry: ZipEntry, next: number] {
  if (view.getUint32(at, true) !== directorySignature) throw new DamagedZip('its directory is broken');
  const flags = view.getUint16(at + 8, true);
  const packedSize = view.getUint32(at + 20, true);
  const [nameLength, extraLength, commentLength] = [28, 30, 32].map((field) => view.getUint16(at + field, true)) as [
    number,
    number,
    number,
  ];
  const nameEnd = at + 46 + nameLength;
  const nameBytes = bytes.slice(at + 46, nameEnd);
  const name = nameOf(nameBytes, flags);
  if (flags & encrypted) throw new DamagedZip('it is locked with a password');
  const local = view.getUint32(at + 42, true);
  if (view.getUint32(local, true) !== localSignature) throw new DamagedZip(`${name} is not where its directory says`);
  const data = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (data + packedSize > bytes.length) throw new DamagedZip(`${name} is cut short`);
  const entry: ZipEntry = {
    name,
    nameBytes,
    flags: flags & ~sizesFollow,
    method: view.getUint16(at + 10, true),
    stamp: view.getUint32(at + 12, true),
    crc: view.getUint32(at + 16, true),
    packed: bytes.subarray(data, data + packedSize),
    size: view.getUint32(at + 24, true),
    extra: bytes.slice(nameEnd, nameEnd + extraLength),
    comment: bytes.slice(nameEnd + extraLength, nameEnd + extraLength + commentLength),
    versions: view.getUint32(at + 4, true),
    internal: view.getUint16(at + 36, true),
    external: view.getUint32(at + 38, true),
  };
  return [entry, nameEnd + extraLength + commentLength];
}

/** A file's bytes, unpacked and compared with their checksum. */
export function unpack(entry: ZipEntry): Uint8Array {
  if (entry.method !== stored && entry.method !== deflated)
    throw new DamagedZip(`${entry.name} is packed in a way that is not read here`);
  let bytes: Uint8Array;
  try {
    bytes = entry.method === stored ? entry.packed : inflateSync(entry.packed, { out: new Uint8Array(entry.size) });
  } catch {
    throw new DamagedZip(`${entry.name} cannot be unpacked`);
  }
  if (bytes.length !== entry.size || crc32(bytes) !== entry.crc) throw new DamagedZip(`${entry.name} is damaged`);
  return bytes;
}

/** The same file with other contents; name, date and place in the zip stay. */
export function repack(entry: ZipEntry, bytes: Uint8Array): ZipEntry {
  return {
    ...entry,
    method: deflated,
    crc: crc32(bytes),
    size: bytes.length,
    packed: deflateSync(bytes, { level: 9 }),
  };
}

/** A new file. The stamp is fixed, 1980-01-01 00:00, the first that a zip can store, so that bytes do not depend on the day. */
export function newEntry(name: string, bytes: Uint8Array): ZipEntry {
  const nameBytes = new TextEncoder().encode(name);
  const blank = new Uint8Array(0);
  const stamp = 0x00210000;
  const head = { name, nameBytes, flags: 0, stamp, extra: blank, comment: blank, versions: (20 << 16) | 20 };
  return repack({ ...head, method: deflated, crc: 0, size: 0, packed: blank, internal: 0, external: 0 }, bytes);
}
