/**
 * The carbon dioxide row of a water test, which is figured and not measured.
 */
import { Refusal } from '../refusal';
import { waterCarbonDioxide } from './carbonate';
import { bounded, type CheckRow, cell, notMeasured, type WaterTest } from './water-check-row';
import { fishLimits } from './water-species';

/** Practical salinity above which fresh-water constants are no longer good enough to judge by. */
const FRESH = 1;

/** Carbon dioxide from alkalinity, pH and temperature; "cannot judge" where one of them is missing or they cannot all be right. */
export function carbonDioxideRow(test: WaterTest): CheckRow {
  const { species, alkalinity, ph, temperature, salinity } = test;
  const { carbonDioxide: limit, carbonDioxideSource: source } = fishLimits(species);
  const high = cell('concentration', limit);
  const name = 'carbon dioxide';
  if (alkalinity === undefined && ph === undefined) return notMeasured(name, '', high);
  const cannot = (text: string): CheckRow => ({
    reading: name,
    value: '',
    low: '',
    high,
    verdict: 'cannot judge',
    note: { text },
  });
  if (alkalinity === undefined || ph === undefined || temperature === undefined) {
    return cannot('Measure alkalinity, pH and temperature of the same water: all three are needed.');
  }
  if (salinity > FRESH) return cannot('It can be calculated for fresh water only.');
  try {
    const value = waterCarbonDioxide(alkalinity, ph, Math.max(0, temperature));
    return bounded(
      name,
      'concentration',
      value,
      [undefined, limit],
      `${source}; the value is calculated from alkalinity, pH and temperature`,
      {
        high: 'Add air or let the water fall through air, and ventilate the room: fish breathe it out, and only air removes it.',
      },
    );
  } catch (error) {
    if (error instanceof Refusal) return cannot('Alkalinity and pH cannot both be right: measure them again.');
    throw error;
  }
}
