import type { Kind } from '../../units/kinds';

/** The smallest and the largest likely value: text with a unit, or a bare number without a kind. */
export type Likely = readonly [least: string, most: string];

/** The first word of a note that replaces the meaning of a figure. */
export const cautionWord = 'CAUTION';

/** A formula that reads a size in the workbook's units; without a kind it reads a bare number. */
export function readAs(kind: Kind | undefined, entry: string): string {
  return kind === undefined ? `(0+${entry})` : `SILT.UNIT.READ(SiltUnits,"${kind}",${entry})`;
}

/** Text as a formula quotes it. */
function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/**
 * A formula for the cell beside a typed figure: its meaning, or a caution if the figure cannot be read or is not
 * likely, as after a mistake in the unit. `unless` holds further cautions: a condition and the text to show.
 */
export function likelyNote(
  typed: string,
  kind: Kind | undefined,
  [least, most]: Likely,
  meaning: string,
  unless: readonly (readonly [condition: string, words: string])[] = [],
): string {
  const bound = (text: string): string => (kind === undefined ? text : readAs(kind, quoted(text)));
  const unit = kind === undefined ? '""' : `" "&SILT.UNIT.LABEL(SiltUnits,"${kind}")`;
  const more = unless.reduceRight(
    (rest, [condition, words]) => `IF(IFERROR(${condition},FALSE),${quoted(`${cautionWord}: ${words}`)},${rest})`,
    quoted(meaning),
  );
  const usual = `"${cautionWord}: "&ROUND(size,4)&${unit}&" is not likely; the usual range is "&ROUND(least,2)&" to "&ROUND(most,2)&${unit}&". Check the number and its unit."`;
  const judged = `LET(size,${readAs(kind, typed)},least,${bound(least)},most,${bound(most)},IF(ISNUMBER(size),IF((size<least)+(size>most),${usual},${more}),${quoted(`${cautionWord}: this cannot be read as a ${kind ?? 'number'}.`)}))`;
  return `=IF(ISBLANK(${typed}),${quoted(meaning)},${judged})`;
}

/** Likely values of which the largest depends on another figure: a formula of it, one for each cell. */
export type LikelyBeside = readonly [least: string, most: { readonly formula: string }];

/**
 * A formula for the cell beside several typed ones: a sentence about each that is not likely, with the title of its
 * column and the usual range. An empty cell is never unlikely.
 */
export function unlikelyAmong(cells: string, titles: string, kind: Kind, [least, most]: Likely | LikelyBeside): string {
  const size = readAs(kind, cells);
  const bound = (text: string): string => readAs(kind, quoted(text));
  const [low, high] = [bound(least), typeof most === 'string' ? bound(most) : most.formula];
  const outside = `IFERROR((${size}<${low})+(${size}>${high})>0,FALSE)`;
  const isGiven = kind === 'temperature' ? `NOT(ISBLANK(${cells}))` : `NOT(ISBLANK(${cells}))*IFERROR(${size}>0,FALSE)`;
  // A share is read, and so told of, in per cent.
  const [factor, unit] = kind === 'share' ? ['100*', '" %"'] : ['', `" "&SILT.UNIT.LABEL(SiltUnits,"${kind}")`];
  const shown = (value: string): string => `ROUND(${factor}${value},IF(${factor}${value}<10,2,0))`;
  const sentence = `ROUND(${factor}${size},4)&${unit}&" for "&${titles}&" is not likely; the usual range is "&${shown(low)}&" to "&${shown(high)}&${unit}&"."`;
  return `=IF(SUM(${isGiven}*${outside})=0,"","${cautionWord}: "&TEXTJOIN(" ",TRUE,IF(${isGiven}*${outside},${sentence},"")))`;
}
