import type { Border as FileBorder, Style as FileStyle } from '@cj-tech-master/excelts';
import type { Border, CellStyle } from '../hosts/workbook-model';

const argb = (color: string): { argb: string } => ({ argb: `FF${color.toUpperCase()}` });

function fileBorder(border: Border): Partial<FileBorder> {
  return { style: border.style, color: argb(border.color ?? '000000') };
}

/** A cell style as the file writer takes it: the reverse of `readStyle`. */
export function fileStyle(style: CellStyle): Partial<FileStyle> {
  const font = style.bold || style.italic || style.underline || style.fontName || style.fontSize || style.fontColor;
  const sides = { top: style.borderTop, right: style.borderRight, bottom: style.borderBottom, left: style.borderLeft };
  const borders = Object.fromEntries(
    Object.entries(sides).flatMap(([side, border]) => (border === undefined ? [] : [[side, fileBorder(border)]])),
  );
  const { horizontal, vertical, wrap } = style;
  return {
    ...(style.numberFormat === undefined ? {} : { numFmt: style.numberFormat }),
    ...(font
      ? {
          font: {
            name: style.fontName ?? 'Calibri',
            size: style.fontSize ?? 11,
            family: 2,
            ...(style.bold ? { bold: true } : {}),
            ...(style.italic ? { italic: true } : {}),
            ...(style.underline ? { underline: true } : {}),
            ...(style.fontColor === undefined ? { color: { theme: 1 } } : { color: argb(style.fontColor) }),
          },
        }
      : {}),
    ...(style.fill === undefined ? {} : { fill: { type: 'pattern', pattern: 'solid', fgColor: argb(style.fill) } }),
    ...(horizontal || vertical || wrap
      ? {
          alignment: {
            ...(horizontal ? { horizontal } : {}),
            ...(vertical ? { vertical } : {}),
            ...(wrap ? { wrapText: true } : {}),
          },
        }
      : {}),
    ...(Object.keys(borders).length > 0 ? { border: borders } : {}),
    ...(style.locked === false ? { protection: { locked: false } } : {}),
  } as Partial<FileStyle>;
}

/** A style laid over others by a condition: a fill there is the background color. */
export function conditionStyle(style: CellStyle): Partial<FileStyle> {
  const { font } = fileStyle(style);
  const { fill } = style;
  return {
    ...(font ? { font: { ...(font.bold ? { bold: true } : {}), ...(font.color ? { color: font.color } : {}) } } : {}),
    ...(fill === undefined ? {} : { fill: { type: 'pattern', pattern: 'solid', bgColor: argb(fill) } }),
  } as Partial<FileStyle>;
}
