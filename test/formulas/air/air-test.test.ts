/** An aerator's own transfer from the rise of oxygen: against logs made with a known rate, and each bound on a log. */
import { describe, expect, it } from 'vitest';
import { airTest, type OxygenReading } from '../../../src/formulas/air/air-test';
import { waterOxygen } from '../../../src/formulas/water/water-oxygen';

const MINUTE = 60;
const times = [0, 2, 4, 6, 9, 13, 18, 25].map((minutes) => minutes * MINUTE);
const rate = 0.1 / MINUTE;

function readings(points: readonly (readonly [time: number, oxygen: number])[]): readonly OxygenReading[] {
  return points.map(([time, oxygen], i) => ({ row: i + 1, time, oxygen }));
}

/** The log of water that starts at 0.5 mg/L and tends to 9.2 mg/L, with some error of reading. */
function rise(error: readonly number[] = [], from = 0): readonly OxygenReading[] {
  return readings(times.map((time, i) => [from + time, 9.2e-3 - 8.7e-3 * Math.exp(-rate * time) + (error[i] ?? 0)]));
}

const at20 = (log: readonly OxygenReading[]) => airTest(log, 2, 20, 0, 0);
const error = [1, -2, 1, 2, -1, -1, 2, -2].map((step) => step * 2e-5);

/** Squares left over at a rate, with start and saturation free, by the normal equations. */
function leftOver(log: readonly OxygenReading[], tried: number): number {
  const decay = log.map(({ time }) => Math.exp(-tried * (time - log[0]!.time)));
  const total = (value: (e: number, c: number) => number) =>
    log.reduce((sum, { oxygen }, i) => sum + value(decay[i]!, oxygen), 0);
  const [n, e, c] = [log.length, total((one) => one), total((_, oxygen) => oxygen)];
  const slope = (n * total((one, oxygen) => one * oxygen) - e * c) / (n * total((one) => one * one) - e * e);
  const level = (c - slope * e) / n;
  return total((one, oxygen) => (oxygen - level - slope * one) ** 2);
}

describe('the fit of a re-aeration test', () => {
  it('finds the rate and the saturation that made the log', () => {
    const fit = at20(rise());
    expect(fit.transfer / rate).toBeCloseTo(1, 9);
    expect(fit.saturation).toBeCloseTo(9.2e-3, 12);
    expect(fit.standardError / rate).toBeLessThan(1e-9);
  });

  it('corrects the rate to 20 °C by 1.024 a degree, and times the oxygen that 2 m3 hold there, 9.09 g/m3', () => {
    const warm = airTest(rise(), 2, 25, 0, 0);
    expect(warm.transferAt20 / rate).toBeCloseTo(1.024 ** -5, 9);
    const cold = airTest(rise(), 2, 19, 0, 0);
    expect(cold.transferAt20 / rate).toBeCloseTo(1.024, 9);
    expect(cold.standard / (rate * 1.024 * 2 * 9.092e-3)).toBeCloseTo(1, 4);
  });

  it('states the standard transfer for fresh water at sea level, wherever the test was made', () => {
    const low = airTest(rise(), 2, 20, 0, 0).standard;
    expect(airTest(rise(), 2, 20, 300, 0).standard).toBe(low);
    expect(airTest(rise(), 2, 20, 0, 3).standard).toBe(low);
  });

  it('does not depend on when the clock was started, not even by months', () => {
    const fit = at20(rise(error));
    for (const from of [-3e7, 40, 3e7]) {
      const moved = at20(rise(error, from));
      expect(moved.transfer / fit.transfer).toBeCloseTo(1, 8);
      expect(moved.standardError / fit.standardError).toBeCloseTo(1, 6);
    }
  });

  it('finds the same rate where the second reading follows the first at once', () => {
    const early = [0, 0.01, ...times.slice(1)];
    const log = readings(early.map((time) => [time, 9.2e-3 - 8.7e-3 * Math.exp(-rate * time)]));
    expect(at20(log).transfer / rate).toBeCloseTo(1, 9);
  });

  it('leaves over fewer squares than any other rate', () => {
    const log = rise(error);
    const { transfer } = at20(log);
    for (const factor of [0.5, 0.9, 0.999, 1.001, 1.1, 2]) {
      expect(leftOver(log, transfer * factor)).toBeGreaterThan(leftOver(log, transfer));
    }
  });

  it.each([
    ['the second', [0, 1, 15, 19, 29], [1.9e-3, 5.7e-3, 5.8e-3, 7.8e-3, 8.5e-3]],
    ['the first', [0, 1, 23, 35], [0.2e-3, 2.6e-3, 7.8e-3, 10.1e-3]],
  ])('takes the better of two rates that both beat their neighbors: %s', (_, minutes, oxygen) => {
    const log = readings(minutes.map((time, i) => [time, oxygen[i]!]));
    const { transfer } = at20(log);
    const span = log.at(-1)!.time;
    for (let power = -2; power <= 3; power += 0.01) {
      expect(leftOver(log, transfer)).toBeLessThanOrEqual(leftOver(log, 10 ** power / span) * (1 + 1e-9));
    }
  });

  it('finds rates of which the log shows from 2.6 to 900 times the time to 63 %', () => {
    for (const product of [2.6, 10, 50, 200, 900]) {
      const fast = product / 1500;
      const early = [0, 0.3, 0.6, 1, 1.5, 2.5].map((time) => time / fast);
      const log = readings([...early, 1500].map((time) => [time, 9e-3 * (1 - Math.exp(-fast * time))]));
      expect(at20(log).transfer / fast).toBeCloseTo(1, 8);
    }
  });
});

