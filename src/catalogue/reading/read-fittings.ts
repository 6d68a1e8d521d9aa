import { type FittingLoss, fittingLosses } from '../../formulas/pipe/fittings';
import { Unreadable } from '../../units/unreadable';

/** Other names for fittings of the table. A valve without a kind is the ball valve that plastic pipework has. */
const otherNames: ReadonlyMap<string, string> = new Map(
  Object.entries({
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
  }),
);

/** The names of the fittings in the table. */
export const fittingNames: readonly string[] = Object.keys(fittingLosses);

/** Reads fittings listed in words: `2 elbow, 1 tee`, `3 elbows + ball valve`. A fitting without a count is one. */
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
  throw new Unreadable(
    `"${words.slice(0, 40)}" is not a known fitting; give a K, or any of: ${fittingNames.join(', ')}`,
  );
}

function lookUp(name: string): FittingLoss | undefined {
  const singular = name.replace(/s\b/g, '').replace(/\bcros\b/g, 'cross');
  for (const spelled of [name, singular]) {
    const known = otherNames.get(spelled) ?? spelled;
    if (fittingNames.includes(known)) return fittingLosses[known];
  }
  return undefined;
}
