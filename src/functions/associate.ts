/**
 * The script that Excel runs before anything asynchronous: it ties every function of the catalogue to its
 * implementation. Excel's `CustomFunctions` is global; the embedded spreadsheet gives a stand-in of the same shape. In a
 * page opened on its own there is neither, and the functions are only on the shelf for that page.
 */
import { functionId } from './metadata';
import { type ShelfHolder, shelf } from './shelf';

(globalThis as ShelfHolder).siltstead = shelf;

if (typeof CustomFunctions !== 'undefined') {
  for (const row of shelf.catalogue) {
    CustomFunctions.associate(
      functionId(row),
      shelf.adapt(row, (code, message) => new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message)),
    );
  }
}