describe('the standard error of the rate', () => {
  it('is that of the regression of all three, by the inverse of their 3 x 3 matrix and n - 3 degrees of freedom', () => {
    const log = rise(error);
    const { transfer, saturation, standardError } = at20(log);
    const decay = times.map((time) => Math.exp(-transfer * time));
    // The start that fits best at this rate and saturation, because residuals are square to its column.
    const deficit =
      decay.reduce((sum, e, i) => sum + e * (saturation - log[i]!.oxygen), 0) /
      decay.reduce((sum, e) => sum + e * e, 0);
    const columns = [times.map(() => 1), decay, times.map((time, i) => deficit * time * decay[i]!)];
    const [aa, ab, ac, bb, bc, cc] = [
      [0, 0],
      [0, 1],
      [0, 2],
      [1, 1],
      [1, 2],
      [2, 2],
    ].map(([i, j]) => columns[i!]!.reduce((sum, value, row) => sum + value * columns[j!]![row]!, 0)) as [
      ...[number, number, number, number, number, number],
    ];
    const determinant = aa * (bb * cc - bc * bc) - ab * (ab * cc - bc * ac) + ac * (ab * bc - bb * ac);
    const variance = leftOver(log, transfer) / (times.length - 3);
    expect(standardError / Math.sqrt((variance * (aa * bb - ab * ab)) / determinant)).toBeCloseTo(1, 6);
  });

  it('doubles with the error of the readings', () => {
    const small = at20(rise(error.map((step) => step / 100))).standardError;
    expect(at20(rise(error.map((step) => step / 50))).standardError / small).toBeCloseTo(2, 2);
  });
});

