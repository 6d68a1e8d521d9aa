/**
 * Writes the stubs of a new worksheet function, which fail until they are filled in: `npm run new -- PIPE.REYNOLDS`.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { catalogue } from '../../catalogue/all';
import { isStartedAs } from './started-as';

const usage = 'Give the name of the function, such as: npm run new -- PIPE.REYNOLDS';

export interface Stub {
  readonly file: string;
  readonly text: string;
}

/** The files of a new function, by its name without the namespace. */
export function stubsOf(name: string): readonly Stub[] {
  const [family = '', ...rest] = name.toLowerCase().split('.');
  const path = `${family}-${rest.join('-')}`;
  const camel = path.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  return [
    { file: join('src', 'formulas', family, `${path}.ts`), text: formulaStub(camel, name) },
    { file: join('src', 'catalogue', 'rows', `${path}.ts`), text: rowStub(camel, name, `${family}/${path}`) },
    { file: join('test', 'formulas', family, `${path}.test.ts`), text: testStub(camel, name, `${family}/${path}`) },
  ];
}

function formulaStub(camel: string, name: string): string {
  return `/**
 * What it computes, its formula and the units of what it takes and gives, all SI.
 *
 * In what range it holds, and what it refuses. Source: author, title, equation.
 */
export function ${camel}(size: number): number {
  throw new Error(\`SILT.${name} is not written yet; it was given \${size}\`);
}
`;
}

function rowStub(camel: string, name: string, formula: string): string {
  return `import { ${camel} } from '../../formulas/${formula}';
import { define } from '../define';

export const ${camel}Rows = [
  define({
    name: '${name}',
    summary: 'To be written: what it gives, in one sentence.',
    arguments: { size: { kind: 'dimension', above: 0, meaning: 'to be written' } },
    result: { scalar: 'dimension' },
    compute: (given) => ${camel}(given.size),
    formula: 'to be written',
    sources: ['to be written'],
    example: { formula: '=SILT.${name}("US",1)', gives: 'to be written' },
  }),
];
`;
}

function testStub(camel: string, name: string, formula: string): string {
  return `import { describe, expect, it } from 'vitest';
import { ${camel} } from '../../../src/formulas/${formula}';

describe('${camel}', () => {
  it('gives a figure that is published elsewhere (name the source; put the row into test/published as well)', () => {
    expect(${camel}(1)).toBe('the published figure of SILT.${name}');
  });
});
`;
}

/** The catalogue's list of rows with those of the new function at its end. */
export function withRows(list: string, name: string): string {
  const path = name.toLowerCase().replaceAll('.', '-');
  const rows = `${path.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())}Rows`;
  const imports = list.lastIndexOf("from './rows/");
  const lineEnd = list.indexOf('\n', imports) + 1;
  return `${list.slice(0, lineEnd)}import { ${rows} } from './rows/${path}';\n${list.slice(lineEnd)}`.replace(
    /\n\];\n/,
    `\n  ...${rows},\n];\n`,
  );
}

/** Why a name is not allowed; undefined if it is. */
export function refusalOf(name: string): string | undefined {
  if (!/^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)+$/.test(name)) return `${name || 'Nothing'} is not a name. ${usage}`;
  const stored = (one: string): string => one.replaceAll('.', '_');
  const taken = catalogue.find((row) => stored(row.name) === stored(name));
  return taken && `SILT.${taken.name} exists already.`;
}

function main(): void {
  const name = (process.argv[2] ?? '').replace(/^SILT\./i, '').toUpperCase();
  const stubs = stubsOf(name);
  const inTheWay = stubs.find(({ file }) => existsSync(file));
  const refusal = refusalOf(name) ?? (inTheWay && `${inTheWay.file} exists already.`);
  if (refusal !== undefined) {
    process.stderr.write(`${refusal}\n`);
    process.exitCode = 1;
    return;
  }
  for (const { file, text } of stubs) {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  const list = join('src', 'catalogue', 'all.ts');
  writeFileSync(list, withRows(readFileSync(list, 'utf8'), name));
  process.stdout.write(`Written, and failing until you fill them in:
${stubs.map(({ file }) => `  ${file}`).join('\n')}
Its rows are at the end of ${list}; move them to where they belong in the day's work.
Then: a published check row in test/published, and npm run calc -- '=SILT.${name}("US",1)'
`);
}

if (isStartedAs('new-function.ts')) main();
