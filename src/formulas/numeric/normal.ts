/**
 * Share of a normal distribution below x standard deviations, to 1e-15.
 *
 * Source: Hart, Computer Approximations (1968), algorithm 5666, as given by West, Wilmott Magazine (2005) 70.
 */
export function normalBelow(x: number): number {
  const z = Math.abs(x);
  if (z > 37) return x > 0 ? 1 : 0;
  const bell = Math.exp(-z * z * 0.5);
  const above = z < 7.07106781186547 ? (bell * numerator(z)) / denominator(z) : bell / tail(z) / 2.506628274631;
  return x > 0 ? 1 - above : above;
}

function numerator(z: number): number {
  const inner = ((3.52624965998911e-2 * z + 0.700383064443688) * z + 6.37396220353165) * z + 33.912866078383;
  return ((inner * z + 112.079291497871) * z + 221.213596169931) * z + 220.206867912376;
}

function denominator(z: number): number {
  const inner = ((8.83883476483184e-2 * z + 1.75566716318264) * z + 16.064177579207) * z + 86.7807322029461;
  return (((inner * z + 296.564248779674) * z + 637.333633378831) * z + 793.826512519948) * z + 440.413735824752;
}

function tail(z: number): number {
  return z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65))));
}
