import { waterCheck } from '../../formulas/water/water-check';
import { fishKinds } from '../../formulas/water/water-species';
import { asNitrogen, type NitrogenForm } from '../../units/concentration';
import { define } from '../define';
import { type NitrogenReading, nitrogenReading, reading } from '../readers';
import { elevation, salinity } from '../water-arguments';

const bases = ['N', 'ion'] as const;
const MILLIGRAM_PER_LITRE = 1e-3;

/** The reading as nitrogen: by its own text if it names a form, else by the basis of the whole test. */
function nitrogenOf(
  given: NitrogenReading | undefined,
  basis: (typeof bases)[number],
  ion: NitrogenForm,
): number | undefined {
  if (given === undefined) return undefined;
  return asNitrogen(given.si, given.as ?? (basis === 'ion' ? ion : 'N'));
}

export const waterCheckRow = define({
  name: 'WATER.CHECK',
  summary: 'Judges a water test in words: reading, value, low, high, verdict, note.',
  arguments: {
    species: { choice: fishKinds, meaning: 'species, or warm-water, cool-water, cold-water' },
    temperature: {
      ...reading('temperature', { atLeast: -2, atMost: 50 }),
      meaning: 'temperature, or - if not measured',
    },
    ph: { ...reading('number', { atLeast: 0, atMost: 14 }), meaning: 'pH, or - if not measured' },
    ammonia: { ...nitrogenReading('ammonia'), meaning: 'total ammonia, or - if not measured' },
    nitrite: { ...nitrogenReading('nitrite'), meaning: 'nitrite, or - if not measured' },
    nitrate: { ...nitrogenReading('nitrate'), meaning: 'nitrate, or - if not measured' },
    oxygen: {
      ...reading('concentration', { atLeast: 0, atMost: 0.1 }),
      meaning: 'dissolved oxygen, or - if not measured',
    },
    salinity,
    alkalinity: {
      ...reading('alkalinity', { atLeast: 0, atMost: 10 }),
      meaning: 'alkalinity as CaCO3',
      optional: true,
    },
    chloride: {
      ...reading('concentration', { atLeast: 0, atMost: 30_000 * MILLIGRAM_PER_LITRE }),
      meaning: 'chloride',
      optional: true,
    },
    basis: { choice: bases, default: 'N', meaning: 'whether bare nitrogen readings are of N or of the ion' },
    elevation,
  },
  result: {
    rows: {
      reading: { text: true },
      value: { mixed: true },
      low: { mixed: true },
      high: { mixed: true },
      verdict: { text: true },
      note: { mixed: true },
    },
  },
  compute: ({ ammonia, nitrite, nitrate, basis, ...rest }) =>
    waterCheck({
      ...rest,
      basis,
      ammonia: nitrogenOf(ammonia, basis, 'NH4'),
      nitrite: nitrogenOf(nitrite, basis, 'NO2'),
      nitrate: nitrogenOf(nitrate, basis, 'NO3'),
    }),
  notes: [
    'Ammonia is judged by the stricter of two limits, total and un-ionized. A missing reading is "not measured", never fine; without pH or temperature the un-ionized part is "cannot judge".',
    'Temperature is judged by the range in which the species grows best; if the fish only survive, the verdict says so. Oxygen above 1.1 times saturation at this elevation is too high. Carbon dioxide is calculated from alkalinity, pH and temperature, for fresh water only.',
    'For a 0 in ammonia, nitrite or nitrate the note says that an empty cell looks the same.',
    'Local advice for your fish comes first.',
  ],
  sources: [
    'FAO Fisheries Technical Paper 589 (2014), tables 3.1 and 7.1',
    'UF/IFAS FA16',
    'STOCK.SPECIES names them all',
  ],
  example: {
    formula: '=SILT.WATER.CHECK("metric","tilapia",27,7.2,1,0.2,"40 mg/L as NO3",5.5)',
    gives: 'one row per reading',
  },
  unpublished: 'Verdicts in words; its own test checks the limits against their sources.',
});
