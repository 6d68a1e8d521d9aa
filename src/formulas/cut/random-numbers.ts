/** The same numbers from 0 to 1 each time, by a linear congruential rule (Numerical Recipes' constants). */
export function randomNumbers(): () => number {
  let state = 12345;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 0x100000000;
  };
}
