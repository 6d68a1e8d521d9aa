import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../src/catalogue/all';
import { refusalOf, stubsOf, withRows } from '../../../src/tools/build/new-function';

describe('the stubs of a new function', () => {
  test('are a formula, a row and a test, each of which can be read as TypeScript', () => {
    const stubs = stubsOf('PIPE.REYNOLDS');
    expect(stubs.map(({ file }) => file.replaceAll('\\', '/'))).toEqual([
      'src/formulas/pipe/pipe-reynolds.ts',
      'src/catalogue/rows/pipe-reynolds.ts',
      'test/formulas/pipe/pipe-reynolds.test.ts',
    ]);
    for (const { text } of stubs) {
      expect(ts.transpileModule(text, { reportDiagnostics: true }).diagnostics).toEqual([]);
    }
  });

  test('fail until they are filled in', () => {
    const [formula] = stubsOf('PIPE.REYNOLDS');
    const { outputText } = ts.transpileModule(formula!.text, { compilerOptions: { module: ts.ModuleKind.CommonJS } });
    const exports: Record<string, (size: number) => number> = {};
    new Function('exports', outputText)(exports);
    expect(() => exports.pipeReynolds!(1)).toThrow('SILT.PIPE.REYNOLDS is not written yet');
  });

  test('are at the end of the catalogue’s list', () => {
    const list = withRows(readFileSync('src/catalogue/all.ts', 'utf8'), 'PIPE.REYNOLDS');
    expect(list).toContain("import { pipeReynoldsRows } from './rows/pipe-reynolds';");
    expect(list.trimEnd().endsWith('  ...pipeReynoldsRows,\n];')).toBe(true);
  });

  test.each(['', 'PIPE', 'pipe.x y', '1.X', catalogue[0]!.name])('are not written for %j', (name) => {
    expect(refusalOf(name)).toMatch(/is not a name|exists already/);
  });
});
