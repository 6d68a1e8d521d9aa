import { describe, expect, it } from 'vitest';
import { fao as faoPaper, timmons } from '../../../src/formulas/citations';
import { type WaterTest, waterCheck } from '../../../src/formulas/water/water-check';
import { bounded } from '../../../src/formulas/water/water-check-row';
import { goodWater, noteOf, rowOf } from './good-water';

const fao = `${faoPaper}, table 3.1`;
const unmeasured = 'Measure it before you trust the rest.';
const emptyCell = 'An empty cell looks the same as 0: type - for a reading not taken. ';
const ammoniaAction =
  'Stop feeding, change water, and do not raise the pH; look for uneaten feed, dead fish or a filter that has stopped. ';
const local = ' Local advice comes first.';

describe('the note of a reading', () => {
  it('within limits names the limit and no more', () => {
    expect(waterCheck(goodWater).map(({ note }) => note.text)).toEqual([
      `Limit: ${fao}.`,
      `Limit: ${fao}.`,
      `Limit: total ammonia as N, ${fao}.`,
      'Limit: UF/IFAS FA16: above 0.05 mg/L harms.',
      `Limit: as N, ${fao}.`,
      `Limit: as N, ${fao}.`,
      `Limit: ${fao}.`,
      `Limit: ${timmons}, from memory.`,
      'Limit: ten times the nitrite as NO2, SRAC Publication 462.',
      'Limit: common practice, no source; the value is calculated from alkalinity, pH and temperature.',
    ]);
  });

  it('names the ion where the test was of the ion', () => {
    expect(noteOf({ basis: 'ion' }, 'ammonia')).toBe(`Limit: total ammonia as NH4, ${fao}.`);
    expect(noteOf({ basis: 'ion' }, 'nitrite')).toBe(`Limit: as NO2, ${fao}.`);
    expect(noteOf({ basis: 'ion' }, 'nitrate')).toBe(`Limit: as NO3, ${fao}.`);
  });

  it('above a limit says first what to do and last that local advice comes first', () => {
    expect(noteOf({ temperature: 33 }, 'temperature')).toBe(
      `Shade or cool the water and add air: warm water holds less oxygen, but fish need more. Limit: ${fao}.${local}`,
    );
    expect(noteOf({ ammonia: 4e-3, ph: 6.5 }, 'ammonia')).toBe(
      `${ammoniaAction}Limit: total ammonia as N, ${fao}.${local}`,
    );
    expect(noteOf({ ammonia: 4e-3, ph: 8.5 }, 'un-ionized ammonia')).toBe(
      `${ammoniaAction}Limit: UF/IFAS FA16: above 0.05 mg/L harms.${local}`,
    );
    expect(noteOf({ ph: 6.5 }, 'carbon dioxide')).toBe(
      `Add air or let the water fall through air, and ventilate the room: fish breathe it out, and only air removes it. Limit: common practice, no source; the value is calculated from alkalinity, pH and temperature.${local}`,
    );
  });

  it('names the un-ionized part where that sets the limit of all ammonia, for trout with their own', () => {
    const alkaline = { ph: 8.5, ammonia: 1e-3 };
    expect(noteOf(alkaline, 'ammonia')).toBe(
      `${ammoniaAction}Limit: total ammonia as N whose un-ionized part reaches its limit at this pH and temperature, UF/IFAS FA16: above 0.05 mg/L harms.${local}`,
    );
    expect(noteOf({ ...alkaline, species: 'rainbow trout' }, 'ammonia')).toContain('EIFAC Technical Paper 11 (1970)');
  });

  it('says that a 0 may be an empty cell, in every row that may stand on one', () => {
    const zeros: readonly (readonly [string, Partial<WaterTest>])[] = [
      ['temperature', { temperature: 0 }],
      ['pH', { ph: 0 }],
      ['ammonia', { ammonia: 0 }],
      ['un-ionized ammonia', { ammonia: 0 }],
      ['nitrite', { nitrite: 0 }],
      ['nitrate', { nitrate: 0 }],
      ['oxygen', { oxygen: 0 }],
      ['oxygen', { oxygen: 0, temperature: undefined }],
      ['alkalinity', { alkalinity: 0 }],
      ['chloride', { chloride: 0 }],
      ['chloride', { chloride: 0, nitrite: undefined }],
    ];
    for (const [reading, changed] of zeros) {
      expect(noteOf(changed, reading), reading).toMatch(new RegExp(`^${emptyCell}`));
    }
  });

  it('does not speak of an empty cell where a 0 cannot come from one', () => {
    const { note, verdict } = bounded('made up', 'number', 0, [undefined, 1], 'no source', {});
    expect(note.text).toBe('Limit: no source.');
    expect(verdict).toBe('within limits');
  });
});

