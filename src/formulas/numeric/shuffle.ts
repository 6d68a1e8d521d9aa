/** Puts numbers in an order by chance, in the list itself (Fisher and Yates); the random numbers are from 0 to below 1. */
export function shuffle(list: number[] | Uint16Array, random: () => number): void {
  for (let last = list.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    const kept = list[last] as number;
    list[last] = list[other] as number;
    list[other] = kept;
  }
}
