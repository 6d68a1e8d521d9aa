import type { QuantityArgument, QuantityColumn } from '../../catalogue/argument';
import { highest, lowest } from '../../catalogue/reading/bounds';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { toProfile } from '../../units/quantity';
import { alsoRead } from '../../units/wording';
import type { Random } from './random';

/** How far a call is from everyday use. */
export type Mood = 'plausible' | 'extreme' | 'hostile';

type Bounded = QuantityArgument | QuantityColumn;

/** Usual figures of each kind in SI, from a small farm to a large one. */
const usual: Partial<Record<Kind, readonly [low: number, high: number]>> = {
  dimension: [0.002, 2],
  run: [0.1, 90],
  particle: [1e-6, 5e-3],
  area: [0.1, 100],
  volume: [1e-3, 50],
  bulk: [1e-3, 5],
  mass: [0.1, 2000],
  fish: [1e-3, 3],
  portion: [1e-3, 5],
  daily: [1e-8, 1e-3],
  transfer: [1e-7, 1e-3],
  stocking: [1, 100],
  flow: [1e-5, 1e-2],
  'air flow': [1e-5, 1e-2],
  loading: [1e-5, 1e-2],
  velocity: [0.01, 5],
  settling: [1e-6, 0.1],
  concentration: [1e-5, 0.05],
  alkalinity: [0.01, 0.5],
  salinity: [0.1, 40],
  temperature: [0.5, 39],
  density: [200, 3000],
  viscosity: [3e-4, 3e-3],
  pressure: [1e3, 2e5],
  power: [10, 3000],
  holding: [0.01, 2],
  'bed holding': [0.1, 20],
  'areal rate': [1e-9, 1e-6],
  application: [1e-3, 0.05],
  surface: [50, 1500],
  'price of mass': [0.1, 20],
  'price of energy': [1e-8, 1e-6],
  angle: [0.01, 1.5],
  minutes: [60, 1e5],
  hours: [60, 1e6],
  days: [3600, 1e8],
  months: [1e6, 1e8],
  share: [0.001, 1],
  count: [1, 60],
  money: [0.1, 5000],
  number: [0.01, 100],
  date: [36526, 60000],
};

const extremes: readonly number[] = [
  0,
  -0,
  1,
  -1,
  0.5,
  1e-300,
  5e-324,
  1e-30,
  1e-12,
  1e-6,
  1e6,
  1e12,
  1e30,
  1e150,
  1e300,
  1.7976931348623157e308,
  -1e-9,
  -1e308,
  46023,
  73050,
  2 ** 31,
  2 ** 53,
  100,
  99.999999,
  0.1 + 0.2,
];

const texts: readonly string[] = [
  '',
  ' ',
  '-',
  '–',
  'none',
  'x',
  '22,5',
  '22,5 in',
  '1/2',
  '22 1/2 in',
  '3-1/4"',
  '6\' 4"',
  '55 gal',
  '5 gpm',
  '0 1/2',
  '32 %',
  '320%',
  '68 °F',
  '-40 C',
  '1e308',
  '1e-320',
  '2026-05-01',
  '0.2 to 0.4',
  '350 ± 20',
  '40 mg/L as NO3',
  '<b>a</b>',
  '=1+1',
  '__proto__',
  'constructor',
  'toString',
  '½',
  '１２',
  '2 elbow, 1 tee',
  'mixed',
  'rainbow trout',
  'a'.repeat(5000),
  '\u0000',
  '\ud800',
  '1'.repeat(400),
  '0x10',
  '1 000',
  '1,250',
];

const oddities: readonly unknown[] = [
  null,
  undefined,
  true,
  false,
  {},
  [],
  [[]],
  [['']],
  [[1], ['']],
  [[1, 2, 3]],
  { basicValue: 3 },
  { basicValue: '#N/A', type: 'Error' },
  { code: '#DIV/0!', message: '' },
  [
    ['a', 1],
    ['b', 'x'],
  ],
  [[null], [5]],
];

/** Any value that a cell or a host can pass. */
export function hostileValue(random: Random): unknown {
  const which = random.next();
  if (which < 0.4) return random.pick(extremes);
  return which < 0.8 ? random.pick(texts) : random.pick(oddities);
}

/** A figure of a kind as it is typed: bare, or with one of the units that are read. */
export function typedFigure(random: Random, profile: Profile, spec: Bounded, mood: Mood): unknown {
  if (mood === 'hostile') return hostileValue(random);
  const exact = toProfile(profile, spec.kind, siFigure(random, spec, mood));
  // No cell holds a number that is not finite.
  const bare = Number.isFinite(exact) ? tidy(random, exact) : Number.MAX_VALUE;
  if (random.chance(0.9)) return bare;
  const units = [profile.units[spec.kind].symbol, ...alsoRead(profile, spec.kind)].filter((unit) => unit !== '');
  return units.length === 0 ? String(bare) : `${bare} ${random.pick(units)}`;
}

function siFigure(random: Random, spec: Bounded, mood: Mood): number {
  const [low = 0.01, high = 100] = usual[spec.kind] ?? [];
  const least = Math.max(low, lowest(spec) ?? spec.above ?? low);
  const most = Math.max(least, Math.min(high, highest(spec) ?? spec.below ?? high));
  const edges = [lowest(spec), highest(spec), spec.above, spec.below].filter((bound) => bound !== undefined);
  let si = random.chance(0.05)
    ? random.between(least, most)
    : random.magnitude(Math.max(least, 1e-12), Math.max(most, 1e-12));
  if (mood === 'extreme') {
    const which = random.next();
    if (which < 0.35 && edges.length > 0) si = random.pick(edges) * random.pick([1, 1, 1 - 1e-12, 1 + 1e-12]);
    else if (which < 0.6) si = random.magnitude(1e-12, 1e12);
    else if (which < 0.8) si = random.pick(extremes);
    else si *= random.pick([1e-6, 1e-3, 1e3, 1e6]);
  }
  return spec.whole ? Math.max(1, Math.round(si)) : si;
}

/** Figures as people type them, most of the time. */
function tidy(random: Random, value: number): number {
  const rounded = random.chance(0.7) ? Number(value.toPrecision(random.whole(1, 5))) : value;
  return Number.isFinite(rounded) ? rounded : value;
}
