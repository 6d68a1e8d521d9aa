/**
 * Head loss of fittings, listed in a plumber's words.
 */

import { Refusal } from '../refusal';
import { fullyTurbulentFactor } from './friction';

/** Loss of a set of fittings: a K of its own, and equivalent lengths in bores, each worth K = length x fully turbulent factor. */
export interface FittingLoss {
  readonly coefficient: number;
  readonly bores: number;
}

export const noFittings: FittingLoss = { coefficient: 0, bores: 0 };

const bores = (length: number): FittingLoss => ({ coefficient: 0, bores: length });
const coefficient = (k: number): FittingLoss => ({ coefficient: k, bores: 0 });

/**
 * Equivalent lengths in bores, Crane Technical Paper 410, pages A-27 to A-30, of standard fittings of full bore, valves open; the
 * smallest losses, of couplings and unions, from Perry's Chemical Engineers' Handbook, table 6-4. A sweep is a bend of 90° whose
 * radius is 1.5 bores (A-29, from memory). Other tables differ as much as three times: Hydraulic Institute has 1.00 for a screwed 2 in elbow where Crane has 0.57.
 */
const table: Readonly<Record<string, FittingLoss>> = {
  elbow: bores(30),
  'elbow 45': bores(16),
  sweep: bores(14),
  'return bend': bores(50),
  tee: bores(60),
  'tee run': bores(20),
  'ball valve': bores(3),
  'gate valve': bores(8),
  'butterfly valve': bores(45),
  'check valve': bores(100),
  'angle valve': bores(150),
  'globe valve': bores(340),
  coupling: coefficient(0.04),
  union: coefficient(0.04),
  entrance: coefficient(0.5),
  exit: coefficient(1),
};

/** Words that mean one of the table's. A valve of no kind is the ball valve that plastic pipework has. */
const alike: Readonly<Record<string, string>> = {
  valve: 'ball valve',
  bend: 'elbow',
  'elbow 90': 'elbow',
  '90 elbow': 'elbow',
  '45 elbow': 'elbow 45',
  'long elbow': 'sweep',
  'tee branch': 'tee',
  'branch tee': 'tee',
  'run tee': 'tee run',
  'swing check': 'check valve',
  socket: 'coupling',
};

/** The fittings known, in the table's words. */
export const fittingNames: readonly string[] = Object.keys(table);

/**
 * Loss of fittings listed in words: `2 elbow, 1 tee`, `3 elbows + ball valve`. A fitting without a count is one.
 *
 * Refuses a word that is not in the table. Source: Crane Technical Paper 410.
 */
export function readFittings(text: string): FittingLoss {
  let k = 0;
  let length = 0;
  for (const item of text.split(/[,;+]|\band\b|\n/)) {
    const words = item
      .trim()
      .toLowerCase()
      .replace(/[°-]|\bdeg(rees?)?\b/g, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    if (words === '') continue;
    const { count, loss } = counted(words);
    k += count * loss.coefficient;
    length += count * loss.bores;
  }
  return { coefficient: k, bores: length };
}

function counted(words: string): { readonly count: number; readonly loss: FittingLoss } {
  const alone = lookUp(words);
  if (alone !== undefined) return { count: 1, loss: alone };
  const [, number = '', name = ''] =
    /^(\d+(?:\.\d+)?)\s*[x×]?\s+?(.*)$/.exec(words.replace(/^(\d+)([a-zx×])/, '$1 $2')) ?? [];
  const loss = lookUp(name.replace(/^[x×]\s*/, ''));
  if (loss !== undefined) return { count: Number(number), loss };
  throw new Refusal(
    'fittings',
    `"${words.slice(0, 40)}" is not a known fitting; give a K, or any of: ${fittingNames.join(', ')}`,
  );
}

const names: ReadonlyMap<string, string> = new Map(Object.entries(alike));

function lookUp(name: string): FittingLoss | undefined {
  const singular = name.replace(/s\b/g, '').replace(/\bcros\b/g, 'cross');
  for (const one of [name, singular]) {
    const known = names.get(one) ?? one;
    if (Object.keys(table).includes(known)) return table[known];
  }
  return undefined;
}

/** K of a set of fittings in a pipe of a bore, m. */
export function fittingCoefficient(loss: FittingLoss, bore: number): number {
  return loss.bores === 0 ? loss.coefficient : loss.coefficient + loss.bores * fullyTurbulentFactor(bore);
}
