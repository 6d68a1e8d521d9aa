import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

/** The version of Excel's interface that the manifest asks for; Excel does not offer the add-in where it is missing. */
const declared = Number(/Name="ExcelApi" MinVersion="1\.(\d+)"/.exec(readFileSync('manifest.xml', 'utf8'))?.[1]);

const config = ts.getParsedCommandLineOfConfigFile(
  'tsconfig.json',
  {},
  {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: ({ messageText }) => expect.fail(String(messageText)),
  },
)!;
const files = config.fileNames.filter((file) => file.includes('/src/hosts/excel/'));
const program = ts.createProgram(files, config.options);
const checker = program.getTypeChecker();
const sources = files.map((file) => program.getSourceFile(file)!);

/** Microsoft's own types name in each member's comment the set that brought it: `[Api set: ExcelApi 1.12]`. */
function versionOf(name: ts.Identifier): number {
  const versions = (checker.getSymbolAtLocation(name)?.declarations ?? []).flatMap((declaration) => {
    const file = declaration.getSourceFile();
    if (!file.fileName.includes('office-js')) return [];
    const comment = file.text.slice(declaration.getFullStart(), declaration.getStart());
    const version = /\[Api set: ExcelApi 1\.(\d+)/.exec(comment)?.[1];
    return version === undefined ? [] : [Number(version)];
  });
  // Of several declarations with one name the oldest is enough.
  return versions.length === 0 ? 0 : Math.min(...versions);
}

function* identifiers(node: ts.Node): Iterable<ts.Identifier> {
  if (ts.isIdentifier(node)) yield node;
  for (const child of node.getChildren()) yield* identifiers(child);
}

/** The highest version that a condition asks for, followed into the constants that it names. */
function askedIn(condition: ts.Node, depth = 0): number {
  let asked = 0;
  for (const name of identifiers(condition)) {
    if (name.text === 'supports' && ts.isCallExpression(name.parent)) {
      asked = Math.max(asked, Number(/1\.(\d+)/.exec(name.parent.arguments[0]?.getText() ?? '')?.[1] ?? 0));
    }
    const [declaration] = checker.getSymbolAtLocation(name)?.declarations ?? [];
    if (depth < 3 && declaration !== undefined && ts.isVariableDeclaration(declaration) && declaration.initializer)
      asked = Math.max(asked, askedIn(declaration.initializer, depth + 1));
  }
  return asked;
}

/** Whether a place is reached only in an Excel that has the version. */
function isGuarded(place: ts.Node, version: number, above: readonly ts.Node[] = []): boolean {
  for (let node = place; node.parent !== undefined; node = node.parent) {
    const { parent } = node;
    if (ts.isIfStatement(parent) && node === parent.thenStatement && askedIn(parent.expression) >= version) return true;
    if (ts.isConditionalExpression(parent) && node !== parent.condition && askedIn(parent.condition) >= version)
      return true;
    if (ts.isBlock(parent)) {
      const before = parent.statements.slice(0, parent.statements.indexOf(node as ts.Statement));
      const leaves = before.some(
        (one) =>
          ts.isIfStatement(one) && /^return\b/.test(one.thenStatement.getText()) && askedIn(one.expression) >= version,
      );
      if (leaves) return true;
    }
    if (ts.isFunctionDeclaration(parent) && parent.name !== undefined && !above.includes(parent)) {
      const uses = usesOf(parent.name);
      return uses.length > 0 && uses.every((use) => isGuarded(use, version, [...above, parent]));
    }
  }
  return false;
}

/** Where a function of ours is used, imports aside. */
function usesOf(name: ts.Identifier): readonly ts.Identifier[] {
  const own = checker.getSymbolAtLocation(name);
  return sources.flatMap((source) =>
    [...identifiers(source)].filter((one) => {
      if (one === name || one.text !== name.text || ts.isImportSpecifier(one.parent)) return false;
      const symbol = checker.getSymbolAtLocation(one);
      return (symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol) === own;
    }),
  );
}

describe('what Excel’s interface got later than the version that the manifest asks for', () => {
  const later = sources.flatMap((source) =>
    [...identifiers(source)].flatMap((name) => {
      const version = versionOf(name);
      return version > declared
        ? [{ name, version, place: `${basename(source.fileName)}: ${name.text} (1.${version})` }]
        : [];
    }),
  );

  test('is found in the types', () => {
    expect(later.map(({ place }) => place)).toEqual(
      expect.arrayContaining([
        'calculation.ts: onCalculated (1.8)',
        'read-cells.ts: getSpillParentOrNullObject (1.12)',
        'workbook-file.ts: createWorkbook (1.8)',
      ]),
    );
  });

  test('is used only after asking whether this Excel has it', () => {
    const types = later.filter(
      ({ name }) => !ts.isTypeReferenceNode(name.parent.parent) && !ts.isQualifiedName(name.parent),
    );
    expect(types.filter(({ name, version }) => !isGuarded(name, version)).map(({ place }) => place)).toEqual([]);
  });
});