describe('a log of oxygen', () => {
  const saturation = waterOxygen(20, 0, 0);
  /** Readings that rise to a part of saturation as an exponential does, from another part of it. */
  const between = (low: number, high: number): readonly OxygenReading[] => {
    const span = 1 - Math.exp(-2.5);
    return readings(
      times.map((time) => [
        time,
        saturation * (low + ((high - low) * (1 - Math.exp((-2.5 * time) / times.at(-1)!))) / span),
      ]),
    );
  };
  const whole = { saturation: { value: saturation, like: 'concentration', digits: 3 } };

  it('needs four readings, because three leave nothing over', () => {
    const four = between(0.1, 0.95).filter((_, i) => [0, 2, 4, 7].includes(i));
    expect(at20(four).transfer).toBeGreaterThan(0);
    expect(() => at20(four.filter((_, i) => i !== 1))).toThrow(
      expect.objectContaining({ argument: 'log', advice: '3 readings give no standard error; give at least four' }),
    );
  });

  it('runs forward in time, from row to row', () => {
    const log = rise();
    for (const time of [log[3]!.time, log[3]!.time - 1]) {
      const back = log.map((reading, i) => (i === 4 ? { ...reading, row: 17, time } : reading));
      expect(() => at20(back)).toThrow(
        expect.objectContaining({
          argument: 'log',
          advice: 'row 17 is not later than the row before it; give minutes since the start, in order',
        }),
      );
    }
    expect(at20(log.map((reading, i) => (i === 4 ? { ...reading, time: log[3]!.time + 1 } : reading)))).toBeDefined();
  });

  it('may begin at a time of 0 or before', () => {
    expect(() => at20(rise([], 0))).not.toThrow();
    expect(() => at20(rise([], -500))).not.toThrow();
  });

  it('may reach 1.2 times saturation, and not more', () => {
    const up = (part: number) => between(0.2, 0.95).map((one, i) => (i === 7 ? { ...one, oxygen: part } : one));
    expect(() => at20(up(1.2 * saturation))).not.toThrow();
    expect(() => at20(up(1.201 * saturation))).toThrow(
      expect.objectContaining({
        argument: 'log',
        advice: expect.stringMatching(/^row 8 holds more oxygen than air can dissolve here, \{saturation\}; calibrate/),
        figures: whole,
      }),
    );
  });

  it('is judged by the saturation at its own temperature, height and salinity', () => {
    const log = between(0.2, 0.95);
    expect(() => airTest(log, 2, 20, 3000, 0)).toThrow(/more oxygen than air can dissolve/);
    expect(() => airTest(log, 2, 36, 0, 0)).toThrow(/more oxygen than air can dissolve/);
    expect(() => airTest(log, 2, 5, 0, 0)).toThrow(/must run from under/);
  });

  it('rises', () => {
    for (const flat of [between(0.5, 0.5), between(0.95, 0.2)]) {
      expect(() => at20(flat)).toThrow(
        expect.objectContaining({ argument: 'log', advice: expect.stringContaining('oxygen does not rise; remove') }),
      );
    }
  });

  it('begins under a third of saturation and ends over nine tenths of it', () => {
    const level = (part: number) => ({
      value: expect.closeTo(part * saturation, 12),
      like: 'concentration',
      digits: 3,
    });
    const short = expect.objectContaining({
      argument: 'log',
      advice: expect.stringContaining('must run from under {least} to over {most}'),
      figures: { ...whole, least: level(1 / 3), most: level(0.9) },
    });
    expect(() => at20(between(0.333, 0.901))).not.toThrow();
    expect(() => at20(between(0.334, 0.95))).toThrow(short);
    expect(() => at20(between(0.1, 0.899))).toThrow(short);
    const exactly = (low: number, high: number) =>
      between(0.2, 0.95).map((one, i) =>
        i === 0 ? { ...one, oxygen: low } : i === 7 ? { ...one, oxygen: high } : one,
      );
    expect(() => at20(exactly(saturation * (1 / 3), 0.95 * saturation))).toThrow(short);
    expect(() => at20(exactly(0.1 * saturation, 0.9 * saturation))).toThrow(short);
  });

  it('levels off: no rate fits a straight line or a rise that grows', () => {
    const bent = (power: number) =>
      readings([0, 1, 2, 3, 4, 5, 6].map((i) => [i * 60, 1e-3 + 9e-3 * (i / 6) ** power]));
    for (const power of [1, 2]) {
      expect(() => at20(bent(power))).toThrow(
        expect.objectContaining({ argument: 'log', advice: expect.stringContaining('oxygen does not level off') }),
      );
    }
    expect(at20(bent(0.7)).transfer).toBeGreaterThan(0);
  });

  it('shows some of the rise: no rate fits where the second reading is at the last level already', () => {
    for (const last of [9e-3, 9.09e-3]) {
      const jump = readings([0, 1, 2, 3, 4].map((i) => [i * 300, i === 0 ? 0.5e-3 : last]));
      expect(() => at20(jump)).toThrow(
        expect.objectContaining({
          argument: 'log',
          advice: 'oxygen rises too fast for these readings, so no rate fits; read more often',
        }),
      );
    }
  });
});
