import { HostError } from '../../hosts/sheet-host';
import { type Book, isSameSpot, placeText, type Spot } from '../cell-formula/book';
import { type CellChange, contentOf, isSameContent } from './convert';
import type { Findings } from './findings';

/** The workbook at a change of units and now. */
interface Books {
  readonly before: Book;
  readonly now: Book;
}

/**
 * The numbers typed after a change of units, converted back: undoing the change alone would read them in units that they
 * were not typed in. `changed` is what the change itself wrote.
 */
export function typedSince(
  findings: Findings,
  { before, now }: Books,
  changed: readonly CellChange[],
): readonly CellChange[] {
  const isSince = ({ spot }: { readonly spot: Spot }): boolean => {
    const [was, is] = [contentOf(before, spot), contentOf(now, spot)];
    return !changed.some((one) => isSameSpot(one.spot, spot)) && (is === undefined || !isSameContent(was, is));
  };
  const doubtful = [...findings.apart, ...findings.byHand].find(isSince);
  if (doubtful !== undefined) {
    throw new HostError(
      'failed',
      `${placeText(doubtful.spot)} was typed since then, and it is not certain what it becomes, so nothing was undone; change the units instead, which lists it.`,
    );
  }
  return findings.plain
    .filter(isSince)
    .flatMap(({ spot, content, choices: [choice] }) =>
      choice === undefined ? [] : [{ spot, before: content, after: choice.content }],
    );
}
