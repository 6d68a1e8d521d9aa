/**
 * A water test read against what the fish are kept within: a row a reading, in sentences a grower can act on.
 */
import type { Caution } from '../caution';
import { timmons } from '../citations';
import { carbonDioxideRow } from './water-check-carbon';
import { ammoniaRow, chlorideRow, nitrateRow, nitriteRow, unionizedRow } from './water-check-nitrogen';
import { type Advice, bounded, type CheckCell, type CheckRow, type Verdict, type WaterTest } from './water-check-row';
import { waterOxygen } from './water-oxygen';
import { fishLimits, groupSource } from './water-species';

export type { CheckCell, CheckRow, Verdict, WaterTest };

/** Least alkalinity that keeps pH steady under nitrification, kg/m3 as CaCO3. Source: Timmons and Ebeling, from memory. */
const LEAST_ALKALINITY = 0.05;

/** More oxygen than this share of saturation is a sign of trapped bubbles or of a meter that is off. */
const SUPERSATURATION = 1.1;

/**
 * Rows of reading, value, low, high, verdict and note for a water test.
 *
 * Ammonia is judged by the stricter of the total limit and the total at which the un-ionized part reaches its limit. A reading not
 * taken is "not measured"; where pH or temperature is missing the un-ionized part is "cannot judge". Sources stand in the notes.
 */
export function waterCheck(test: WaterTest): readonly CheckRow[] {
  return [
    temperatureRow(test),
    phRow(test),
    ammoniaRow(test),
    unionizedRow(test),
    nitriteRow(test),
    nitrateRow(test),
    oxygenRow(test),
    alkalinityRow(test),
    chlorideRow(test),
    carbonDioxideRow(test),
  ];
}

/** The range is the one that the fish grow best in; within what they survive, the verdict says so. */
function temperatureRow({ species, temperature }: WaterTest): CheckRow {
  const { survives, growsBest, temperatureSource } = fishLimits(species);
  const row = bounded('temperature', 'temperature', temperature, growsBest, temperatureSource, {
    low: 'Feed less, or warm the water slowly: cold fish do not digest, and the filter slows down.',
    high: 'Shade or cool the water and add air: warm water holds less oxygen, but fish need more.',
    zero: true,
  });
  if (survives === undefined || row.verdict === 'not measured') return row;
  const [least, most] = survives;
  const figures = { least, most };
  const text = `${row.note.text} ${capital(species)} survive {least:temperature} to {most:temperature} and grow best in the range shown.`;
  const alive = temperature !== undefined && temperature >= least && temperature <= most;
  const verdict = alive && row.verdict !== 'within limits' ? 'survives, grows poorly' : row.verdict;
  return { ...row, verdict, note: { text, figures } };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function phRow({ species, ph }: WaterTest): CheckRow {
  return bounded('pH', 'number', ph, fishLimits(species).ph, groupSource, {
    low: 'Check alkalinity and add alkali little by little; nitrifying bacteria slow down in acid water.',
    high: 'Ammonia is more poisonous at high pH; look for fresh cement, lime or algae, and change the pH slowly.',
    zero: true,
  });
}

function oxygenRow({ species, oxygen, temperature, elevation, salinity }: WaterTest): CheckRow {
  const { oxygen: low, source } = fishLimits(species);
  const advice: Advice = { low: 'Add air now, stop feeding, and look for a blocked pump or pipe.', zero: true };
  if (temperature === undefined) {
    return bounded('oxygen', 'concentration', oxygen, [low, undefined], source, advice);
  }
  const saturation = waterOxygen(Math.max(0, temperature), elevation, salinity);
  const high = saturation * SUPERSATURATION;
  const row = bounded('oxygen', 'concentration', oxygen, [low, high], source, advice);
  if (row.verdict === 'too high') return { ...row, note: overSaturated(row.note, saturation) };
  // Hot water high up holds less than the fish are to have: then no air stone can reach the limit.
  return high < low ? { ...row, high: '' } : row;
}

function overSaturated(note: Caution, saturation: number): Caution {
  const text = `${note.text} Water in balance with air at this temperature and height holds {saturation:concentration}. A higher reading can mean that a pump draws in air, which gives fish gas bubbles, or that the meter is wrong.`;
  return { text, figures: { ...note.figures, saturation } };
}

function alkalinityRow({ alkalinity }: WaterTest): CheckRow {
  return bounded('alkalinity', 'alkalinity', alkalinity, [LEAST_ALKALINITY, undefined], `${timmons}, from memory`, {
    low: 'Add alkali: nitrification uses alkalinity up, and pH falls suddenly when it is gone.',
    zero: true,
  });
}
