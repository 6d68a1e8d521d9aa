import { type Token, tokenize } from '@borgar/fx';
import { newerFunctions, takesFunction, worksheetFunctions } from './newer-functions';

function storedName(name: string): string {
  const upper = name.toUpperCase();
  if (upper.startsWith('SILT.')) return `_xldudf_${upper.replaceAll('.', '_')}`;
  if (worksheetFunctions.has(upper)) return `_xlfn._xlws.${upper}`;
  return newerFunctions.has(upper) ? `_xlfn.${upper}` : upper;
}

/** Whether files put a prefix before a function's name. */
export function isPrefixed(name: string): boolean {
  return storedName(name).startsWith('_xl');
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

/** The index of the last token of what `@` stands before: a reference, a call with its arguments, or what brackets hold. */
export function operandEnd(tokens: readonly Token[], start: number): number {
  const open = tokens[start]?.type === 'func' ? start + 1 : start;
  if (tokens[open]?.value !== '(') return start;
  let depth = 0;
  for (const [at, { value }] of tokens.entries()) {
    if (at < open) continue;
    if (value === '(') depth += 1;
    if (value === ')') depth -= 1;
    if (depth === 0) return at;
  }
  return tokens.length - 1;
}

/** The places of names that stand for a function given to another: the last in `GROUPBY(A1:A9,B1:B9,SUM)`. */
function givenFunctions(tokens: readonly Token[]): ReadonlySet<Token> {
  const given = new Set<Token>();
  const calls: string[] = [];
  tokens.forEach((token, index) => {
    const before = tokens[index - 1];
    if (token.value === '(') calls.push(before?.type === 'func' ? before.value.toUpperCase() : '');
    else if (token.value === ')') calls.pop();
    else if (
      /^[A-Z][A-Z.]*$/i.test(token.value) &&
      token.type.startsWith('range_named') &&
      takesFunction.has(calls.at(-1) ?? '')
    )
      if (/^[(,]$/.test(tokens[index - 1]?.value ?? '') && /^[),]$/.test(tokens[index + 1]?.value ?? ''))
        if (usualFunctions.has(token.value.toUpperCase())) given.add(token);
  });
  return given;
}

/** What may be given so; a name of the workbook's own is left alone. */
const usualFunctions: ReadonlySet<string> = new Set(
  'ABS ARRAYTOTEXT AVERAGE CONCAT COUNT COUNTA MAX MEDIAN MIN MODE.SNGL PERCENTOF PRODUCT STDEV.P STDEV.S SUM VAR.P VAR.S'.split(
    ' ',
  ),
);

function join(tokens: readonly Token[], names: ReadonlySet<string>, given: ReadonlySet<Token>): string {
  let text = '';
  let at = -1;
  for (const [place, token] of tokens.entries()) {
    // The operand of `@` and the `#` behind a cell have been written with what stands before them.
    if (place <= at) continue;
    at = place;
    const { type, value } = token;
    if (type === 'fx_prefix') continue;
    if (type === 'operator' && value === '@') {
      const end = operandEnd(tokens, at + 1);
      text += `_xlfn.SINGLE(${join(tokens.slice(at + 1, end + 1), names, given)})`;
      at = end;
    } else if (tokens[at + 1]?.type === 'operator' && tokens[at + 1]?.value === '#') {
      text += `_xlfn.ANCHORARRAY(${value})`;
      at += 1;
    } else if (type === 'func') text += storedName(value);
    else if (given.has(token)) text += `_xleta.${value.toUpperCase()}`;
    else if (type === 'range_named' && names.has(value.toUpperCase())) text += `_xlpm.${value}`;
    else text += value;
  }
  return text;
}

/** A formula as files store it, without `=`: the reverse of `typedFormula`. */
export function storedFormula(typed: string): string {
  const tokens = tokenize(typed.startsWith('=') ? typed : `=${typed}`);
  return join(tokens, parameters(tokens), givenFunctions(tokens));
}
