/** A part of the code and the tests that judge it. */
export interface MutatePart {
  readonly name: string;
  /** Files, or folders without what is in their folders. */
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
}

const published = 'test/published/*.test.ts';
const functions = ['test/functions/*.test.ts', 'test/catalogue/{catalogue,readers}.test.ts', published];

const plan = ['test/formulas/{plan,balance}/*.test.ts', 'test/functions/plan*.test.ts'];

/** A folder of formulas, judged by its own tests. */
function formulas(folder: string): MutatePart {
  return {
    name: folder,
    mutate: [`src/formulas/${folder}`],
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
  // The tests of whole plans take minutes; what they notice, a quick test of its own should notice.
  {
    name: 'cut',
    mutate: ['src/formulas/cut'],
    tests: ['test/formulas/cut/!(cut-plan|cut-limits).test.ts'],
  },
  {
    name: 'balance',
    mutate: ['src/formulas/balance'],
    tests: ['test/formulas/{plan,balance}/!(plan-parts).test.ts'],
  },
  { name: 'plan', mutate: ['src/formulas/plan'], tests: plan },
  // The test of the factors loads a whole library to judge tables, which are not changed.
  { name: 'units', mutate: ['src/units'], tests: ['test/units/!(factors).test.ts'] },
  {
    name: 'reading',
    mutate: ['src/catalogue', 'src/catalogue/reading', 'src/catalogue/plan'],
    tests: [...functions, 'test/catalogue/reading/*.test.ts', 'test/catalogue/plan/varying-inputs.test.ts'],
  },
  {
    name: 'adapter',
    mutate: ['src/functions/adapter.ts', 'src/functions/adapter'],
    tests: ['test/functions/adapter/*.test.ts', 'test/functions/{adapter,refusals}.test.ts'],
  },
];
