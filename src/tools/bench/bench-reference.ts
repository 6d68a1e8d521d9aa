/**
 * Two searches beside the same computation in `fluids`, a general-purpose library of another language, where it is
 * installed.
 */
import { spawnSync } from 'node:child_process';
import { textTable } from '../../command-line/text-table';
import { frictionFactor } from '../../formulas/pipe/friction';
import { settlingVelocity } from '../../formulas/settle/settling-velocity';
import { adapted, callsASecond } from './bench-calls';

const size = 0.001;
const density = 2650;
const temperature = 20;
const reynolds = 1e5;
const roughness = 1e-4;

/** Python that prints in one line what it computed and how often a second, the best of many short spells as here. */
const program = `
import json, timeit
from fluids import friction_factor
from fluids.drag import v_terminal
from fluids import __version__

def best(call):
    return max(200 / spell for spell in timeit.repeat(call, number=200, repeat=60))

water = dict(rho=998.2067, mu=1.0016e-3)
fall = lambda: v_terminal(D=${size}, rhop=${density}.0, Method='Cheng', **water)
rub = lambda: friction_factor(Re=${reynolds}.0, eD=${roughness}, Method='Colebrook')
print(json.dumps(dict(version=__version__, fall=[fall(), best(fall)], rub=[rub(), best(rub)])))
`;

interface Reference {
  readonly version: string;
  readonly fall: readonly [result: number, rate: number];
  readonly rub: readonly [result: number, rate: number];
}

/** The first is the user's own Python; libraries of the system are often only in the second. */
const interpreters = ['python3', '/usr/bin/python3'];

function measuredReference(): Reference | undefined {
  for (const interpreter of interpreters) {
    const { status, stdout } = spawnSync(interpreter, ['-c', program], { encoding: 'utf8', timeout: 60_000 });
    if (status === 0) return JSON.parse(stdout) as Reference;
  }
  return undefined;
}

const whole = (value: number) => Math.round(value).toLocaleString('en-US');

/**
 * How often a second each computes, and what; results that differ by more than the water's properties do are refused.
 */
export function referenceTable(): string {
  const velocity = adapted('SETTLE.VELOCITY');
  const ours = {
    function: callsASecond(() => velocity('metric', size * 1000, density, temperature)),
    fall: callsASecond(() => settlingVelocity(size, density, temperature, 0)),
    rub: callsASecond(() => frictionFactor(reynolds, roughness)),
  };
  const theirs = measuredReference();
  const beside = (mine: number, rate: number | undefined) =>
    rate === undefined ? ['', ''] : [whole(rate), (mine / rate).toFixed(1)];
  const table = textTable(
    ['computation', 'calls a second', 'the library', 'times'],
    [
      ['SETTLE.VELOCITY, as a cell calls it', whole(ours.function), ...beside(ours.function, theirs?.fall[1])],
      ['terminal velocity by Cheng', whole(ours.fall), ...beside(ours.fall, theirs?.fall[1])],
      ['friction factor by Colebrook', whole(ours.rub), ...beside(ours.rub, theirs?.rub[1])],
    ],
  );
  if (theirs === undefined)
    return `${table}\n\nthe library fluids for Python is not installed here, so nothing stands beside`;
  checkAgreement('terminal velocity', settlingVelocity(size, density, temperature, 0), theirs.fall[0], 1e-3);
  checkAgreement('friction factor', frictionFactor(reynolds, roughness), theirs.rub[0], 1e-9);
  return `${table}\n\nthe library is fluids ${theirs.version} for Python, which is given the water’s properties; both give the same results`;
}

function checkAgreement(what: string, mine: number, theirs: number, within: number): void {
  if (Math.abs(mine / theirs - 1) > within) throw new Error(`${what}: ${mine} here and ${theirs} in the library`);
}
