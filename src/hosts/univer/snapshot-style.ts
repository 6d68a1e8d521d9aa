import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IColorStyle,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { Border, CellStyle } from '../workbook-model';

const borderStyles = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  thick: BorderStyleTypes.THICK,
} as const;
const horizontals = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;
const verticals = { top: VerticalAlign.TOP, middle: VerticalAlign.MIDDLE, bottom: VerticalAlign.BOTTOM } as const;

function nameOf<T extends Readonly<Record<string, unknown>>>(table: T, value: unknown): (keyof T & string) | undefined {
  return Object.keys(table).find((name) => table[name] === value);
}

function toEngineBorder(border: Border): IBorderStyleData {
  return { s: borderStyles[border.style], cl: { rgb: `#${border.color ?? '000000'}` } };
}

/** Protection, which the engine does not know in styles: it only keeps it, and copies it with the cell. */
export const protectionKey = 'locked';
interface StyleData extends IStyleData {
  readonly [protectionKey]?: BooleanNumber;
}

/** The engine's form of a cell style. */
export function toEngineStyle(style: CellStyle): StyleData {
  const borders = {
    ...(style.borderTop ? { t: toEngineBorder(style.borderTop) } : {}),
    ...(style.borderRight ? { r: toEngineBorder(style.borderRight) } : {}),
    ...(style.borderBottom ? { b: toEngineBorder(style.borderBottom) } : {}),
    ...(style.borderLeft ? { l: toEngineBorder(style.borderLeft) } : {}),
  };
  return {
    ...(style.numberFormat ? { n: { pattern: style.numberFormat } } : {}),
    ...(style.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(style.italic ? { it: BooleanNumber.TRUE } : {}),
    ...(style.underline ? { ul: { s: BooleanNumber.TRUE } } : {}),
    ...(style.fontName ? { ff: style.fontName } : {}),
    ...(style.fontSize ? { fs: style.fontSize } : {}),
    ...(style.fontColor ? { cl: { rgb: `#${style.fontColor}` } } : {}),
    ...(style.fill ? { bg: { rgb: `#${style.fill}` } } : {}),
    ...(style.horizontal ? { ht: horizontals[style.horizontal] } : {}),
    ...(style.vertical ? { vt: verticals[style.vertical] } : {}),
    ...(style.wrap ? { tb: WrapStrategy.WRAP } : {}),
    ...(Object.keys(borders).length > 0 ? { bd: borders } : {}),
    ...(style.locked === false ? { locked: BooleanNumber.FALSE } : {}),
  };
}

function colorOf(engineColor: Nullable<IColorStyle>): string | undefined {
  const match = /^#?([0-9a-f]{6})$/i.exec((engineColor as IColorStyle | undefined)?.rgb || '');
  return match?.[1]?.toUpperCase();
}

function fromEngineBorder(border: Nullable<IBorderStyleData>): Border | undefined {
  const style = nameOf(borderStyles, border ? border.s : undefined);
  if (style === undefined) return undefined;
  const color = colorOf(border ? border.cl : undefined);
  return { style, ...(color === undefined ? {} : { color }) };
}

/** Back from the engine; undefined where nothing is set. */
export function fromEngineStyle(style: Nullable<StyleData>): CellStyle | undefined {
  if (!style) return undefined;
  const entries: Partial<Record<keyof CellStyle, unknown>> = {
    numberFormat: style.n?.pattern,
    bold: style.bl === BooleanNumber.TRUE || undefined,
    italic: style.it === BooleanNumber.TRUE || undefined,
    underline: style.ul?.s === BooleanNumber.TRUE || undefined,
    fontName: style.ff ?? undefined,
    fontSize: style.fs,
    fontColor: colorOf(style.cl),
    fill: colorOf(style.bg),
    horizontal: nameOf(horizontals, style.ht),
    vertical: nameOf(verticals, style.vt),
    wrap: style.tb === WrapStrategy.WRAP || undefined,
    borderTop: fromEngineBorder(style.bd ? style.bd.t : undefined),
    borderRight: fromEngineBorder(style.bd ? style.bd.r : undefined),
    borderBottom: fromEngineBorder(style.bd ? style.bd.b : undefined),
    borderLeft: fromEngineBorder(style.bd ? style.bd.l : undefined),
    locked: style.locked === BooleanNumber.FALSE ? false : undefined,
  };
  const set = Object.entries(entries).filter(([, value]) => value !== undefined && value !== null);
  return set.length === 0 ? undefined : (Object.fromEntries(set) as CellStyle);
}
