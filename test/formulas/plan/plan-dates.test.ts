import { describe, expect, it } from 'vitest';
import { planDates } from '../../../src/formulas/plan/plan-dates';

const DAY = 86400;
const dates = (...days: readonly [number, number, number, number]): readonly (readonly [string, number])[] => {
  const [base, mortar, sealant, leach] = days;
  return planDates(46143, base * DAY, mortar * DAY, sealant * DAY, leach * DAY).map((row) => [
    row.step,
    row.date - 46143,
  ]);
};

describe('the build calendar', () => {
  it('tests for leaks before any mix and again after leaching', () => {
    expect(dates(3, 3, 7, 7)).toEqual([
      ['leak test before any mix', 0],
      ['pour base mix', 1],
      ['mortar coat on the cured base', 4],
      ['sealant on the cured mortar', 7],
      ['fill to leach', 14],
      ['leak test after', 21],
      ['first fill', 22],
    ]);
  });

  it('leaves the sealant out where it is given no time', () => {
    expect(dates(3, 3, 0, 7).map(([step]) => step)).not.toContain('sealant on the cured mortar');
    expect(dates(3, 3, 0, 7).at(-1)).toEqual(['first fill', 15]);
  });

  it('counts part days as whole ones and never puts a step before the one that it waits for', () => {
    expect(dates(2.5, 3, 7, 7)[2]).toEqual(['mortar coat on the cured base', 4]);
    const times = dates(0, 0, 0, 0).map(([, day]) => day);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
  });
});
