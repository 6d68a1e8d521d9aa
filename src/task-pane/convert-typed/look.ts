import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import { openBook } from '../cell-formula/book';
import type { Progress } from '../work';
import { unitsName } from '../workbook-units';
import { type Findings, findingsOf } from './findings';
import { findUses } from './uses';

/** Reads the whole workbook and lists the typed numbers that have another meaning in the new profile. */
export async function lookForTyped(
  host: SheetHost,
  functionLibrary: FunctionLibrary,
  change: { readonly from: Profile; readonly to: Profile },
  progress: Progress,
): Promise<Findings> {
  const [blocks, names] = await Promise.all([host.readUsed(), host.names()]);
  const book = openBook(blocks, names);
  const uses = await findUses(book, {
    catalogue: functionLibrary.catalogue,
    unitsName,
    step: (share) => progress.step(share),
  });
  return findingsOf(book, uses, change.from, change.to);
}
