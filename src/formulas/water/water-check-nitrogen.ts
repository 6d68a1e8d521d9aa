/**
 * The nitrogen rows of a water test, and the chloride that keeps nitrite out of the blood.
 */
import { AMMONIA_PER_NITROGEN, atomicMass, molarMass } from './atomic-mass';
import { unionizedShare, waterLimit } from './water-ammonia';
import { type Advice, bounded, type CheckRow, cell, noteOf, notMeasured, type WaterTest } from './water-check-row';
import {
  fishLimits,
  groupSource,
  isColdWater,
  NITRATE_PER_NITROGEN,
  NITRITE_PER_NITROGEN,
  unionizedSource,
} from './water-species';

/** Chloride per nitrite (as NO2), by mass, at which hardly any nitrite enters the blood. Source: SRAC Publication 462. */
const CHLORIDE_PER_NITRITE = 10;

/** kg of NH4 per kg of N: the ion that nearly all of the total is. */
const AMMONIUM_PER_NITROGEN = molarMass.ammonium / atomicMass.nitrogen;

const AMMONIA_ACTION =
  'Stop feeding, change water, and do not raise the pH; look for uneaten feed, dead fish or a filter that has stopped.';

/** Value or limit as shown: nitrogen, or the ion that it is part of. */
function onBasis(nitrogen: number, basis: 'N' | 'ion', perNitrogen: number): number {
  return basis === 'N' ? nitrogen : nitrogen * perNitrogen;
}

function unionizedLimit({ species }: WaterTest): { readonly limit: number; readonly source: string } {
  const source = isColdWater(species) ? unionizedSource.cold : unionizedSource.general;
  return { limit: fishLimits(species).unionized, source };
}

/** Total ammonia, by the stricter of its own limit and the total at which the un-ionized part reaches its limit. */
export function ammoniaRow(test: WaterTest): CheckRow {
  const { species, ammonia, ph, temperature, salinity, basis } = test;
  const { ammonia: total, source } = fishLimits(species);
  const { limit: unionized, source: unionizedFrom } = unionizedLimit(test);
  const judged = ph !== undefined && temperature !== undefined;
  const byUnionized = judged ? waterLimit(unionized, ph, temperature, salinity) : Number.POSITIVE_INFINITY;
  const high = Math.min(total, byUnionized);
  const show = (nitrogen: number) => onBasis(nitrogen, basis, AMMONIUM_PER_NITROGEN);
  const as = basis === 'N' ? 'as N' : 'as NH4';
  const from =
    byUnionized < total
      ? `total ammonia ${as} whose un-ionized part reaches its limit at this pH and temperature, ${unionizedFrom}`
      : `total ammonia ${as}, ${source}`;
  const row = bounded(
    'ammonia',
    'concentration',
    ammonia === undefined ? undefined : show(ammonia),
    [undefined, show(high)],
    from,
    { high: AMMONIA_ACTION, zero: true },
  );
  if (judged || row.verdict !== 'within limits' || ammonia === 0) return row;
  return {
    ...row,
    verdict: 'cannot judge',
    note: {
      text: `The total is below its limit, but without pH and temperature the un-ionized part is unknown. Limit: ${from}.`,
    },
  };
}

/** The un-ionized part of the ammonia; it cannot be judged without pH and temperature. */
export function unionizedRow(test: WaterTest): CheckRow {
  const { ammonia, ph, temperature, salinity, basis } = test;
  const { limit, source } = unionizedLimit(test);
  const show = (nitrogen: number) => onBasis(nitrogen, basis, AMMONIA_PER_NITROGEN);
  const high = cell('concentration', show(limit));
  if (ammonia === undefined) return notMeasured('un-ionized ammonia', '', high);
  if (ph === undefined || temperature === undefined) {
    const missing = [ph === undefined ? 'pH' : '', temperature === undefined ? 'temperature' : ''];
    const needed = missing.filter((one) => one !== '').join(' and ');
    const text = `Measure ${needed} with the ammonia: the poisonous part depends on both. Limit: ${source}.`;
    return { reading: 'un-ionized ammonia', value: '', low: '', high, verdict: 'cannot judge', note: { text } };
  }
  const unionized = ammonia * unionizedShare(ph, temperature, salinity);
  const advice: Advice = { high: AMMONIA_ACTION, zero: true };
  return bounded('un-ionized ammonia', 'concentration', show(unionized), [undefined, show(limit)], source, advice);
}

/** Nitrite; chloride of ten times its mass (as NO2) keeps it out of the blood. */
export function nitriteRow({ species, nitrite, chloride, basis }: WaterTest): CheckRow {
  const { nitrite: limit, source } = fishLimits(species);
  const show = (nitrogen: number) => onBasis(nitrogen, basis, NITRITE_PER_NITROGEN);
  const enough =
    nitrite !== undefined &&
    chloride !== undefined &&
    chloride >= CHLORIDE_PER_NITRITE * NITRITE_PER_NITROGEN * nitrite;
  const high = enough
    ? 'Feed less and change water. The chloride here keeps much of the nitrite out of the blood, but that only gains time.'
    : 'Stop feeding, change water and add air; plain salt (chloride) protects the blood, if plants and local advice allow it.';
  const value = nitrite === undefined ? undefined : show(nitrite);
  const as = basis === 'N' ? 'as N' : 'as NO2';
  return bounded('nitrite', 'concentration', value, [undefined, show(limit)], `${as}, ${source}`, { high, zero: true });
}

export function nitrateRow({ species, nitrate, basis }: WaterTest): CheckRow {
  const { nitrate: limit } = fishLimits(species);
  const show = (nitrogen: number) => onBasis(nitrogen, basis, NITRATE_PER_NITROGEN);
  const value = nitrate === undefined ? undefined : show(nitrate);
  const as = basis === 'N' ? 'as N' : 'as NO3';
  return bounded('nitrate', 'concentration', value, [undefined, show(limit)], `${as}, ${groupSource}`, {
    high: 'Change water or add plants: nitrate builds up if nothing removes it.',
    zero: true,
  });
}

/** Chloride, wanted at ten times the nitrite (as NO2). */
export function chlorideRow({ chloride, nitrite }: WaterTest): CheckRow {
  const source = 'ten times the nitrite as NO2, SRAC Publication 462';
  if (chloride === undefined) return notMeasured('chloride');
  if (nitrite === undefined) {
    return {
      reading: 'chloride',
      value: cell('concentration', chloride),
      low: '',
      high: '',
      verdict: 'cannot judge',
      note: {
        text: noteOf(source, 'cannot judge', 'Measure nitrite too: the chloride needed depends on it.', chloride === 0),
      },
    };
  }
  const low = CHLORIDE_PER_NITRITE * NITRITE_PER_NITROGEN * nitrite;
  return bounded('chloride', 'concentration', chloride, [low, undefined], source, {
    low: 'Add plain salt without additives, little by little, if plants and local advice allow it.',
    zero: true,
  });
}
