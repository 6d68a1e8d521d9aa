import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const folder = 'test/tools/mutate';

describe('changing a formula in small steps', () => {
  it('prints the changes that its tests do not notice, and fails for too many of them', () => {
    const { status, stdout } = spawnSync(
      process.execPath,
      [
        'src/command-line/run.cjs',
        '../tools/mutate/mutate',
        `${folder}/tiny-formula.ts`,
        '--tests',
        `${folder}/tiny-formula-checks.ts`,
      ],
      { encoding: 'utf8' },
    );
    expect(stdout.replace(/\d+ s$/m, '… s').split('\n')).toEqual([
      // What is remembered and computed is the same.
      `${folder}/tiny-formula.ts:6:7  known !== undefined -> false`,
      `${folder}/tiny-formula.ts:14:10  level >= height -> level > height`,
      `${folder}/tiny-formula.ts:17:47  { return -level; } -> {}  (no test gets there)`,
      `${folder}/tiny-formula.ts:18:10  -level -> +level  (no test gets there)`,
      // Two of the others, `i--` and `true` for `i < end`, would go round for ever.
      `${folder}/tiny-formula.ts: 12 of 16 killed or harmless, 75.0 %; 12 killed, 0 harmless; … s`,
      '',
    ]);
    expect(status).toBe(1);
  });
});
