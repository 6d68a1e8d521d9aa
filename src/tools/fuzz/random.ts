/** Random choices that a seed repeats: the same seed makes the same calls on every machine. */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** At least 0 and below 1. Source: mulberry32, Tommy Ettinger, public domain. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  /** A whole number from `least` to `most`. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  between(low: number, high: number): number {
    return low + this.next() * (high - low);
  }

  /** As likely between 1 and 10 as between 100 and 1000. */
  magnitude(low: number, high: number): number {
    return Math.exp(this.between(Math.log(low), Math.log(high)));
  }

  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('nothing to pick from');
    return list[Math.floor(this.next() * list.length)] as T;
  }
}
