import { type Token, tokenize } from '@borgar/fx';
import { newerFunctions, worksheetFunctions } from './newer-functions';

/** Functions that take ranges and give one value, so that a formula made of them needs no array flag. */
const takesRanges: ReadonlySet<string> = new Set(
  `AND AVERAGE AVERAGEIF AVERAGEIFS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS LARGE MATCH MAX MEDIAN MIN OR PRODUCT ROWS COLUMNS
  SMALL STDEV SUM SUMIF SUMIFS VLOOKUP HLOOKUP`.split(/\s+/),
);

function storedName(name: string): string {
  const upper = name.toUpperCase();
  if (upper.startsWith('SILT.')) return `_xldudf_${upper.replaceAll('.', '_')}`;
  if (worksheetFunctions.has(upper)) return `_xlfn._xlws.${upper}`;
  return newerFunctions.has(upper) ? `_xlfn.${upper}` : upper;
}

/** The names that LET and LAMBDA introduce: each stands alone before a comma. */
function parameters(tokens: readonly Token[]): ReadonlySet<string> {
  const names = new Set<string>();
  const calls: string[] = [];
  const solid = tokens.filter((token) => token.type !== 'whitespace');
  solid.forEach((token, index) => {
    const before = solid[index - 1];
    if (token.value === '(') calls.push(before?.type === 'func' ? before.value.toUpperCase() : '');
    else if (token.value === ')') calls.pop();
    else if (token.type === 'range_named' && /^(LET|LAMBDA)$/.test(calls.at(-1) ?? '')) {
      if ((before?.value === '(' || before?.value === ',') && solid[index + 1]?.value === ',')
        names.add(token.value.toUpperCase());
    }
  });
  return names;
}

/** The index of the last token of what `@` stands before: a reference, or a call with its arguments. */
function operandEnd(tokens: readonly Token[], start: number): number {
  if (tokens[start]?.type !== 'func') return start;
  let depth = 0;
  for (let at = start + 1; at < tokens.length; at += 1) {
    if (tokens[at]!.value === '(') depth += 1;
    if (tokens[at]!.value === ')') depth -= 1;
    if (depth === 0) return at;
  }
  return tokens.length - 1;
}

function join(tokens: readonly Token[], names: ReadonlySet<string>): string {
  let text = '';
  for (let at = 0; at < tokens.length; at += 1) {
    const { type, value } = tokens[at]!;
    if (type === 'fx_prefix') continue;
    if (type === 'operator' && value === '@') {
      const end = operandEnd(tokens, at + 1);
      text += `_xlfn.SINGLE(${join(tokens.slice(at + 1, end + 1), names)})`;
      at = end;
    } else if (tokens[at + 1]?.type === 'operator' && tokens[at + 1]?.value === '#') {
      text += `_xlfn.ANCHORARRAY(${value})`;
      at += 1;
    } else if (type === 'func') text += storedName(value);
    else if (type === 'range_named' && names.has(value.toUpperCase())) text += `_xlpm.${value}`;
    else text += value;
  }
  return text;
}

/** A formula as files store it, without `=`: the reverse of `typedFormula`. */
export function storedFormula(typed: string): string {
  const tokens = tokenize(typed.startsWith('=') ? typed : `=${typed}`);
  return join(tokens, parameters(tokens));
}

/**
 * Whether a formula needs the dynamic-array flag: without it Excel would put `@` before calls of an add-in and take
 * one value out of each range. Too many flags do no harm.
 */
export function isDynamic(typed: string): boolean {
  const tokens = tokenize(typed).filter((token) => token.type !== 'whitespace');
  const calls: string[] = [];
  return tokens.some((token, index) => {
    if (token.value === '(')
      calls.push(tokens[index - 1]?.type === 'func' ? tokens[index - 1]!.value.toUpperCase() : '');
    else if (token.value === ')') calls.pop();
    if (token.type === 'func')
      return /^SILT\./i.test(token.value) || /^_XL/.test(storedName(token.value).toUpperCase());
    if (token.value === '{') return true;
    const isRange = token.type.startsWith('range') && token.value.includes(':');
    return isRange && !takesRanges.has(calls.at(-1) ?? '');
  });
}
