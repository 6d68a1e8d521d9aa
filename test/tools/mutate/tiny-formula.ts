const remembered = new Map<number, number>();

/** The sum of the whole numbers below `end`, which is remembered. */
export function sumBelow(end: number): number {
  const known = remembered.get(end);
  if (known !== undefined) return known;
  let sum = 0;
  for (let i = 0; i < end; i++) sum += i;
  remembered.set(end, sum);
  return sum;
}

export function isFull(level: number, height: number): boolean {
  return level >= height;
}

export function unused(level: number): number {
  return -level;
}
