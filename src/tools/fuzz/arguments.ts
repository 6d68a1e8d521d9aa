import type { Argument, CellsArgument } from '../../catalogue/argument';
import type { CatalogueRow } from '../../catalogue/define';
import { argumentNames } from '../../functions/adapter';
import { isOptional } from '../../functions/metadata';
import type { Kind } from '../../units/kinds';
import { type Profile, readProfile } from '../../units/profile';
import { hostileValue, type Mood, typedFigure } from './figures';
import type { Random } from './random';
import { patternRows, readable, tableValue } from './tables';

/** A call as a host makes it. */
export interface FuzzCall {
  readonly name: string;
  readonly values: readonly unknown[];
}

const profiles: readonly Profile[] = [
  'metric',
  'US',
  'US, flow L/min, temperature C',
  'metric, dimension in, mass lb',
].map(readProfile);

/** A call of a function: mostly sensible, often with one strange argument, sometimes all nonsense. */
export function callOf(random: Random, row: CatalogueRow): FuzzCall {
  const profile = random.pick(profiles);
  const call = random.next();
  const strange = call < 0.6 ? -1 : random.whole(0, Object.keys(row.arguments).length);
  const wild: Mood = call < 0.85 ? 'extreme' : 'hostile';
  const all = call > 0.95;
  const names = argumentNames(row);
  const values = names.map((name, place): unknown => {
    const mood: Mood = all || place === strange ? wild : 'plausible';
    if (name === 'units') return mood === 'hostile' ? hostileValue(random) : profile.text;
    const spec = row.arguments[name];
    if (spec === undefined) return random.pick([true, false, undefined, '']);
    if (isOptional(spec) && random.chance(0.4)) return random.pick([undefined, null, '']);
    return argumentValue(random, profile, name, spec, mood);
  });
  return {
    name: row.name,
    values: values.slice(0, random.chance(0.9) ? values.length : random.whole(0, values.length)),
  };
}

/** One value for an argument; tables come as blocks. */
export function argumentValue(random: Random, profile: Profile, name: string, spec: Argument, mood: Mood): unknown {
  if ('choice' in spec) return mood === 'hostile' ? hostileValue(random) : random.pick(spec.choice);
  if ('table' in spec) {
    const ofPatterns = name.startsWith('pattern') && mood !== 'hostile';
    return ofPatterns ? patternRows(random, profile, random.whole(1, 3)) : tableValue(random, profile, spec, mood);
  }
  if ('cells' in spec) return cellsValue(random, profile, spec, mood);
  if ('reader' in spec) return readerValue(random, profile, spec.kind, mood);
  return typedFigure(random, profile, spec, mood);
}

function readerValue(random: Random, profile: Profile, kind: Kind | undefined, mood: Mood): unknown {
  if (mood === 'hostile') return hostileValue(random);
  if (kind === undefined || random.chance(0.3)) return random.pick(readable);
  return typedFigure(random, profile, { kind }, mood);
}

/** Names of inputs in the first column, one or more columns of figures beside them. */
function cellsValue(random: Random, profile: Profile, { inputs }: CellsArgument, mood: Mood): unknown {
  if (mood === 'hostile' && random.chance(0.3)) return hostileValue(random);
  const columns = random.whole(1, 2);
  return Object.entries(inputs ?? {})
    .filter(() => random.chance(0.7))
    .map(([name, kind]) => [
      name,
      ...Array.from({ length: columns }, () => {
        if (random.chance(0.15)) return random.pick(['', '', 'none', 0]);
        const one = mood === 'plausible' || random.chance(0.9) ? 'plausible' : mood;
        return typedFigure(random, profile, { kind, ...(kind === 'count' ? { whole: true } : {}) }, one);
      }),
    ]);
}
