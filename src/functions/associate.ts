/**
 * The script that Excel runs before anything asynchronous: it ties every function of the catalogue to its
 * implementation. Excel's `CustomFunctions` is global; the embedded spreadsheet gives a stand-in of the same shape. In a
 * page opened on its own there is neither, and the functions are only in the library for that page.
 */

import { isSearchLoaded } from '../formulas/cut/cut-plan';
import { type FunctionLibraryHolder, functionLibrary } from './function-library';
import { loadCutSearch } from './load-cut-plans';
import { functionId } from './metadata';

(globalThis as FunctionLibraryHolder).siltstead = functionLibrary;

const failure = (code: string, message: string) =>
  new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message);

if (typeof CustomFunctions !== 'undefined') {
  for (const row of functionLibrary.catalogue) {
    const call = functionLibrary.adapt(row, failure);
    const later = async (...values: unknown[]) => {
      await loadCutSearch().catch(({ message }: Error) => {
        throw failure(CustomFunctions.ErrorCode.notAvailable, message);
      });
      return call(...values);
    };
    const isReady = () => row.search !== true || isSearchLoaded();
    CustomFunctions.associate(functionId(row), (...values: unknown[]) =>
      isReady() ? call(...values) : later(...values),
    );
  }
}
