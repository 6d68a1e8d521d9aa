/** Linear programs: examples of textbooks, and small ones by chance held to a search of all corners. */
import { describe, expect, it } from 'vitest';
import { LinearProgram } from '../../../src/formulas/cut/linear-program';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';

interface Row {
  readonly coefficients: readonly number[];
  readonly limit: number;
}

interface Program {
  readonly gains: readonly number[];
  readonly rows: readonly Row[];
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
}

const upwards = (gains: readonly number[], rows: readonly (readonly number[])[], highest = 1e6): Program => ({
  gains,
  rows: rows.map((row) => ({ coefficients: row.slice(0, -1), limit: row.at(-1)! })),
  lowest: gains.map(() => 0),
  highest: gains.map(() => highest),
});

function fill(program: LinearProgram, { gains, rows, lowest, highest }: Program): LinearProgram {
  program.clear();
  program.gains.set(gains);
  program.lowest.set(lowest);
  program.highest.set(highest);
  for (const { coefficients, limit } of rows) {
    program.addRow(limit);
    for (const [column, coefficient] of coefficients.entries()) program.add(column, coefficient);
  }
  return program;
}

const solve = (program: Program): readonly number[] => {
  const columns = program.gains.length;
  return [...fill(new LinearProgram(columns), program).solve().subarray(0, columns)];
};
const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 9));

describe('examples of textbooks, from memory', () => {
  it('Hillier and Lieberman’s Wyndor Glass: 2 batches of doors and 6 of windows earn 36', () => {
    const wyndor = upwards(
      [3, 5],
      [
        [1, 0, 4],
        [0, 2, 12],
        [3, 2, 18],
      ],
    );
    expect(solve(wyndor)).toEqual(close([2, 6]));
    // The first two rows as bounds of the variables.
    expect(solve({ ...upwards([3, 5], [[3, 2, 18]]), highest: [4, 6] })).toEqual(close([2, 6]));
  });

  it('Beale’s, in which the simplex method may go round in circles: 1/20', () => {
    const beale = upwards(
      [3 / 4, -150, 1 / 50, -6],
      [
        [1 / 4, -60, -1 / 25, 9, 0],
        [1 / 2, -90, -1 / 50, 3, 0],
        [0, 0, 1, 0, 1],
      ],
    );
    const values = solve(beale);
    expect(values).toEqual(close([1 / 25, 0, 1, 0]));
    expect(dot(values, beale.gains)).toBeCloseTo(1 / 20, 12);
  });

  it('Klee and Minty’s cube, whose best corner lies behind all others', () => {
    const cube = upwards(
      [100, 10, 1],
      [
        [1, 0, 0, 1],
        [20, 1, 0, 100],
        [200, 20, 1, 10000],
      ],
    );
    expect(solve(cube)).toEqual(close([0, 0, 10000]));
  });
});

