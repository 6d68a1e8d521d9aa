/**
 * The script that Excel runs before anything asynchronous: it ties every function of the catalogue to its
 * implementation. Excel's `CustomFunctions` is global; the embedded spreadsheet gives a stand-in of the same shape.
 */
import { catalogue } from '../catalogue/all';
import { adapt } from './adapter';
import { functionId } from './metadata';

for (const row of catalogue) {
  CustomFunctions.associate(
    functionId(row),
    adapt(row, (code, message) => new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message)),
  );
}
