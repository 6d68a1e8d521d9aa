import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';

/** The objects that only Office gives; dependency-cruiser sees imports, not globals. */
const officeObjects = new Set(['Office', 'Excel', 'OfficeExtension', 'OfficeRuntime', 'CustomFunctions']);
const mayKnowOffice = /^src\/(functions\/(adapter|associate)\.ts$|hosts\/excel[/.])/;

function sources(): string[] {
  const names = readdirSync('src', { recursive: true, encoding: 'utf8' });
  return names.filter((name) => name.endsWith('.ts')).map((name) => `src/${name.replaceAll('\\', '/')}`);
}

/** Whether the identifier only names a member, as in `other.Office` or `{ Office: standIn }`. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  const names = [ts.isPropertyAccessExpression, ts.isPropertyAssignment, ts.isPropertySignature];
  return names.some((isKind) => isKind(parent) && parent.name === node);
}

function officeObjectsIn(path: string): string[] {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && officeObjects.has(node.text) && !isMemberName(node)) found.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return [...found];
}

/**
 * What browsers got in 2022 and later, by name; Excel for Mac runs add-ins in the browser of its system. `at` is left
 * out, which every system has on which Microsoft still updates Excel (ECMAScript 2022 and 2023, new built-ins).
 */
const tooNew =
  /\.(toSorted|toReversed|toSpliced|findLast|findLastIndex|hasOwn|groupBy|fromAsync|withResolvers|isWellFormed|toWellFormed)\(/;
/** What only Node and the builds run. */
const neverInExcel = /^src\/(command-line|tools|manual|offline)\//;

test('nothing that Excel loads calls what the browser of an older Mac lacks', () => {
  const loaded = sources().filter((path) => !neverInExcel.test(path));
  expect(loaded.filter((path) => tooNew.test(readFileSync(path, 'utf8')))).toEqual([]);
});

test('only the adapter, its script and the Excel host know Office objects', () => {
  const known = sources().map((path) => [path, officeObjectsIn(path)] as const);
  const users = known.filter(([, names]) => names.length > 0).map(([path]) => path);
  expect(users).toContain('src/functions/associate.ts');
  expect(users.filter((path) => !mayKnowOffice.test(path))).toEqual([]);
});