describe('programs worked by hand', () => {
  it('without a row go to the bounds, and what gains nothing stays at 0', () => {
    const bounds = { lowest: [-2, -3, -4], highest: [5, 6, 7], rows: [] };
    expect(solve({ gains: [1, -1, 0], ...bounds })).toEqual([5, -3, 0]);
    // A gain that is only rounding is none.
    expect(solve({ gains: [1e-10, -1e-7, 1e-5], ...bounds })).toEqual([0, 0, 7]);
  });

  it('bring back a row that begins over its limit, even at a loss', () => {
    // x + y >= 3 where both cost: the cheaper one is used, as far as it goes.
    const rows = [{ coefficients: [-1, -1], limit: -3 }];
    const bounds = { lowest: [0, 0], highest: [2, 9] };
    expect(solve({ gains: [-1, -2], rows, ...bounds })).toEqual(close([2, 1]));
    expect(solve({ gains: [-2, -1], rows, ...bounds })).toEqual(close([0, 3]));
    // A gain against the row ends where the limit is met.
    expect(solve({ gains: [-1, 0], rows: [{ coefficients: [-2, 0], limit: -3 }], ...bounds })).toEqual(close([1.5, 0]));
  });

  it('that cannot keep a limit miss it by as little as they can, and gain what is left to gain', () => {
    const far = [{ coefficients: [-1, 0], limit: -5 }];
    expect(solve({ gains: [-1, 1], rows: far, lowest: [-2, -2], highest: [2, 3] })).toEqual(close([2, 3]));
    // Two rows at odds, x >= 1 and x <= -1, are missed by 2 together in between: the gain decides.
    const odds = [
      { coefficients: [-1], limit: -1 },
      { coefficients: [1], limit: -1 },
    ];
    expect(solve({ gains: [1], rows: odds, lowest: [-5], highest: [5] })).toEqual(close([1]));
    expect(solve({ gains: [-1], rows: odds, lowest: [-5], highest: [5] })).toEqual(close([-1]));
    // The steeper of two is worth more: a unit of x brings it back by two.
    const steep = [odds[0]!, { coefficients: [2], limit: -2 }];
    expect(solve({ gains: [1], rows: steep, lowest: [-5], highest: [5] })).toEqual(close([-1]));
  });

  it('give up a gain of less than 100 for each unit over a limit, and no more', () => {
    const rows = [{ coefficients: [1], limit: -1 }];
    expect(solve({ gains: [99], rows, lowest: [-5], highest: [5] })).toEqual(close([-1]));
    expect(solve({ gains: [101], rows, lowest: [-5], highest: [5] })).toEqual(close([5]));
  });

  it('keep a limit that they begin at', () => {
    const rows = [
      { coefficients: [1, -1], limit: 0 },
      { coefficients: [1, 1], limit: 0 },
    ];
    const values = solve({ gains: [1, 0], rows, lowest: [-3, -3], highest: [3, 3] });
    expect(values[0]).toBeCloseTo(0, 12);
  });

  it('add up what is added to one coefficient', () => {
    const program = fill(new LinearProgram(1), { gains: [1], rows: [], lowest: [0], highest: [9] });
    program.addRow(6);
    program.add(0, 1);
    program.add(0, 2);
    expect(program.solve()[0]).toBeCloseTo(2, 12);
  });
});

/** All points at which as many limits meet as there are variables; each limit is a row or a bound. */
function cornersOf({ gains, rows, lowest, highest }: Program): readonly (readonly number[])[] {
  const unit = (j: number, sign: number) => gains.map((_, k) => (k === j ? sign : 0));
  const limits: readonly Row[] = [
    ...rows,
    ...highest.map((limit, j) => ({ coefficients: unit(j, 1), limit })),
    ...lowest.map((limit, j) => ({ coefficients: unit(j, -1), limit: -limit })),
  ];
  const choose = (count: number, from: number): readonly (readonly Row[])[] =>
    count === 0
      ? [[]]
      : limits.slice(from).flatMap((row, i) => choose(count - 1, from + i + 1).map((others) => [row, ...others]));
  return choose(gains.length, 0).flatMap((some) => {
    const corner = meetingOf(some);
    return corner === undefined ? [] : [corner];
  });
}

/** Where limits meet, by Cramer's rule; undefined where they are parallel. */
function meetingOf(rows: readonly Row[]): readonly number[] | undefined {
  const matrix = rows.map(({ coefficients }) => coefficients);
  const whole = determinant(matrix);
  if (Math.abs(whole) < 1e-9) return undefined;
  return rows.map((_, j) => {
    const replaced = matrix.map((row, i) => row.map((value, k) => (k === j ? rows[i]!.limit : value)));
    return determinant(replaced) / whole;
  });
}

function determinant(matrix: readonly (readonly number[])[]): number {
  const [first, ...others] = matrix;
  if (first === undefined) return 1;
  return first.reduce((sum, value, j) => {
    const minor = others.map((row) => row.filter((_, k) => k !== j));
    return sum + (j % 2 === 0 ? value : -value) * determinant(minor);
  }, 0);
}

const over = ({ coefficients, limit }: Row, values: readonly number[]) => dot(coefficients, values) - limit;
const isWithinBounds = ({ lowest, highest }: Program, values: readonly number[]) =>
  values.every((value, j) => value >= lowest[j]! - 1e-9 && value <= highest[j]! + 1e-9);
