/**
 * The script that Excel runs before anything asynchronous: it ties every function of the catalogue to its
 * implementation. Excel's `CustomFunctions` is global; the embedded spreadsheet gives a stand-in of the same shape. In a
 * page opened on its own there is neither, and the functions are only in the library for that page.
 */

import { type FunctionLibraryHolder, functionLibrary } from './function-library';
import { functionId } from './metadata';

(globalThis as FunctionLibraryHolder).siltstead = functionLibrary;

if (typeof CustomFunctions !== 'undefined') {
  for (const row of functionLibrary.catalogue) {
    CustomFunctions.associate(
      functionId(row),
      functionLibrary.adapt(
        row,
        (code, message) => new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message),
      ),
    );
  }
}
