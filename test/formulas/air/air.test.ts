import { describe, expect, it } from 'vitest';
import { type Aerator, airSupply, airTransfer, airTransferIfAny, oxygenInAir } from '../../../src/formulas/air/air';
import { waterOxygen } from '../../../src/formulas/water/water-oxygen';
import { wholeRefusal } from '../whole-refusal';

const aerator: Aerator = { rated: 1, temperature: 20, target: 0, elevation: 0, alpha: 1, beta: 1, salinity: 0 };

describe('airTransfer', () => {
  it('is the rating itself under the conditions of the rating', () => {
    expect(airTransfer(aerator)).toBeCloseTo(1, 15);
  });

  it('gives 0.546 of the rating at 25 °C, 2 mg/L, 500 m, alpha 0.82 and beta 0.95, worked by hand from tables', () => {
    // Saturation at 25 °C 8.263 mg/L; at 500 m (0.9421 atm, vapor 0.0313 atm) 7.771 mg/L; at 20 °C 9.092 mg/L.
    const worked = (0.82 * 1.024 ** 5 * (0.95 * 8.263 * ((0.9421 - 0.0313) / (1 - 0.0313)) - 2)) / 9.092;
    const given = { ...aerator, temperature: 25, target: 2e-3, elevation: 500, alpha: 0.82, beta: 0.95 };
    expect(Math.abs(airTransfer(given) / worked - 1)).toBeLessThan(1e-3);
    expect(worked).toBeCloseTo(0.546, 2);
  });

  it('falls to nothing as the water fills, and cannot go past saturation', () => {
    const full = waterOxygen(20, 0, 0);
    expect(airTransfer({ ...aerator, target: full * (1 - 1e-9) })).toBeLessThan(1e-8);
    expect(() => airTransfer({ ...aerator, target: full })).toThrow(wholeRefusal);
  });

  it('names the saturation that air can reach in this water, 0.9 of that in clean water', () => {
    const full = 0.9 * waterOxygen(20, 0, 0);
    expect(() => airTransfer({ ...aerator, beta: 0.9, target: 9e-3 })).toThrow(
      expect.objectContaining({
        argument: 'target',
        advice: 'air can bring this water only to {saturation}; give less',
        figures: { saturation: { value: expect.closeTo(full, 15), like: 'target' } },
      }),
    );
  });

  it('is nothing, without a refusal, where only the amount is wanted and air cannot reach the target', () => {
    const full = waterOxygen(20, 0, 0);
    for (const target of [full, full * 1.1]) expect(airTransferIfAny({ ...aerator, target })).toBe(0);
    for (const target of [0, full / 2]) {
      const given = { ...aerator, target };
      expect(airTransferIfAny(given)).toBe(airTransfer(given));
    }
  });

  it('falls with height, salt and what the water carries', () => {
    for (const changed of [{ elevation: 1000 }, { salinity: 20 }, { alpha: 0.8 }, { beta: 0.9 }, { target: 1e-3 }]) {
      expect(airTransfer({ ...aerator, ...changed })).toBeLessThan(1);
    }
  });
});

describe('airTransfer in salt water', () => {
  it('tends to that in fresh water as the salt runs out', () => {
    expect(airTransfer({ ...aerator, target: 5e-3, salinity: 1e-9 })).toBeCloseTo(
      airTransfer({ ...aerator, target: 5e-3 }),
      10,
    );
  });
});

describe('airSupply', () => {
  it('finds 0.2787 kg of oxygen in a cubic meter of air at 20 °C, 23.14 % by mass of 1.2041 kg', () => {
    expect(oxygenInAir(20, 0)).toBeCloseTo(0.2314 * 1.2041, 4);
    expect(oxygenInAir(0, 0)).toBeCloseTo(0.2314 * 1.2929, 3);
  });

  it('asks for more of thin or warm air, and for twice as much at half the efficiency', () => {
    const flow = airSupply(1e-4, 0.1, 20, 0);
    expect(flow).toBeCloseTo(1e-3 / oxygenInAir(20, 0), 12);
    expect(airSupply(1e-4, 0.1, 30, 0)).toBeGreaterThan(flow);
    expect(airSupply(1e-4, 0.1, 20, 1500)).toBeGreaterThan(flow);
    expect(airSupply(1e-4, 0.05, 20, 0)).toBeCloseTo(2 * flow, 12);
  });

  it('conserves oxygen: what the air brings, times what of it dissolves, is the demand', () => {
    for (const temperature of [0, 15, 40]) {
      for (const elevation of [-200, 0, 3000]) {
        const flow = airSupply(1e-4, 0.06, temperature, elevation);
        expect((flow * oxygenInAir(temperature, elevation) * 0.06) / 1e-4).toBeCloseTo(1, 12);
      }
    }
  });
});
