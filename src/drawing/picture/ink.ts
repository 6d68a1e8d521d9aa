import type { Point } from '../drawing-model';

/** A gray picture in pixels, y down, that lines and tones are laid on; where they meet, the darker one shows. */
export class Ink {
  /** 0 is paper, 255 is solid. */
  readonly cover: Uint8Array;
  readonly width: number;
  readonly height: number;

  constructor(width: number, height: number) {
    this.width = width;
    this.height = height;
    this.cover = new Uint8Array(width * height);
  }

  private add(x: number, y: number, share: number): void {
    const at = y * this.width + x;
    const value = Math.round(255 * Math.min(1, share));
    if (value > (this.cover[at] ?? 255)) this.cover[at] = value;
  }

  /** A straight line with round ends: a pixel is as dark as the line's edge leaves room in it. */
  line(from: Point, to: Point, thickness: number): void {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = Math.hypot(dx, dy);
    const reach = thickness / 2 + 0.5;
    const top = Math.max(0, Math.floor(Math.min(from.y, to.y) - reach));
    const bottom = Math.min(this.height - 1, Math.ceil(Math.max(from.y, to.y) + reach));
    const lowest = Math.min(from.x, to.x) - reach;
    const highest = Math.max(from.x, to.x) + reach;
    for (let y = top; y <= bottom; y++) {
      let [left, right] = [lowest, highest];
      if (Math.abs(dy) > 1e-9) {
        // Only the pixels of the row that the line can touch.
        const middle = from.x + ((y + 0.5 - from.y) * dx) / dy;
        const spread = (reach * length) / Math.abs(dy) + Math.abs(dx / dy);
        left = Math.max(lowest, middle - spread);
        right = Math.min(highest, middle + spread);
      }
      for (let x = Math.max(0, Math.floor(left)); x <= Math.min(this.width - 1, Math.ceil(right)); x++) {
        const [px, py] = [x + 0.5 - from.x, y + 0.5 - from.y];
        const along = length === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / (length * length)));
        const share = reach - Math.hypot(px - along * dx, py - along * dy);
        if (share > 0) this.add(x, y, share * Math.min(1, thickness));
      }
    }
  }

  /** The inside of a polygon in a flat tone, from four level cuts in each row of pixels. */
  tone(boundary: readonly Point[], tone: number): void {
    const cuts = 4;
    const row = new Float64Array(this.width);
    const top = Math.max(0, Math.floor(Math.min(...boundary.map(({ y }) => y))));
    const bottom = Math.min(this.height - 1, Math.ceil(Math.max(...boundary.map(({ y }) => y))));
    for (let y = top; y <= bottom; y++) {
      row.fill(0);
      for (let cut = 0; cut < cuts; cut++) {
        const hits = crossings(boundary, y + (cut + 0.5) / cuts);
        for (let i = 0; i + 1 < hits.length; i += 2) this.span(row, hits[i] ?? 0, hits[i + 1] ?? 0, 1 / cuts);
      }
      for (let x = 0; x < this.width; x++) {
        const share = row[x] ?? 0;
        if (share > 0) this.add(x, y, share * tone);
      }
    }
  }

  private span(row: Float64Array, from: number, to: number, share: number): void {
    const [left, right] = [Math.max(0, from), Math.min(this.width, to)];
    for (let x = Math.floor(left); x < right; x++)
      row[x] = (row[x] ?? 0) + share * (Math.min(x + 1, right) - Math.max(x, left));
  }
}

function crossings(boundary: readonly Point[], level: number): readonly number[] {
  const hits = boundary.flatMap((from, i) => {
    const to = boundary[(i + 1) % boundary.length] ?? from;
    return from.y <= level === to.y <= level ? [] : [from.x + ((level - from.y) * (to.x - from.x)) / (to.y - from.y)];
  });
  return hits.sort((a, b) => a - b);
}
