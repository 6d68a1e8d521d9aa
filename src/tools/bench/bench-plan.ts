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
