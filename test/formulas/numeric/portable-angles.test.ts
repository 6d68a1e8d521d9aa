/** Held to mathjs, which computes sines and arc tangents of 40 digits by series of its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { arcSine, cosine, directionOf, sine } from '../../../src/formulas/numeric/portable-angles';

const exact = create(all!, { number: 'BigNumber', precision: 40 });
const big = (value: number) => exact.bignumber(value);
/** The exact decimal value of a double, of which mathjs would take only the digits that JavaScript prints. */
const exactly = (value: number) => {
  const scaled = value * 2 ** 60;
  return Number.isInteger(scaled)
    ? exact.divide(big(BigInt(scaled).toString() as never), exact.pow(big(2), big(60)))
    : big(value);
};
const tiny = 2.3e-16;

const edges = [0, 1, 2, 3, 4, 5, 6, 7, 8].flatMap((i) => [(i * Math.PI) / 4, (i * Math.PI) / 4 + 1e-9, i / 8, i / 16]);
const random = randomNumbers();
const angles = [
  ...edges.flatMap((angle) => [angle, -angle]),
  ...Array.from({ length: 300 }, () => 20 * random() - 10),
  ...Array.from({ length: 100 }, () => 6000 * random() - 3000),
];

describe('sine and cosine', () => {
  it('are those of mathjs to the last digit', () => {
    for (const angle of angles) {
      expect(Math.abs(sine(angle) - Number(exact.sin(exactly(angle) as never))), `sine ${angle}`).toBeLessThan(tiny);
      expect(Math.abs(cosine(angle) - Number(exact.cos(exactly(angle) as never))), `cosine ${angle}`).toBeLessThan(
        tiny,
      );
    }
  });

  it('are whole numbers and halves where they should be', () => {
    expect([sine(0), cosine(0), sine(Math.PI / 2), cosine(Math.PI), sine(-Math.PI / 2)]).toEqual([0, 1, 1, -1, -1]);
    expect([cosine(Math.PI / 3), sine(Math.PI / 6)]).toEqual([expect.closeTo(0.5, 15), expect.closeTo(0.5, 15)]);
  });
});

describe('the direction of a point', () => {
  const points = angles.flatMap((angle) => [
    [Math.sin(angle), Math.cos(angle)],
    [3e-5 * Math.sin(angle), 3e-5 * Math.cos(angle)],
  ]);

  it('is that of mathjs to the last digit, in every quarter', () => {
    for (const [y = 0, x = 0] of points) {
      const wanted = Number(exact.atan2(big(y) as never, big(x) as never));
      expect(Math.abs(directionOf(y, x) - wanted), `${y} ${x}`).toBeLessThan(2 * tiny);
    }
  });

  it('is exact along the axes and diagonals, and 0 at the origin', () => {
    const at = (y: number, x: number) => directionOf(y, x) / Math.PI;
    expect([at(0, 0), at(0, 2), at(3, 0), at(0, -1), at(-1, 0)]).toEqual([0, 0, 0.5, 1, -0.5]);
    expect([at(1, 1), at(1, -1), at(-1, -1), at(-1, 1)]).toEqual([0.25, 0.75, -0.75, -0.25]);
  });

  it('leads from a sine to its angle', () => {
    for (const share of [-1, -0.75, -1e-9, 0, 0.1, 0.5, 0.999999, 1])
      expect(Math.abs(arcSine(share) - Math.asin(share)), String(share)).toBeLessThan(2 * tiny);
  });
});

/** Other functions of Math may end in another digit in another browser. */
const fixed = /Math\.(abs|ceil|floor|imul|max|min|PI|round|sqrt)\b/g;

it('the search for cut plans needs no function whose last digit an engine may choose', () => {
  const names = readdirSync('src/formulas/cut').map((name) => `src/formulas/cut/${name}`);
  const searched = [...names, 'src/formulas/numeric/portable-angles.ts', 'src/formulas/numeric/shuffle.ts'];
  expect(searched.length).toBeGreaterThan(30);
  for (const name of searched) {
    const code = readFileSync(name, 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    expect(code.replaceAll(fixed, '').match(/Math\b|[\w)\]] \*\* /), name).toBeNull();
  }
});
