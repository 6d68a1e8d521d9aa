import { type Token, tokenize } from '@borgar/fx';
import { isPrefixed } from './stored-formula';

type TakesRange = (argument: number) => boolean;

const every: TakesRange = () => true;
const only =
  (...positions: readonly number[]): TakesRange =>
  (argument) =>
    positions.includes(argument);

/** Functions that give one value, with the arguments that may be ranges; anywhere else a range gives an array. */
const takesRanges: Readonly<Record<string, TakesRange>> = {
  ...Object.fromEntries(
    'AND AVERAGE COUNT COUNTA COUNTBLANK MAX MEDIAN MIN OR PRODUCT ROWS COLUMNS STDEV SUM'
      .split(' ')
      .map((name) => [name, every]),
  ),
  COUNTIF: only(0),
  SUMIF: only(0, 2),
  AVERAGEIF: only(0, 2),
  COUNTIFS: (argument) => argument % 2 === 0,
  SUMIFS: (argument) => argument === 0 || argument % 2 === 1,
  AVERAGEIFS: (argument) => argument === 0 || argument % 2 === 1,
  LARGE: only(0),
  SMALL: only(0),
  MATCH: only(1),
  VLOOKUP: only(1),
  HLOOKUP: only(1),
};

/** Functions older than the flag that may give several cells. */
const givesArrays: ReadonlySet<string> = new Set(
  'OFFSET INDIRECT TRANSPOSE MMULT MINVERSE FREQUENCY LINEST LOGEST TREND GROWTH'.split(' '),
);

interface Call {
  readonly name: string;
  argument: number;
}

function isSeveralCells({ type, value }: Token, isRangeName: (name: string) => boolean): boolean {
  if (type === 'range_named') return isRangeName(value);
  return type === 'structured' ? !/@|#this row/i.test(value) : type.startsWith('range') && value.includes(':');
}

/**
 * Whether a formula needs the dynamic-array flag: without it Excel would put `@` before calls of an add-in and take
 * one value out of each range that is not a bare argument of a function made for ranges. Too many flags do no harm.
 */
export function isDynamic(typed: string, isRangeName: (name: string) => boolean = () => false): boolean {
  const tokens = tokenize(typed).filter((token) => token.type !== 'whitespace');
  const calls: Call[] = [];
  return tokens.some((token, index) => {
    const [before, after] = [tokens[index - 1], tokens[index + 1]];
    if (token.value === '(')
      calls.push({ name: before?.type === 'func' ? before.value.toUpperCase() : '', argument: 0 });
    else if (token.value === ')') calls.pop();
    const call = calls.at(-1);
    if (token.value === ',' && call !== undefined) call.argument += 1;
    if (token.type === 'func') return isPrefixed(token.value) || givesArrays.has(token.value.toUpperCase());
    if (token.value === '{' || (token.type === 'operator' && token.value === '#')) return true;
    if (!isSeveralCells(token, isRangeName)) return false;
    const isBare = /^[(,]$/.test(before?.value ?? '') && /^[),]$/.test(after?.value ?? '');
    return !(isBare && takesRanges[call?.name ?? '']?.(call?.argument ?? 0));
  });
}
