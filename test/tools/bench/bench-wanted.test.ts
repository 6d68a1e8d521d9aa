import { expect, it } from 'vitest';
import { figure, isMet, verdictText } from '../../../src/tools/bench/bench-wanted';

it('says what is wanted of a figure and whether it is met', () => {
  expect(verdictText(4.5, { below: 20 }, 'ms')).toBe('under 20 ms: met');
  expect(verdictText(20, { below: 20 }, 'ms')).toBe('under 20 ms: MISSED');
  expect(verdictText(999_999, { atLeast: 1_000_000 })).toBe('at least 1,000,000: MISSED');
  expect(verdictText(90, { atMost: 90 }, 'kB')).toBe('at most 90 kB: met');
  expect(verdictText(5, {})).toBe('');
});

it('never counts NaN as met', () => {
  expect(isMet(Number.NaN, { atLeast: 1 })).toBe(false);
  expect(isMet(Number.NaN, { below: 1 })).toBe(false);
});

it('writes figures with as many digits as they are good for', () => {
  expect([0.1234, 12.34, 1234.5].map(figure)).toEqual(['0.12', '12.3', '1,235']);
});
