import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../src/formulas/refusal';
import { stockFeedRate, troutClass } from '../../../src/formulas/stock/stock-feed-rate';
import { percentADay } from '../../../src/formulas/stock/trout-chart';

const POUND = 0.45359237;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const trout = (toThePound: number, fahrenheit: number): number =>
  stockFeedRate('rainbow trout', POUND / toThePound, celsius(fahrenheit)) * 100;

function reasonOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    return error instanceof Refusal ? error.reason : 'another error';
  }
  return 'no error';
}

describe('the trout chart', () => {
  it('reads as printed at 40, 50, 55 and 60 °F in every class (Leitritz and Lewis 1980)', () => {
    const fish = [3000, 1000, 100, 50, 25, 15, 10, 6, 4, 3, 1];
    const printed: Readonly<Record<number, readonly number[]>> = {
      40: [3.2, 2.6, 2.2, 1.7, 1.3, 1.0, 0.9, 0.8, 0.7, 0.6, 0.5],
      50: [5.2, 4.3, 3.4, 2.7, 2.0, 1.7, 1.4, 1.2, 1.1, 1.0, 0.9],
      55: [6.1, 5.1, 4.2, 3.2, 2.4, 2.0, 1.6, 1.4, 1.3, 1.1, 1.0],
      60: [7.5, 6.3, 5.1, 3.9, 3.0, 2.4, 2.0, 1.7, 1.5, 1.4, 1.3],
    };
    for (const [fahrenheit, row] of Object.entries(printed)) {
      fish.forEach((number, column) => {
        expect(trout(number, Number(fahrenheit))).toBeCloseTo(row[column]!, 10);
      });
    }
  });

  it('gives each of its figures at just its temperature, in °C too, even beside a misprint', () => {
    const fish = [3000, 1000, 100, 50, 25, 15, 10, 6, 4, 3, 1];
    for (const [place, row] of percentADay.entries())
      for (const [column, number] of fish.entries()) {
        const rate = row[column];
        if (rate !== undefined) expect(trout(number, 36 + place)).toBeCloseTo(rate, 10);
      }
  });

  it('says that it ends, or that it is misprinted', () => {
    for (const fahrenheit of [35.9, 30, 68.1, 80])
      expect(() => trout(6, fahrenheit)).toThrow('the trout chart runs from');
    for (const fahrenheit of [66.5, 67, 67.5, 68])
      expect(() => trout(1000, fahrenheit)).toThrow('the chart looks misprinted there for fish of 1 to 2 inches');
  });

  it('is interpolated between rows and never across classes', () => {
    expect(trout(6, 53.5)).toBeCloseTo(1.35, 10);
    expect(trout(7.34, 60)).toBeCloseTo(1.7, 10);
    expect(trout(7.36, 60)).toBeCloseTo(2.0, 10);
  });

  it('puts a fish that weighs just what divides two classes with the heavier', () => {
    expect(troutClass(POUND / 304)).toBe(2);
    expect(troutClass(POUND / 2.53)).toBe(10);
  });

  it('rises with temperature and falls with size all over', () => {
    percentADay.forEach((row, place) => {
      row.forEach((rate, column) => {
        const colder = percentADay[place - 1]?.[column];
        const smaller = row[column - 1];
        if (rate !== undefined && colder !== undefined) expect(rate).toBeGreaterThanOrEqual(colder);
        if (rate !== undefined && smaller !== undefined) expect(rate).toBeLessThanOrEqual(smaller);
      });
    });
  });

  it('is not available outside 36 to 68 °F or where it is misprinted', () => {
    expect(reasonOf(() => trout(6, 35.9))).toBe('unavailable');
    expect(reasonOf(() => trout(6, 68.1))).toBe('unavailable');
    expect(reasonOf(() => trout(1000, 67))).toBe('unavailable');
    expect(reasonOf(() => trout(1000, 66.5))).toBe('unavailable');
    expect(trout(1000, 66)).toBeCloseTo(7.8, 10);
    expect(trout(3000, 68)).toBeCloseTo(9.9, 10);
    expect(trout(1, 36)).toBeCloseTo(0.4, 10);
  });
});

describe('the tilapia table', () => {
  it('runs from stage to stage (Rakocy, SRAC Publication 282, from memory)', () => {
    expect(stockFeedRate('tilapia', 0.05, 28)).toBeCloseTo(0.04, 12);
    expect(stockFeedRate('tilapia', 0.1, 28)).toBeCloseTo(0.035, 12);
    expect(stockFeedRate('tilapia', 0.45, 28)).toBeCloseTo(0.01, 12);
    expect(stockFeedRate('tilapia', 0.0125, 28)).toBeCloseTo(0.085, 12);
  });

  it('is not available away from best growth or beyond its sizes', () => {
    expect(reasonOf(() => stockFeedRate('tilapia', 0.05, 24))).toBe('unavailable');
    expect(reasonOf(() => stockFeedRate('tilapia', 0.5, 28))).toBe('unavailable');
  });
});

describe('channel catfish', () => {
  it('have no chart, and the published ranges are told', () => {
    expect(reasonOf(() => stockFeedRate('channel catfish', 0.1, 26))).toBe('unavailable');
    expect(() => stockFeedRate('channel catfish', 0.1, 26)).toThrow(/6 to 10 %/);
    expect(() => stockFeedRate('common carp', 0.1, 26)).toThrow('no chart of common carp is published here');
  });
});
