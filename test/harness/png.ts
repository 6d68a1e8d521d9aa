import { inflateSync } from 'node:zlib';

/** What a PNG file says of itself, and its first pixel. */
export interface Png {
  readonly width: number;
  readonly height: number;
  /** 6 is red, green, blue and alpha (PNG specification, third edition, table 12). */
  readonly colorType: number;
  readonly cornerAlpha: number;
}

/** Reads the header and the first pixel, which no row filter changes, as there is nothing left of it or above it. */
export function readPng(file: Buffer): Png {
  const signature = '89504e470d0a1a0a';
  if (file.subarray(0, 8).toString('hex') !== signature) throw new Error('not a PNG file');
  const data: Buffer[] = [];
  for (let at = 8; at < file.length; at += 12 + file.readUInt32BE(at)) {
    if (file.toString('latin1', at + 4, at + 8) === 'IDAT') {
      data.push(file.subarray(at + 8, at + 8 + file.readUInt32BE(at)));
    }
  }
  const pixels = inflateSync(Buffer.concat(data));
  return {
    width: file.readUInt32BE(16),
    height: file.readUInt32BE(20),
    colorType: file[25]!,
    cornerAlpha: pixels[4]!,
  };
}
