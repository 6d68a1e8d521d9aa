import { describe, expect, it } from 'vitest';
import { unionizedShare } from '../../../src/formulas/water/water-ammonia';
import { type CheckRow, type WaterTest, waterCheck } from '../../../src/formulas/water/water-check';
import { fishKinds, fishLimits, survivalRange } from '../../../src/formulas/water/water-species';
import { goodWater } from './good-water';

const none: WaterTest = {
  ...goodWater,
  temperature: undefined,
  ph: undefined,
  ammonia: undefined,
  nitrite: undefined,
  nitrate: undefined,
  oxygen: undefined,
  alkalinity: undefined,
  chloride: undefined,
};

function named(test: WaterTest, reading: string): CheckRow {
  const row = waterCheck(test).find((one) => one.reading === reading);
  if (row === undefined) throw new Error(`no row for ${reading}`);
  return row;
}

describe('waterCheck', () => {
  it('finds good water within limits throughout', () => {
    expect(waterCheck(goodWater).map((row) => row.verdict)).toEqual(new Array(10).fill('within limits'));
  });

  it('never calls a reading not taken fine', () => {
    for (const row of waterCheck(none)) expect(row.verdict).toBe('not measured');
  });

  it('names the limits of FAO 589 table 3.1', () => {
    expect(named(goodWater, 'temperature')).toMatchObject({ low: { si: 22 }, high: { si: 32 } });
    expect(named(goodWater, 'oxygen').low).toEqual({ kind: 'concentration', si: 4e-3 });
    expect(named({ ...goodWater, basis: 'ion' }, 'nitrite').high).toMatchObject({ si: expect.closeTo(1e-3, 12) });
    expect(named({ ...goodWater, basis: 'ion' }, 'nitrate').high).toMatchObject({ si: expect.closeTo(0.4, 12) });
  });

  it('judges ammonia by the un-ionized part where that is stricter, and by the total where that is', () => {
    const alkaline = named({ ...goodWater, ph: 8.5, ammonia: 1e-3 }, 'ammonia');
    expect(alkaline.verdict).toBe('too high');
    expect(alkaline.high).toMatchObject({ si: expect.closeTo(5e-5 / unionizedShare(8.5, 26, 0), 12) });
    const acid = named({ ...goodWater, ph: 6.5, ammonia: 4e-3 }, 'ammonia');
    expect(acid.verdict).toBe('too high');
    expect(acid.high).toMatchObject({ si: 3e-3 });
    expect(named({ ...goodWater, ph: 6.5, ammonia: 4e-3 }, 'un-ionized ammonia').verdict).toBe('within limits');
  });

  it('cannot judge un-ionized ammonia without pH or temperature, nor call the total fine', () => {
    for (const missing of [{ ph: undefined }, { temperature: undefined }]) {
      const test = { ...goodWater, ...missing };
      expect(named(test, 'un-ionized ammonia').verdict).toBe('cannot judge');
      expect(named(test, 'ammonia').verdict).toBe('cannot judge');
      expect(named({ ...test, ammonia: 4e-3 }, 'ammonia').verdict).toBe('too high');
    }
  });

  it('says that a 0 looks like an empty cell', () => {
    for (const reading of ['ammonia', 'nitrite', 'nitrate', 'oxygen'] as const) {
      expect(named({ ...goodWater, [reading]: 0 }, reading).note.text).toContain('empty cell');
      expect(named(goodWater, reading).note.text).not.toContain('empty cell');
    }
  });

  it('asks for chloride of ten times the nitrite, and cannot judge it without the nitrite', () => {
    expect(named({ ...goodWater, chloride: 1e-3, nitrite: 3e-4 }, 'chloride').verdict).toBe('too low');
    expect(named({ ...goodWater, nitrite: undefined }, 'chloride').verdict).toBe('cannot judge');
    expect(named({ ...goodWater, nitrite: 1e-3 }, 'nitrite').note.text).toContain('only gains time');
    expect(named({ ...goodWater, nitrite: 1e-3, chloride: 0 }, 'nitrite').note.text).toContain('salt');
  });

  it('tells of oxygen far above saturation, at the height of the farm', () => {
    const rich = { ...goodWater, oxygen: 8e-3 };
    expect(named(rich, 'oxygen').verdict).toBe('within limits');
    const high = named({ ...rich, elevation: 2500 }, 'oxygen');
    expect(high.verdict).toBe('too high');
    expect(high.note.text).toContain('holds {saturation:concentration}.');
    expect(named({ ...goodWater, oxygen: 2e-3, elevation: 2500 }, 'oxygen').verdict).toBe('too low');
  });

  it('tells what the fish survive from what they grow best in', () => {
    const tilapia = (temperature: number) => named({ ...goodWater, species: 'tilapia', temperature }, 'temperature');
    expect(tilapia(28).verdict).toBe('within limits');
    expect(tilapia(15).verdict).toBe('survives, grows poorly');
    expect(tilapia(35).verdict).toBe('survives, grows poorly');
    expect(tilapia(12).verdict).toBe('too low');
    expect(tilapia(37).verdict).toBe('too high');
    expect(tilapia(15).note.text).toContain('survive {least:temperature} to {most:temperature}');
  });

  it('works carbon dioxide out, and cannot judge it where it cannot', () => {
    expect(named({ ...goodWater, ph: 6.5 }, 'carbon dioxide').verdict).toBe('too high');
    expect(named({ ...goodWater, ph: undefined }, 'carbon dioxide').verdict).toBe('cannot judge');
    expect(named({ ...goodWater, salinity: 20 }, 'carbon dioxide').verdict).toBe('cannot judge');
    expect(named({ ...goodWater, ph: 3 }, 'carbon dioxide').verdict).toBe('cannot judge');
    expect(named({ ...goodWater, ph: 12, alkalinity: 0.01 }, 'carbon dioxide').verdict).toBe('cannot judge');
  });

  it('gives every limit passed an action, a source and the last word to local advice', () => {
    const bad: WaterTest = {
      ...goodWater,
      temperature: 40,
      ph: 9,
      ammonia: 5e-3,
      nitrite: 5e-3,
      nitrate: 1,
      oxygen: 1e-3,
      alkalinity: 0.01,
      chloride: 0.01,
    };
    for (const species of fishKinds) {
      for (const row of waterCheck({ ...bad, species }).filter(({ reading }) => reading !== 'carbon dioxide')) {
        expect(row.verdict).toMatch(/^too (low|high)$/);
        expect(row.note.text).toMatch(/Limit: .+\. Local advice comes first\./);
        expect(row.note.text.split('Limit:')[0]!.length).toBeGreaterThan(20);
      }
    }
  });

  it('shows the same water on either basis', () => {
    const asIon = waterCheck({ ...goodWater, basis: 'ion' });
    waterCheck(goodWater).forEach((row, i) => {
      expect(asIon[i]!.verdict).toBe(row.verdict);
      const [ion, nitrogen] = [asIon[i]!, row].map(({ value, high }) =>
        typeof value === 'string' || typeof high === 'string' ? 0 : value.si / high.si,
      );
      expect(ion, row.reading).toBeCloseTo(nitrogen!, 12);
    });
  });
});

describe('fishLimits', () => {
  it('has ranges the right way round and every source named', () => {
    for (const kind of fishKinds) {
      const { growsBest, ph, source, unionized, ammonia } = fishLimits(kind);
      const [least, most] = survivalRange(kind);
      expect(least).toBeLessThanOrEqual(growsBest[0]);
      expect(most).toBeGreaterThanOrEqual(growsBest[1]);
      expect(growsBest[0]).toBeLessThan(growsBest[1]);
      expect(ph[0]).toBeLessThan(ph[1]);
      expect(unionized).toBeLessThan(ammonia);
      expect(source).not.toBe('');
    }
  });
});
