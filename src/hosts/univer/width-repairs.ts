import { CellValueType, getDisplayValueFromCell, type ICellData, type Nullable } from '@univerjs/core';
import { DEFAULT_PADDING_DATA, Font } from '@univerjs/engine-render';
import { withInternals } from './engine-internals';

/**
 * The grid cuts a number off that is wider than its column, so that 1234567 is read as 12345. Here, as in Excel, one
 * without a format has as many decimals as there is room for, and one that still has no room shows `####`.
 */

/** What the grid draws one cell from. */
interface DrawnCell {
  readonly ctx: { font: string; save(): void; restore(): void; measureText(text: string): { readonly width: number } };
  readonly startX: number;
  readonly endX: number;
  readonly fontCache?: Nullable<{
    readonly fontString: string;
    readonly vertexAngle?: number;
    readonly cellData?: Nullable<ICellData>;
    readonly style?: Nullable<{ readonly pd?: Nullable<{ readonly l?: Nullable<number> }> }>;
  }>;
}

interface FontParts {
  _renderText(ctx: unknown, row: number, column: number, cell: DrawnCell, overflow: unknown): void;
}

/** A number's text in the room that there is for it; `####` where even its whole part has none. */
export function fittedNumber(
  value: string | number,
  text: string,
  room: number,
  width: (text: string) => number,
): string {
  if (width(text) <= room) return text;
  if (typeof value === 'number' && Math.abs(value) < 1e15) {
    const most = /\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
    for (let decimals = most - 1; decimals >= 0; decimals -= 1) {
      const shorter = value.toFixed(decimals);
      // A number that is not 0 never reads as 0.
      if (Number(shorter) === 0) break;
      if (width(shorter) <= room) return shorter;
    }
  }
  return '#'.repeat(Math.max(1, Math.floor(room / width('#'))));
}

let repaired = false;

export function repairWidths(): void {
  if (repaired) return;
  repaired = true;
  const font = withInternals<FontParts>(Font);
  const { _renderText: draw } = font;
  /** Every cell is drawn many times over, as the grid is scrolled. */
  const widths = new Map<string, number>();
  font._renderText = function (ctx, row, column, cell, overflow) {
    const { fontCache } = cell;
    const { v, t } = fontCache?.cellData ?? {};
    const isNumber = t === CellValueType.NUMBER || (t === undefined && typeof v === 'number');
    if (
      !fontCache?.cellData ||
      !isNumber ||
      v === undefined ||
      v === null ||
      typeof v === 'boolean' ||
      fontCache.vertexAngle
    )
      return draw.call(this, ctx, row, column, cell, overflow);
    const width = (text: string): number => {
      const key = `${fontCache.fontString}\n${text}`;
      const known = widths.get(key);
      if (known !== undefined) return known;
      if (widths.size > 20_000) widths.clear();
      cell.ctx.save();
      cell.ctx.font = fontCache.fontString;
      const measured = cell.ctx.measureText(text).width;
      cell.ctx.restore();
      widths.set(key, measured);
      return measured;
    };
    const text = getDisplayValueFromCell(fontCache.cellData);
    const room = cell.endX - cell.startX - (fontCache.style?.pd?.l ?? DEFAULT_PADDING_DATA.l);
    const shown = fittedNumber(v, text, room, width);
    if (shown === text) return draw.call(this, ctx, row, column, cell, overflow);
    const fitted = { ...fontCache, cellData: { ...fontCache.cellData, v: shown, t: CellValueType.NUMBER } };
    draw.call(this, ctx, row, column, { ...cell, fontCache: fitted }, overflow);
  };
}
