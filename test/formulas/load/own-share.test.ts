import { describe, expect, it } from 'vitest';
import { loadShare } from '../../../src/formulas/load/own-share';
import { refusalOf } from '../refusal-of';

describe('loadShare', () => {
  it('is a quarter where half of the solids are caught and an eighth of the feed is drawn off dry', () => {
    expect(loadShare(0.125, 1, 0.5)).toBe(0.25);
  });

  it('grows with the solids drawn off, and falls with the feed and with the share that was caught', () => {
    const share = loadShare(2, 20, 0.5);
    expect(loadShare(3, 20, 0.5)).toBeGreaterThan(share);
    expect(loadShare(2, 30, 0.5)).toBeLessThan(share);
    expect(loadShare(2, 20, 0.6)).toBeLessThan(share);
  });

  it('may be all of the feed but no more, since feed is all that solids are made of', () => {
    expect(loadShare(0.5, 1, 0.5)).toBe(1);
    expect(refusalOf(() => loadShare(0.75, 1, 0.5))).toMatchObject({
      argument: 'dry',
      advice: 'the solids would be {share} of the feed; weigh them dry, over the same days as the feed',
      figures: { share: 1.5 },
      reason: 'not allowed',
    });
  });
});