const keeps = (program: Program, values: readonly number[]) =>
  isWithinBounds(program, values) && program.rows.every((row) => over(row, values) <= 1e-9);

/** Programs of 2 or 3 variables in 4 to 6 rows of small whole numbers, many of which meet in one point. */
function programsByChance(count: number, limit: (random: () => number) => number): readonly Program[] {
  const random = randomNumbers();
  const wholeFrom = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  return Array.from({ length: count }, () => {
    const columns = wholeFrom(2, 3);
    const list = (low: number, high: number) => Array.from({ length: columns }, () => wholeFrom(low, high));
    const rows = Array.from({ length: wholeFrom(4, 6) }, () => ({
      coefficients: list(-3, 3),
      limit: limit(random),
    }));
    return { gains: list(-4, 4), rows, lowest: list(-3, 0), highest: list(0, 3) };
  });
}

describe('programs by chance, held to all corners', () => {
  const best = (program: Program) => {
    const kept = cornersOf(program).filter((corner) => keeps(program, corner));
    return Math.max(...kept.map((corner) => dot(corner, program.gains)));
  };

  it('that begin within all limits reach the best corner', () => {
    for (const program of programsByChance(200, (random) => Math.floor(random() * 5))) {
      const values = solve(program);
      expect(keeps(program, values), JSON.stringify(program)).toBe(true);
      expect(dot(values, program.gains), JSON.stringify(program)).toBeCloseTo(best(program), 8);
    }
  });

  it('that begin over some limits come back where that is possible, and reach the best corner', () => {
    const programs = programsByChance(260, (random) => Math.floor(random() * 9) - 3);
    const possible = programs.filter((program) => best(program) > -Infinity);
    const begunOver = possible.filter(({ rows }) => rows.some(({ limit }) => limit < 0));
    expect(begunOver.length).toBeGreaterThan(40);
    for (const program of possible) {
      const values = solve(program);
      expect(keeps(program, values), JSON.stringify(program)).toBe(true);
      expect(dot(values, program.gains), JSON.stringify(program)).toBeCloseTo(best(program), 8);
    }
  });

  it('that cannot keep one limit lose least, by a hundred for each unit, and keep all others', () => {
    const limits = programsByChance(260, (random) => Math.floor(random() * 5));
    const single = limits.map((program): Program => {
      const [first, ...rows] = program.rows;
      return { ...program, rows: [{ ...first!, limit: -8 }, ...rows] };
    });
    const impossible = single.filter((program) => best(program) === -Infinity);
    expect(impossible.length).toBeGreaterThan(60);
    for (const program of impossible) {
      const [first, ...rows] = program.rows;
      const others = { ...program, rows };
      const worth = (values: readonly number[]) => dot(values, program.gains) - 100 * Math.max(0, over(first!, values));
      const kept = cornersOf(others).filter((corner) => keeps(others, corner));
      const values = solve(program);
      expect(keeps(others, values), JSON.stringify(program)).toBe(true);
      expect(worth(values), JSON.stringify(program)).toBeCloseTo(Math.max(...kept.map(worth)), 7);
    }
  });

  it('that are at odds keep every limit that they began within', () => {
    for (const program of programsByChance(200, (random) => Math.floor(random() * 9) - 6)) {
      const values = solve(program);
      const begun = { ...program, rows: program.rows.filter(({ limit }) => limit >= 0) };
      expect(keeps(begun, values), JSON.stringify(program)).toBe(true);
    }
  });
});

