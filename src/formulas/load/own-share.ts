import { Refusal } from '../refusal';

/**
 * Dry solids per feed, from the solids drawn off: dry / (captured x feed), dry and feed over the same time.
 *
 * `captured` is the share of all solids that the place they were drawn from takes at steady state, not its share per pass. Refuses
 * more solids than feed. Source: mass balance.
 */
export function loadShare(dry: number, feed: number, captured: number): number {
  const share = dry / (captured * feed);
  if (share > 1) {
    throw new Refusal(
      'dry',
      'the solids would be {share} of the feed; weigh them dry, over the same days as the feed',
      {
        figures: { share },
      },
    );
  }
  return share;
}
