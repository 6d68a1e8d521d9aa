import { textTable } from '../../command-line/text-table';
import { adapted, callsASecond } from './bench-calls';
import { figure, verdictText } from './bench-wanted';

const columns = 50;

/** A farm with every stage, so that no column returns early. */
const equipment: Readonly<Record<string, number>> = {
  'fish mass': 250,
  'feeding rate': 0.015,
  'tank volume': 6000,
  'pump flow': 200,
  'air supply': 0.3,
  'drum diameter': 572,
  drums: 4,
  pads: 3,
  'pad area': 0.6,
  'media volume': 500,
  'bed area': 20,
};

/** Every input that a scenario can have, its default typed out, with another number of fish in each column. */
function scenarios(): readonly (readonly unknown[])[] {
  const isTyped = (standard: unknown) => !/^(?:required|not given|as )/.test(String(standard));
  const standards = adapted('PLAN.INPUTS')('metric')
    .filter(([name, , , standard]) => isTyped(standard) && !(String(name) in equipment))
    .map(([name, , , standard]) => [String(name), standard] as const);
  const rows = [...standards, ...Object.entries(equipment)].filter(([name]) => name !== 'fish count');
  return [
    ['input', ...Array.from({ length: columns }, (_, i) => `farm ${i + 1}`)],
    ['fish count', ...Array.from({ length: columns }, (_, i) => 100 + 10 * i)],
    ...rows.map(([name, value]) => [name, ...Array.from({ length: columns }, () => value)]),
  ];
}

/** A farm of 350 fish with most coefficients left at their defaults, so that they vary. */
const sureFarm: Readonly<Record<string, unknown>> = {
  'fish mass': 225,
  'feeding rate': 0.015,
  species: 'tilapia',
  protein: 0.32,
  temperature: 25,
  'coldest water': 21,
  'hottest water': 29,
  ph: 7,
  'highest ph': 7.4,
  'tank volume': 4200,
  'water out': 265,
  conversion: 1.9,
  'pump flow': 94,
  'air supply': 0.36,
  settler: 'swirl',
  'drum diameter': 570,
  drums: 2,
  pads: 4,
  'pad area': 0.28,
  'media volume': 680,
  'bed area': 26,
  crop: 'leafy',
  'bed depth': 300,
};

/** The drums that are integrated over settling velocities take longest. */
const mixedFarm = { ...sureFarm, settler: 'mixed', 'bed capture': '0.2 to 0.4' };

const rangeWanted = { below: 60 };

/** Milliseconds of the range of one farm, each time of another one, as the last samples are kept. */
function timesOf(name: string, farm: Readonly<Record<string, unknown>>, more: readonly unknown[]): readonly number[] {
  const call = adapted(name);
  return Array.from({ length: 15 }, (_, i) => {
    const table = [['fish count', 350 + i], ...Object.entries(farm)];
    const start = performance.now();
    const answer = call('metric', table, ...more);
    const took = performance.now() - start;
    const refused = answer.flat().find((cell) => cell instanceof Error);
    if (refused instanceof Error) throw refused;
    return took;
  });
}

/** How long the range and the drivers of a scenario take: the first one, then the fastest, when the engine has compiled them. */
export function rangeTable(): string {
  const farms = { 'two swirl drums': sureFarm, 'drums as mixed water': mixedFarm };
  const rows = Object.entries(farms).flatMap(([farm, figures]) =>
    (
      [
        ['PLAN.RANGE', []],
        ['PLAN.DRIVERS', ['solids in tank']],
      ] as const
    ).map(([name, more]) => {
      const times = timesOf(name, figures, more);
      const fastest = Math.min(...times);
      return [
        `${name}, 350 fish, ${farm}`,
        figure(times[0] ?? 0),
        figure(fastest),
        verdictText(fastest, rangeWanted, 'ms'),
      ];
    }),
  );
  return textTable(['call', 'first, ms', 'ms', 'wanted'], rows);
}

/** How long the comparison of many scenarios takes. */
export function planTable(): string {
  const table = scenarios();
  const compare = adapted('PLAN.COMPARE');
  const result = compare('metric', table);
  const refused = result.flat().find((cell) => cell instanceof Error);
  if (refused instanceof Error) throw refused;
  const milliseconds = 1000 / callsASecond(() => compare('metric', table));
  const what = `PLAN.COMPARE, ${columns} scenarios of ${table.length - 1} inputs`;
  return textTable(
    ['call', 'ms', 'wanted'],
    [[what, figure(milliseconds), verdictText(milliseconds, { below: 20 }, 'ms')]],
  );
}
