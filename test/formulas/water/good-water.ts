import { type CheckRow, type WaterTest, waterCheck } from '../../../src/formulas/water/water-check';

/** A test of water that is within every limit. */
export const goodWater: WaterTest = {
  species: 'warm-water',
  temperature: 26,
  ph: 7,
  ammonia: 5e-4,
  nitrite: 1e-4,
  nitrate: 0.03,
  oxygen: 6e-3,
  salinity: 0,
  elevation: 0,
  alkalinity: 0.1,
  chloride: 0.1,
  basis: 'N',
};

/** One row of the check of good water that was changed in a reading or two. */
export function rowOf(changed: Partial<WaterTest>, reading: string): CheckRow {
  const row = waterCheck({ ...goodWater, ...changed }).find((one) => one.reading === reading);
  if (row === undefined) throw new Error(`no row for ${reading}`);
  return row;
}

/** What that row says, without the figures for its marks. */
export function noteOf(changed: Partial<WaterTest>, reading: string): string {
  return rowOf(changed, reading).note.text;
}