describe('a program that is filled again', () => {
  it('knows nothing of the one before', () => {
    const columns = 3;
    const one = new LinearProgram(columns);
    const programs = programsByChance(60, (random) => Math.floor(random() * 9) - 3);
    for (const program of programs.filter(({ gains }) => gains.length === columns)) {
      expect([...fill(one, program).solve().subarray(0, columns)]).toEqual(solve(program));
    }
  });

  it('takes more rows than it had room for, and counts its work by them', () => {
    // Fifty limits on x + t y for t from 0 to 4.9: the tangents of a curve; the largest x + y is on t = 1.
    const tangents = upwards(
      [1, 1],
      Array.from({ length: 50 }, (_, i) => [1, i / 10, 2 + (i / 10 - 1) ** 2]),
    );
    const one = fill(new LinearProgram(2), upwards([1, 1], [[1, 1, 1]]));
    expect(dot([...one.solve().subarray(0, 2)], [1, 1])).toBeCloseTo(1, 12);
    const little = one.work;
    expect(little).toBeGreaterThan(0);
    one.work = 0;
    const values = [...fill(one, tangents).solve().subarray(0, 2)];
    expect(keeps(tangents, values)).toBe(true);
    expect(dot(values, [1, 1])).toBeCloseTo(2, 9);
    expect(one.rows).toBe(50);
    expect(one.work).toBeGreaterThan(20 * little);
    one.clear();
    expect(one.rows).toBe(0);
  });
});

/**
 * Pieces on a grid that nearly touch those beside them at three places each, all but parallel, as pieces with straight
 * sides do: the last variable is what the sheet becomes shorter by.
 */
function touching(random: () => number, across: number, along: number): Program {
  const pieces = across * along;
  const rows: Row[] = [];
  const add = (entries: readonly (readonly [number, number])[], limit: number) => {
    const coefficients = new Array<number>(3 * pieces + 1).fill(0);
    for (const [column, coefficient] of entries) coefficients[column]! += coefficient;
    // As in compaction, limits that differ a little keep the method from going round in circles.
    rows.push({ coefficients, limit: limit + 1e-11 * (rows.length % 7) });
  };
  const nearly = (whole: number) => whole + 1e-8 * random();
  const turned = () => nearly(Math.floor(random() * 5 - 2) / 2);
  for (let i = 0; i < pieces; i++) {
    const [row, column] = [i % across, Math.floor(i / across)];
    const beside = [
      { j: i + 1, direction: Math.PI / 2, is: row < across - 1 },
      { j: i + across, direction: 0, is: column < along - 1 },
      { j: i + across + 1, direction: Math.PI / 4, is: row < across - 1 && column < along - 1 },
    ].filter(({ is }) => is);
    for (const { j, direction } of beside) {
      for (let k = 0; k < 3; k++) {
        const angle = nearly(direction + (Math.floor(random() * 3 - 1) * Math.PI) / 6);
        const [x, y] = [Math.cos(angle), Math.sin(angle)];
        add(
          [
            [3 * i, x],
            [3 * i + 1, y],
            [3 * i + 2, turned()],
            [3 * j, -x],
            [3 * j + 1, -y],
            [3 * j + 2, turned()],
          ],
          [0, 0, 0, 0.003, 0.005][Math.floor(random() * 5)]!,
        );
      }
    }
    if (row === 0) add([[3 * i + 1, -1]], 0.002);
    if (row === across - 1) add([[3 * i + 1, 1]], 0.002);
    if (column === 0) add([[3 * i, -1]], 0.001);
    if (column === along - 1)
      add(
        [
          [3 * i, 1],
          [3 * pieces, 1],
        ],
        0.001,
      );
  }
  const gains = new Array<number>(3 * pieces + 1).fill(0);
  gains[3 * pieces] = 1;
  return { gains, rows, lowest: gains.map(() => -0.02), highest: gains.map(() => 0.02) };
}

describe('programs of many pieces that nearly touch', () => {
  it('have the same gain in whatever order the rows are given, and keep every limit', () => {
    const random = randomNumbers();
    for (let i = 0; i < 40; i++) {
      const program = touching(random, 5, 6);
      const [forwards, backwards] = [solve(program), solve({ ...program, rows: [...program.rows].reverse() })];
      expect(forwards.at(-1)).toBeCloseTo(backwards.at(-1)!, 5);
      for (const { coefficients, limit } of program.rows) {
        expect(dot(coefficients, forwards)).toBeLessThanOrEqual(limit + 1e-6);
      }
    }
  });
});
