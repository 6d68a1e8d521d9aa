/**
 * Where solids, nitrogen and phosphorus of a farm go in a day at steady state, row by row from the levels in the water.
 */
import type { Farm } from './plan-farm';

/** The places that something may go to, in order. */
export const balancePlaces = [
  'kept by fish',
  'drums',
  'pads',
  'beds',
  'plants',
  'let out',
  'air',
  'builds up',
] as const;

/** kg/s each; a figure that rests on something not given is undefined. */
export interface BalanceRow {
  readonly where: string;
  readonly solids: number;
  readonly nitrogen: number | undefined;
  readonly phosphorus: number | undefined;
}

/** Nutrients of solids that go somewhere. */
function ofSolids(where: string, solids: number, { scenario }: Farm): BalanceRow {
  const { nitrogenShare, phosphorusShare } = scenario;
  return { where, solids, nitrogen: solids * nitrogenShare, phosphorus: solids * phosphorusShare };
}

/** The places that solids, nitrogen and phosphorus go to, each worked out by itself. */
function places(farm: Farm): readonly BalanceRow[] {
  const { scenario, balance, feed } = farm;
  const { conversion, fishNitrogen, fishPhosphorus } = scenario;
  const { solids, ammonia, nitrate, phosphorus } = balance;
  const gain = conversion === undefined ? undefined : feed / conversion;
  const out = ofSolids('', solids.out, farm);
  const rising = ofSolids('', solids.rising, farm);
  const plus = (solid: number | undefined, dissolved: number): number => (solid ?? 0) + dissolved;
  return [
    {
      where: 'kept by fish',
      solids: 0,
      nitrogen: gain === undefined ? undefined : gain * fishNitrogen,
      phosphorus: gain === undefined ? undefined : gain * fishPhosphorus,
    },
    ofSolids('drums', solids.drums, farm),
    ofSolids('pads', solids.pads, farm),
    ofSolids('beds', solids.beds, farm),
    { where: 'plants', solids: 0, nitrogen: nitrate.plants, phosphorus: 0 },
    {
      where: 'let out',
      solids: solids.out,
      nitrogen: plus(out.nitrogen, ammonia.out + nitrate.out - nitrate.source),
      phosphorus: plus(out.phosphorus, phosphorus.out),
    },
    { where: 'air', solids: solids.decayed, nitrogen: nitrate.denitrified, phosphorus: 0 },
    {
      where: 'builds up',
      solids: solids.rising,
      nitrogen: plus(rising.nitrogen, ammonia.rising + nitrate.rising),
      phosphorus: plus(rising.phosphorus, phosphorus.rising),
    },
  ];
}

const columns = ['solids', 'nitrogen', 'phosphorus'] as const;

/**
 * Rows: in, the places, traced (their sum), not traced. `in` is solids made, nitrogen and phosphorus fed.
 *
 * Nitrogen kept by fish is gain x their share, where conversion is given. What leaves with water let out is counted less
 * what the source brings in. Solids that decay in the water leave as carbon dioxide, under air; their nitrogen and
 * phosphorus go on dissolved. Only nitrogen that is denitrified goes to air. Source: mass balance.
 */
export function planBalance(farm: Farm): readonly BalanceRow[] {
  const into: BalanceRow = {
    where: 'in',
    solids: farm.solids,
    nitrogen: farm.nitrogenFed,
    phosphorus: farm.phosphorusFed,
  };
  const there = places(farm);
  const total = (column: (typeof columns)[number]) => there.reduce((sum, row) => sum + (row[column] ?? 0), 0);
  const traced = { solids: total('solids'), nitrogen: total('nitrogen'), phosphorus: total('phosphorus') };
  return [
    into,
    ...there,
    { where: 'traced', ...traced },
    {
      where: 'not traced',
      solids: farm.solids - traced.solids,
      nitrogen: farm.nitrogenFed - traced.nitrogen,
      phosphorus: farm.phosphorusFed - traced.phosphorus,
    },
  ];
}
