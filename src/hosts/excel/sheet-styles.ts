import { type CellRange, parseRange } from '../address';
import type { Border, CellData, CellStyle, SheetData } from '../workbook-model';

/** Gives cells their looks, one request for each run of cells that look alike. */
export function putStyles(worksheet: Excel.Worksheet, { cells }: SheetData): void {
  for (const { style, range } of runsOf(cells)) {
    const target = worksheet.getRangeByIndexes(range.row, range.column, range.rows, range.columns);
    putStyle(target, style);
  }
}

interface Run {
  readonly style: CellStyle;
  range: CellRange;
}

/** Cells beside each other with one style, then such runs below each other. */
function runsOf(cells: readonly CellData[]): readonly Run[] {
  const runs = new Map<string, Run>();
  const sorted = [...cells].sort((a, b) => a.row - b.row || a.column - b.column);
  let open: { key: string; run: Run } | undefined;
  const close = (): void => {
    if (open === undefined) return;
    const { key, run } = open;
    const { column, columns, row } = run.range;
    const endingAt = (end: number): string => `${key} ${column} ${columns} ${end}`;
    const upper = runs.get(endingAt(row));
    if (upper === undefined) runs.set(endingAt(row + 1), run);
    else {
      runs.delete(endingAt(row));
      upper.range = { ...upper.range, rows: upper.range.rows + 1 };
      runs.set(endingAt(row + 1), upper);
    }
  };
  for (const { style, row, column } of sorted) {
    if (style === undefined) continue;
    const key = JSON.stringify(style);
    const range = open?.run.range;
    if (open?.key === key && range?.row === row && range.column + range.columns === column) {
      open.run.range = { ...range, columns: range.columns + 1 };
      continue;
    }
    close();
    open = { key, run: { style, range: { row, column, rows: 1, columns: 1 } } };
  }
  close();
  return [...runs.values()];
}

const lineStyles = {
  thin: ['Continuous', 'Thin'],
  medium: ['Continuous', 'Medium'],
  thick: ['Continuous', 'Thick'],
  hair: ['Continuous', 'Hairline'],
  dashed: ['Dash', 'Thin'],
  dotted: ['Dot', 'Thin'],
  double: ['Double', 'Thick'],
} as const;

/** One style on one range. */
function putStyle(range: Excel.Range, style: CellStyle): void {
  const { format } = range;
  if (style.numberFormat !== undefined) {
    // One value stands for every cell of the range, which the types do not know.
    range.numberFormat = style.numberFormat as unknown as string[][];
  }
  if (style.bold !== undefined) format.font.bold = style.bold;
  if (style.italic !== undefined) format.font.italic = style.italic;
  if (style.underline) format.font.underline = 'Single';
  if (style.fontName !== undefined) format.font.name = style.fontName;
  if (style.fontSize !== undefined) format.font.size = style.fontSize;
  if (style.fontColor !== undefined) format.font.color = `#${style.fontColor}`;
  if (style.fill !== undefined) format.fill.color = `#${style.fill}`;
  if (style.wrap !== undefined) format.wrapText = style.wrap;
  if (style.horizontal !== undefined)
    format.horizontalAlignment = ({ left: 'Left', center: 'Center', right: 'Right' } as const)[style.horizontal];
  if (style.vertical !== undefined)
    format.verticalAlignment = ({ top: 'Top', middle: 'Center', bottom: 'Bottom' } as const)[style.vertical];
  if (style.locked !== undefined) format.protection.locked = style.locked;
  putBorder(format, ['EdgeTop', 'InsideHorizontal'], style.borderTop);
  putBorder(format, ['EdgeBottom', 'InsideHorizontal'], style.borderBottom);
  putBorder(format, ['EdgeLeft', 'InsideVertical'], style.borderLeft);
  putBorder(format, ['EdgeRight', 'InsideVertical'], style.borderRight);
}

function putBorder(
  format: Excel.RangeFormat,
  sides: readonly ('EdgeTop' | 'EdgeBottom' | 'EdgeLeft' | 'EdgeRight' | 'InsideHorizontal' | 'InsideVertical')[],
  border: Border | undefined,
): void {
  if (border === undefined) return;
  const [line, weight] = lineStyles[border.style];
  for (const side of sides) {
    const edge = format.borders.getItem(side);
    edge.style = line;
    if (line !== 'Double') edge.weight = weight;
    edge.color = `#${border.color ?? '000000'}`;
  }
}

/** A range by its address on a sheet. */
export function rangeAt(worksheet: Excel.Worksheet, address: string): Excel.Range {
  const range = parseRange(address);
  if (range === undefined) throw new Error(`${address} is no range`);
  return worksheet.getRangeByIndexes(range.row, range.column, range.rows, range.columns);
}
