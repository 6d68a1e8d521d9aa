/** A part of the code and the tests that judge it. */
export interface MutatePart {
  readonly name: string;
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
}

const published = 'test/published/*.test.ts';
const functions = ['test/functions/*.test.ts', 'test/catalogue/catalogue.test.ts', published];

/** A folder of formulas, judged by its own tests. */
function formulas(folder: string): MutatePart {
  return {
    name: folder,
    mutate: [`src/formulas/${folder}/*.ts`],
    tests: [`test/formulas/${folder}/*.test.ts`],
  };
}

export const mutateParts: readonly MutatePart[] = [
  ...[
    'cone',
    'tank',
    'water',
    'stock',
    'load',
    'settle',
    'filter',
    'bed',
    'harvest',
    'pipe',
    'air',
    'cost',
    'numeric',
  ].map(formulas),
  { name: 'cut', mutate: ['src/formulas/cut/*.ts'], tests: ['test/formulas/{cut,cone}/*.test.ts'] },
  {
    name: 'plan',
    mutate: ['src/formulas/plan/*.ts'],
    tests: ['test/formulas/plan/*.test.ts', 'test/functions/plan*.test.ts'],
  },
  // The test of the factors loads a whole library to judge tables, which are not changed.
  { name: 'units', mutate: ['src/units/*.ts'], tests: ['test/units/!(factors).test.ts'] },
  {
    name: 'reading',
    mutate: ['src/catalogue/*.ts', 'src/catalogue/reading/*.ts', 'src/catalogue/plan/*.ts'],
    tests: [...functions, 'test/catalogue/reading/*.test.ts', 'test/catalogue/plan/varying-inputs.test.ts'],
  },
  {
    name: 'adapter',
    mutate: ['src/functions/adapter.ts', 'src/functions/adapter/*.ts'],
    tests: ['test/functions/adapter/*.test.ts', 'test/functions/{adapter,refusals}.test.ts'],
  },
];
