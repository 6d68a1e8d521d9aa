import { describe, expect, it } from 'vitest';
import { fao as faoPaper } from '../../../src/formulas/citations';
import { NITRITE_PER_NITROGEN } from '../../../src/formulas/water/water-species';
import { noteOf, rowOf } from './good-water';

const fao = `${faoPaper}, table 3.1`;
const local = ' Local advice comes first.';

describe('carbon dioxide', () => {
  it('is calculated up to a salinity of 1, and no further', () => {
    expect(rowOf({ salinity: 1 }, 'carbon dioxide').verdict).toBe('within limits');
    expect(rowOf({ salinity: 1.001 }, 'carbon dioxide')).toMatchObject({
      verdict: 'cannot judge',
      note: { text: 'It can be calculated for fresh water only.' },
    });
  });

  it('is not made up from readings that cannot both be right', () => {
    expect(rowOf({ ph: 3 }, 'carbon dioxide')).toMatchObject({
      verdict: 'cannot judge',
      note: { text: 'Alkalinity and pH cannot both be right: measure them again.' },
    });
  });
});

describe('nitrite and chloride', () => {
  const tooHigh = (chloride: number | undefined) => noteOf({ nitrite: 1e-3, chloride }, 'nitrite');

  it('advise salt until there is ten times as much chloride as nitrite, 32.8 times as much as its nitrogen', () => {
    const enough = 10 * NITRITE_PER_NITROGEN * 1e-3;
    expect(enough).toBeCloseTo(0.0328, 4);
    expect(tooHigh(enough)).toBe(
      `Feed less and change water. The chloride here keeps much of the nitrite out of the blood, but that only gains time. Limit: as N, ${fao}.${local}`,
    );
    for (const chloride of [undefined, 0.02, enough * 0.999]) {
      expect(tooHigh(chloride)).toBe(
        `Stop feeding, change water and add air; plain salt (chloride) protects the blood, if plants and local advice allow it. Limit: as N, ${fao}.${local}`,
      );
    }
  });

  it('call chloride too low just below ten times the nitrite', () => {
    const enough = 10 * NITRITE_PER_NITROGEN * 1e-3;
    expect(rowOf({ nitrite: 1e-3, chloride: enough }, 'chloride').verdict).toBe('within limits');
    expect(rowOf({ nitrite: 1e-3, chloride: enough * 0.999 }, 'chloride').verdict).toBe('too low');
  });
});

describe('a bound itself', () => {
  it('is within limits, low or high', () => {
    for (const ph of [6, 8.5]) expect(rowOf({ ph }, 'pH').verdict).toBe('within limits');
    expect(rowOf({ ph: 5.999 }, 'pH').verdict).toBe('too low');
    expect(rowOf({ ph: 8.501 }, 'pH').verdict).toBe('too high');
  });

  it('is survived, at either end of what the fish live through', () => {
    const tilapia = (temperature: number) => rowOf({ species: 'tilapia', temperature }, 'temperature').verdict;
    expect([13.999, 14, 36, 36.001].map(tilapia)).toEqual([
      'too low',
      'survives, grows poorly',
      'survives, grows poorly',
      'too high',
    ]);
  });
});

describe('temperature and oxygen', () => {
  it('tells what a species survives, in figures, and says nothing of a group', () => {
    const { note } = rowOf({ species: 'tilapia', temperature: 28 }, 'temperature');
    expect(note.text).toMatch(
      /\. Tilapia survive \{least:temperature\} to \{most:temperature\} and grow best in the range shown\.$/,
    );
    expect(note.figures).toEqual({ least: 14, most: 36 });
    expect(rowOf({}, 'temperature').note.figures).toBeUndefined();
  });

  it('speaks of saturation only where there is more oxygen than a tenth over it', () => {
    // 8.11 mg/L at 26 °C and sea level.
    expect(noteOf({ oxygen: 8.9e-3 }, 'oxygen')).toBe(`Limit: ${fao}.`);
    const high = rowOf({ oxygen: 8.95e-3 }, 'oxygen');
    expect(high.verdict).toBe('too high');
    expect(high.note.text).toContain(
      'Water in balance with air at this temperature and height holds {saturation:concentration}.',
    );
    expect(high.note.figures).toEqual({ saturation: expect.closeTo(8.11e-3, 5) });
  });

  it('shows no upper bound of oxygen where hot water high up cannot hold what the fish need', () => {
    const trout = (elevation: number) =>
      rowOf({ species: 'rainbow trout', temperature: 35, elevation, oxygen: 5e-3 }, 'oxygen');
    expect(trout(3000)).toMatchObject({ low: { si: 6e-3 }, high: '', verdict: 'too low' });
    expect(trout(0)).toMatchObject({ low: { si: 6e-3 }, high: { kind: 'concentration' }, verdict: 'too low' });
  });
});
