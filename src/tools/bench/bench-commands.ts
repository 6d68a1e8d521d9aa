/** The command line from the shell to its end, each time with other figures. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { textTable } from '../../command-line/text-table';
import { timesRow, type Wanted } from './bench-wanted';

const rounds = 7;
const sample = 'sample-workbooks/US/cone-cut-plan.xlsx';

interface Command {
  readonly what: string;
  readonly words: (round: number, folder: string) => readonly string[];
  readonly wanted: Wanted;
}

const cone = (round: number) => ['--units', 'US', '--top', `${22 + round / 10}`, '--bottom', '4', '--height', '9'];

const commands: readonly Command[] = [
  {
    what: 'calc, a plain call',
    words: (round) => ['calc', `=SILT.CONE.HEIGHT("US",${20 + round / 10},4,45)`],
    wanted: { below: 250 },
  },
  {
    what: 'calc, with a built-in function',
    words: (round) => ['calc', `=ROUND(SILT.CONE.HEIGHT("US",${20 + round / 10},4,45),3)`],
    wanted: {},
  },
  {
    what: 'recalc, the sample with a cut plan',
    words: (round, folder) => ['recalc', '--', sample, join(folder, `${round}.xlsx`)],
    wanted: {},
  },
  ...['dxf', 'pdf', 'svg'].map(
    (kind): Command => ({
      what: `draw, a pattern as ${kind.toUpperCase()}`,
      words: (round, folder) => ['draw', ...cone(round), join(folder, `${round}.${kind}`)],
      wanted: { below: 1000 },
    }),
  ),
];

function milliseconds(words: readonly string[]): number {
  const [name = '', ...rest] = words;
  const begun = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['src/command-line/run.cjs', name, ...rest], {
    encoding: 'utf8',
  });
  const took = performance.now() - begun;
  if (status !== 0) throw new Error(`${words.join(' ')}: exit code ${status}: ${stderr}`);
  return took;
}

/** How long each command takes, once its files have been translated. */
export function commandsTable(): string {
  const folder = mkdtempSync(join(tmpdir(), 'siltstead-bench-'));
  try {
    const rows = commands.map(({ what, words, wanted }) => {
      milliseconds(words(rounds, folder));
      const times = Array.from({ length: rounds }, (_, round) => milliseconds(words(round, folder)));
      return timesRow(what, times, wanted);
    });
    return textTable(['command', 'ms, median of 7', 'slowest', 'wanted of the median'], rows);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
