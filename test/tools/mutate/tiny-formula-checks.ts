import { describe, expect, it } from 'vitest';
import { isFull, sumBelow } from './tiny-formula';

describe('the tiny formula', () => {
  it('adds', () => {
    expect(sumBelow(5)).toBe(10);
  });

  it('adds again, which it need not do', () => {
    expect(sumBelow(5)).toBe(10);
  });

  // Nothing is asked at the height itself, so that a change there survives.
  it('is full or not', () => {
    expect(isFull(3, 2)).toBe(true);
    expect(isFull(1, 2)).toBe(false);
  });
});
