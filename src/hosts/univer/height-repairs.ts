import { SpreadsheetSkeleton } from '@univerjs/engine-render';

let repaired = false;

/**
 * The grid measures the heights of new rows when the page has time. If their sheet has been removed by then, it fails
 * and measures no rows until the page is reloaded; here it measures nothing instead.
 */
export function repairHeights(): void {
  if (repaired) return;
  repaired = true;
  const { prototype } = SpreadsheetSkeleton;
  const measure = prototype.calculateAutoHeightInRange;
  prototype.calculateAutoHeightInRange = function (ranges, heights) {
    return Reflect.get(this, '_worksheetData') === null ? [] : measure.call(this, ranges, heights);
  };
}
