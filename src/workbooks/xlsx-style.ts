import type { Border as FileBorder, Style as FileStyle } from '@cj-tech-master/excelts';
import type { Border, CellStyle } from '../hosts/workbook-model';

type FileColor = { argb?: string; theme?: number; tint?: number } | undefined;

/** The colors of the standard theme that spreadsheet programs start with, in the order of their numbers in a file. */
const themeColors = [
  'FFFFFF',
  '000000',
  'E7E6E6',
  '44546A',
  '4472C4',
  'ED7D31',
  'A5A5A5',
  'FFC000',
  '5B9BD5',
  '70AD47',
];

/** The fonts that new workbooks are set in; every spreadsheet has its own in their place. */
const standardFonts: ReadonlySet<string> = new Set(['Calibri', 'Aptos', 'Aptos Narrow']);

const borderStyles: Readonly<Record<string, Border['style']>> = {
  thin: 'thin',
  hair: 'hair',
  dotted: 'dotted',
  dashed: 'dashed',
  dashDot: 'dashed',
  dashDotDot: 'dashed',
  double: 'double',
  medium: 'medium',
  mediumDashed: 'medium',
  mediumDashDot: 'medium',
  mediumDashDotDot: 'medium',
  slantDashDot: 'medium',
  thick: 'thick',
};

function tinted(channel: number, tint: number): number {
  return Math.round(tint < 0 ? channel * (1 + tint) : channel + (255 - channel) * tint);
}

function color(file: FileColor): string | undefined {
  if (file?.argb !== undefined) return file.argb.slice(-6).toUpperCase();
  const base = file?.theme === undefined ? undefined : themeColors[file.theme];
  if (base === undefined) return undefined;
  const channels = [0, 2, 4].map((at) => tinted(Number.parseInt(base.slice(at, at + 2), 16), file?.tint ?? 0));
  return channels
    .map((channel) => channel.toString(16).padStart(2, '0'))
    .join('')
    .toUpperCase();
}

function border(file: Partial<FileBorder> | undefined): Border | undefined {
  const style = file?.style === undefined ? undefined : borderStyles[file.style];
  if (style === undefined) return undefined;
  const rgb = color(file?.color);
  return rgb === undefined ? { style } : { style, color: rgb };
}

/** A cell's style; undefined where it is what every cell has. */
export function readStyle(file: Partial<FileStyle> | undefined): CellStyle | undefined {
  if (file === undefined) return undefined;
  const format = typeof file.numFmt === 'object' ? file.numFmt.formatCode : file.numFmt;
  const { font, alignment } = file;
  const fontColor = color(font?.color);
  const horizontal = alignment?.horizontal;
  const vertical = alignment?.vertical;
  const entries: Partial<Record<keyof CellStyle, unknown>> = {
    numberFormat: format === undefined || format === 'General' ? undefined : format,
    bold: font?.bold || undefined,
    italic: font?.italic || undefined,
    underline: (font?.underline && font.underline !== 'none') || undefined,
    fontName: font?.name === undefined || standardFonts.has(font.name) ? undefined : font.name,
    fontSize: font?.size === 11 ? undefined : font?.size,
    fontColor: fontColor === '000000' ? undefined : fontColor,
    fill: file.fill?.type === 'pattern' && file.fill.pattern === 'solid' ? color(file.fill.fgColor) : undefined,
    horizontal: horizontal === 'left' || horizontal === 'center' || horizontal === 'right' ? horizontal : undefined,
    vertical: vertical === 'top' || vertical === 'middle' ? vertical : undefined,
    wrap: alignment?.wrapText || undefined,
    borderTop: border(file.border?.top),
    borderRight: border(file.border?.right),
    borderBottom: border(file.border?.bottom),
    borderLeft: border(file.border?.left),
    locked: file.protection?.locked === false ? false : undefined,
  };
  const set = Object.entries(entries).filter(([, value]) => value !== undefined);
  return set.length === 0 ? undefined : (Object.fromEntries(set) as CellStyle);
}

/** A style laid over others by a condition: its fill is the background color, whatever pattern it names. */
export function readConditionStyle(file: Partial<FileStyle> | undefined): CellStyle {
  const fill = file?.fill?.type === 'pattern' ? color(file.fill.bgColor) : undefined;
  return { ...readStyle(file), ...(fill === undefined ? {} : { fill }) };
}
