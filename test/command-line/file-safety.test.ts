import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'files-'));
const at = (name: string): string => join(folder, name);
const input = at('in.xlsx');
const old = 'what stood there before';
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => {
  for (const name of readdirSync(folder)) rmSync(at(name), { recursive: true, force: true });
  cpSync('test/workbooks/files/drum-store.xlsx', input);
});

/** A job to draw; a recalculation does as well with a workbook of a few formulas, which takes less time. */
function fillInput({ line }: Command): void {
  if (line[0] === 'draw') cpSync('sample-workbooks/US/cone-cut-plan.xlsx', input);
}

interface Command {
  /** The command before the file that it writes. */
  readonly line: readonly string[];
  readonly ending: string;
  /** What the first bytes of its file say (PKWARE's APPNOTE 4.3.7; ISO 32000-1, 7.5.2). */
  readonly begins: string;
  /** The exit code of a refusal. */
  readonly refuses: number;
  readonly readsWorkbook: boolean;
}

const cone = ['--units', 'US', '--top', '22.5', '--bottom', '4', '--height', '9.25'];
const workbook = { readsWorkbook: true, begins: 'PK\u0003\u0004', ending: '.xlsx', refuses: 2 };
const pages = { begins: '%PDF-', ending: '.pdf', refuses: 1 };

const commands: readonly (readonly [string, Command])[] = [
  ['recalc', { line: ['recalc', input], ...workbook }],
  ['recalc --values', { line: ['recalc', '--values', input], ...workbook }],
  ['draw', { line: ['draw', ...cone], ...pages, readsWorkbook: false }],
  [
    'draw --workbook',
    { line: ['draw', '--workbook', input, '--range', 'Patterns!B5:K7'], ...pages, readsWorkbook: true },
  ],
  ['draw --packet', { line: ['draw', '--packet', '--workbook', input], ...pages, readsWorkbook: true }],
];
/** One that computes a workbook and one that draws; the others go the same way to their file, but for a folder and a whole file. */
const oneOfEach = commands.filter(([name]) => name === 'recalc' || name === 'draw');
const reading = commands.filter(([, { readsWorkbook }]) => readsWorkbook);

function run(args: readonly string[], environment: Readonly<Record<string, string>> = {}) {
  return spawnSync('node', ['src/command-line/run.cjs', ...args], {
    encoding: 'utf8',
    env: { ...process.env, ...environment },
  });
}

const interrupted = (moment: 'read' | 'write' | 'end', signal: NodeJS.Signals) => ({
  NODE_OPTIONS: '--require ./test/command-line/interrupt-at.cjs',
  INTERRUPT_AT: moment,
  INTERRUPT_WITH: signal,
});

const state = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { withFileTypes: true, recursive: true }).map((entry) => {
      const path = join(entry.parentPath ?? entry.path, entry.name);
      if (entry.isSymbolicLink()) return [entry.name, `link to ${readlinkSync(path)}`];
      return [entry.name, entry.isFile() ? readFileSync(path, 'latin1') : 'folder'];
    }),
  );

/** Runs a command that must leave the folder as it was and say why in one sentence. */
function refused(
  work: () => ReturnType<typeof run>,
  { refuses }: Pick<Command, 'refuses'>,
  sentence: RegExp | string,
): void {
  const before = state();
  const { status, stderr, stdout } = work();
  expect([status, stdout]).toEqual([refuses, '']);
  expect(stderr).toMatch(sentence);
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(state()).toEqual(before);
}

it.each(commands)('%s refuses a folder', (_, command) => {
  const output = at(`out${command.ending}`);
  mkdirSync(output);
  refused(() => run([...command.line, output]), command, /out\.\w+ is a folder; give the name of a file$/m);
});

