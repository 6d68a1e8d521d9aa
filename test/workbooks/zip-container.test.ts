import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../src/workbooks/crc32';
import { DamagedZip, newEntry, readZip, repack, unpack } from '../../src/workbooks/zip-container';
import { writeZip } from '../../src/workbooks/zip-writer';

const made = zipSync(
  { 'one.txt': strToU8('one '.repeat(50)), 'föld/two.bin': new Uint8Array([0, 1, 2, 255]), empty: new Uint8Array(0) },
  { mtime: new Date(2020, 0, 2), comment: 'kept' },
);

describe('a zip', () => {
  it('has the checksum of the published check value', () => {
    // The check value of CRC-32/ISO-HDLC for the text 123456789 (Williams, "A painless guide to CRC error detection algorithms", 1993).
    expect(crc32(strToU8('123456789'))).toBe(0xcbf43926);
  });

  it('is read when another library packed it', () => {
    const entries = readZip(made);
    expect(entries.map((entry) => entry.name)).toEqual(['one.txt', 'föld/two.bin', 'empty']);
    expect(strFromU8(unpack(entries[0]!))).toBe('one '.repeat(50));
    expect([...unpack(entries[1]!)]).toEqual([0, 1, 2, 255]);
    expect(unpack(entries[2]!).length).toBe(0);
  });

  it('is written so that another library unpacks it, each file packed as it was', () => {
    const entries = readZip(made);
    const again = writeZip(entries);
    expect(Object.keys(unzipSync(again))).toEqual(['one.txt', 'föld/two.bin', 'empty']);
    for (const [index, entry] of readZip(again).entries()) {
      expect(entry.packed).toEqual(entries[index]!.packed);
      expect(entry.stamp).toBe(entries[index]!.stamp);
    }
  });

  it('replaces the contents of a file', () => {
    const entries = readZip(made).map((entry) =>
      entry.name === 'one.txt' ? repack(entry, strToU8('changed')) : entry,
    );
    expect(strFromU8(unzipSync(writeZip(entries))['one.txt']!)).toBe('changed');
  });

  it('has the first date that a zip can store, so that new files have the same bytes on any day', () => {
    const bytes = writeZip([newEntry('a', strToU8('a'))]);
    expect(bytes).toEqual(writeZip([newEntry('a', strToU8('a'))]));
    expect(readZip(bytes)[0]!.stamp >>> 16).toBe((0 << 9) | (1 << 5) | 1);
  });

  it('is refused when it is none, cut short, or damaged inside', () => {
    expect(() => readZip(strToU8('no zip at all, though long enough to hold one'))).toThrow(DamagedZip);
    expect(() => readZip(new Uint8Array(0))).toThrow(DamagedZip);
    expect(() => readZip(made.subarray(0, made.length - 30))).toThrow(DamagedZip);
    const flipped = made.slice();
    // Inside the packed data of the first file, behind its header of 30 bytes and its name.
    flipped[30 + 'one.txt'.length + 3]! ^= 0x55;
    expect(() => readZip(flipped).map(unpack)).toThrow(/one\.txt (is damaged|cannot be unpacked)/);
  });

  it('reads files whose sizes follow their data, as streaming writers leave them', () => {
    const [entry] = readZip(made);
    // The flag and zeroed sizes of the local header; the directory alone is right then.
    const streamed = made.slice();
    const view = new DataView(streamed.buffer);
    view.setUint16(6, view.getUint16(6, true) | 8, true);
    for (const field of [14, 18, 22]) view.setUint32(field, 0, true);
    const again = writeZip(readZip(streamed));
    expect(unpack(readZip(again)[0]!)).toEqual(unpack(entry!));
    expect(new DataView(again.buffer).getUint16(6, true) & 8).toBe(0);
  });
});