describe('a reading not taken', () => {
  it('is asked for, on either basis', () => {
    for (const basis of ['N', 'ion'] as const) {
      for (const reading of ['temperature', 'ammonia', 'nitrite', 'nitrate', 'oxygen', 'alkalinity', 'chloride']) {
        expect(rowOf({ [reading]: undefined, basis }, reading)).toMatchObject({
          value: '',
          verdict: 'not measured',
          note: { text: unmeasured },
        });
      }
    }
    expect(rowOf({ ammonia: undefined }, 'un-ionized ammonia').verdict).toBe('not measured');
    expect(noteOf({ species: 'tilapia', temperature: undefined }, 'temperature')).toBe(unmeasured);
  });

  it('still shows a bound that does not depend on it', () => {
    expect(rowOf({ alkalinity: undefined }, 'alkalinity').low).toEqual({ kind: 'alkalinity', si: 0.05 });
    expect(rowOf({ oxygen: undefined }, 'oxygen').low).toMatchObject({ kind: 'concentration' });
  });

  it('shows no bound where none is known: chloride without nitrite, and oxygen without a temperature', () => {
    expect(rowOf({ chloride: undefined, nitrite: undefined }, 'chloride')).toMatchObject({ low: '', high: '' });
    expect(rowOf({ temperature: undefined }, 'oxygen')).toMatchObject({
      low: { si: 4e-3 },
      high: '',
      verdict: 'within limits',
    });
  });

  it('is named by the un-ionized ammonia that depends on it', () => {
    const rest = 'with the ammonia: the poisonous part depends on both. Limit: UF/IFAS FA16: above 0.05 mg/L harms.';
    expect(noteOf({ ph: undefined }, 'un-ionized ammonia')).toBe(`Measure pH ${rest}`);
    expect(noteOf({ temperature: undefined }, 'un-ionized ammonia')).toBe(`Measure temperature ${rest}`);
    expect(noteOf({ ph: undefined, temperature: undefined }, 'un-ionized ammonia')).toBe(
      `Measure pH and temperature ${rest}`,
    );
  });

  it('leaves a low total of ammonia unjudged, but not a 0', () => {
    expect(rowOf({ ph: undefined }, 'ammonia')).toMatchObject({
      verdict: 'cannot judge',
      note: {
        text: `The total is below its limit, but without pH and temperature the un-ionized part is unknown. Limit: total ammonia as N, ${fao}.`,
      },
    });
    expect(rowOf({ ph: undefined, ammonia: 0 }, 'ammonia').verdict).toBe('within limits');
  });

  it('leaves chloride and carbon dioxide unjudged, and says what to measure', () => {
    expect(rowOf({ nitrite: undefined }, 'chloride')).toMatchObject({
      value: { si: 0.1 },
      verdict: 'cannot judge',
      note: {
        text: 'Measure nitrite too: the chloride needed depends on it. Limit: ten times the nitrite as NO2, SRAC Publication 462.',
      },
    });
    for (const missing of ['ph', 'temperature', 'alkalinity'] as const) {
      expect(rowOf({ [missing]: undefined }, 'carbon dioxide')).toMatchObject({
        value: '',
        high: { si: 0.02 },
        verdict: 'cannot judge',
        note: { text: 'Measure alkalinity, pH and temperature of the same water: all three are needed.' },
      });
    }
    expect(rowOf({ alkalinity: undefined, ph: undefined }, 'carbon dioxide').verdict).toBe('not measured');
  });
});