describe.each(oneOfEach)('%s refuses', (_, command) => {
  const { line, ending } = command;
  const output = at(`out${ending}`);
  const refusedAt = (path: string, sentence: RegExp): void => refused(() => run([...line, path]), command, sentence);

  it('a read-only file', () => {
    writeFileSync(output, old);
    chmodSync(output, 0o444);
    refusedAt(output, /out\.\w+ is read-only; give another name$/m);
  });

  it('a file in a folder that does not exist', () => {
    refusedAt(at(`none/out${ending}`), /out\.\w+ cannot be written: there is no such folder$/m);
  });

  it('what is not a file, and a link that leads to itself', () => {
    symlinkSync('/dev/full', output);
    refusedAt(output, /out\.\w+ is not an ordinary file$/m);
    symlinkSync(at('loop'), at('loop2'));
    symlinkSync(at('loop2'), at('loop'));
    rmSync(output);
    symlinkSync(at('loop'), output);
    refusedAt(output, /out\.\w+ is a link that leads to itself; give another name$/m);
  });

  it('a file for which there is no room', () => {
    writeFileSync(output, old);
    // 8 blocks of 512 bytes (POSIX, ulimit), which no file of these commands fits in.
    const limited = ['-c', 'ulimit -f 8; exec "$@"', 'sh', 'node', 'src/command-line/run.cjs', ...line, output];
    refused(
      () => spawnSync('sh', limited, { encoding: 'utf8' }),
      command,
      /out\.\w+ cannot be written: the file is too large for that disk$/m,
    );
  });
});

describe.each(reading)('%s refuses to replace its input', (_, command) => {
  const output = at(`out${command.ending}`);
  const isInput = /is the input workbook; give the output another name$/m;

  it('by a link', () => {
    symlinkSync('in.xlsx', output);
    refused(() => run([...command.line, output]), command, isInput);
  });

  it('by another name of the same file', () => {
    linkSync(input, output);
    refused(() => run([...command.line, output]), command, isInput);
  });
});

it.each([
  ['recalc', ['recalc', input], 2],
  ['recalc --values', ['recalc', '--values', input], 2],
  ['draw --packet', ['draw', '--packet', '--workbook', input], 1],
  ['draw --packet with prices', ['draw', '--packet', '--workbook', 'other.xlsx', '--prices', input], 1],
])('%s refuses to replace its input by its own name', (_, line, refuses) => {
  refused(() => run([...line, input]), { refuses }, /is the input workbook; give the output another name$/m);
});

describe.each(commands)('%s writes the whole file', (_, command) => {
  const { line, ending, begins } = command;
  beforeEach(() => fillInput(command));

  it('with spaces and accents in its name, behind links, which stay, and with the old file’s permissions', () => {
    const path = at(`eau été – n° 2${ending}`);
    writeFileSync(path, old, { mode: 0o600 });
    symlinkSync(path, at('second'));
    symlinkSync('second', at(`a link${ending}`));
    expect(run([...line, at(`a link${ending}`)])).toMatchObject({ status: 0, stderr: '' });
    expect(state()).toMatchObject({ second: `link to ${path}`, [`a link${ending}`]: 'link to second' });
    expect(readFileSync(path, 'latin1').slice(0, begins.length)).toBe(begins);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder).sort()).toEqual([`a link${ending}`, `eau été – n° 2${ending}`, 'in.xlsx', 'second']);
  });

  it('or nothing, if it is interrupted when half of that is written', () => {
    writeFileSync(at(`out${ending}`), old);
    const work = () => run([...line, at(`out${ending}`)], interrupted('write', 'SIGINT'));
    if (command.readsWorkbook)
      refused(work, { refuses: 2 }, /in\.xlsx: the work was interrupted and was stopped; nothing was written$/m);
    else refused(work, command, /out\.\w+ is not written: the work was interrupted$/m);
  });
});

describe('recalc, whose work is done in a process of its own, leaves the old file', () => {
  const output = at('out.xlsx');
  const refusedWith = (environment: Readonly<Record<string, string>>, sentence: RegExp): void => {
    writeFileSync(output, old);
    refused(() => run(['recalc', input, output], environment), { refuses: 2 }, sentence);
  };

  it('if it is interrupted before anything is written', () => {
    refusedWith(
      interrupted('read', 'SIGINT'),
      /in\.xlsx: the work was interrupted and was stopped; nothing was written$/m,
    );
  });

  it('if that process is killed when half of the file is written', () => {
    refusedWith(
      interrupted('write', 'SIGKILL'),
      /in\.xlsx: the work was ended by the system, .* and was stopped; nothing was written$/m,
    );
  });

  it('unless the new one is whole: then it says so', () => {
    writeFileSync(output, old);
    const { status, stderr } = run(['recalc', input, output], interrupted('end', 'SIGKILL'));
    expect([status, stderr]).toEqual([
      2,
      expect.stringMatching(/ and was stopped; .*out\.xlsx was written before that\n$/),
    ]);
    expect(readFileSync(output, 'latin1').slice(0, 2)).toBe('PK');
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.xlsx']);
  });

  it('if the time is up', () => {
    refusedWith(
      { SILTSTEAD_SECONDS: '0.05' },
      /in\.xlsx: the work took longer than 0\.05 s and was stopped; nothing was written$/m,
    );
  });

  it('if there is no memory left, with a sentence and without a trace', () => {
    refusedWith(
      { SILTSTEAD_MEGABYTES: '20' },
      /in\.xlsx: the work needs more than 20 MB of memory and was stopped; nothing was written$/m,
    );
  });
});

describe('calc --workbook', () => {
  // Two of its four drums are sound.
  const count = ["='Drum store'!B8"];
  const calc = (path: string, environment = {}) => run(['calc', '--workbook', path, ...count], environment);

  it('reads a workbook with spaces and accents in its name, behind a link', () => {
    cpSync(input, at('eau été – n° 2.xlsx'));
    symlinkSync('eau été – n° 2.xlsx', at('a link.xlsx'));
    const plain = calc(input);
    expect(plain).toMatchObject({ status: 0, stderr: '', stdout: '2\n' });
    expect(calc(at('a link.xlsx'))).toMatchObject({ status: 0, stderr: '', stdout: plain.stdout });
  });

  it.each([
    ['a folder', () => folder, /: it is a folder; give the name of a file$/m],
    ['a device', () => '/dev/zero', /dev\/zero: it is not an ordinary file$/m],
    ['no file', () => at('none.xlsx'), /none\.xlsx: no such file$/m],
    [
      'a link that leads to itself',
      () => {
        symlinkSync('loop.xlsx', at('loop.xlsx'));
        return at('loop.xlsx');
      },
      /loop\.xlsx: it is a link that leads to itself$/m,
    ],
  ])('refuses %s', (_, make, sentence) => {
    const path = make();
    refused(() => calc(path), { refuses: 2 }, sentence);
  });

  it('says so if it is interrupted', () => {
    refused(() => calc(input, interrupted('read', 'SIGINT')), { refuses: 2 }, /in\.xlsx: the work was interrupted/);
  });

  it('says so if its results find no room, and nothing if nobody reads on', () => {
    const shell = (script: string) =>
      spawnSync('bash', ['-c', script, 'bash', 'src/command-line/run.cjs', 'calc', '--workbook', input, ...count], {
        encoding: 'utf8',
      });
    refused(
      () => shell('node "$@" > /dev/full'),
      { refuses: 2 },
      /^the results cannot be printed: there is no room left on the disk$/m,
    );
    expect(shell('set -o pipefail; node "$@" | true')).toMatchObject({ status: 0, stderr: '', stdout: '' });
  });
});

it('takes away what work that was killed outright long ago left beside the file, and nothing else', () => {
  const now = Date.now() / 1_000;
  const leave = (name: string, hoursAgo: number): void => {
    writeFileSync(at(name), old);
    utimesSync(at(name), now - hoursAgo * 3_600, now - hoursAgo * 3_600);
  };
  leave('.siltstead.123.part', 2);
  leave('.siltstead.124.part', 0.1);
  leave('.siltstead.notes.part', 2);
  leave('mine.part', 2);
  expect(run(['draw', ...cone, at('out.svg')]).status).toBe(0);
  expect(readdirSync(folder).sort()).toEqual([
    '.siltstead.124.part',
    '.siltstead.notes.part',
    'in.xlsx',
    'mine.part',
    'out.svg',
  ]);
});
