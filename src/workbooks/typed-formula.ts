import { type Token, tokenize } from '@borgar/fx';
import { operandEnd } from './stored-formula';

/**
 * Cell formulas as files store them and as users type them. Files put prefixes before functions newer than the file
 * format (`_xlfn.LET`, parameters `_xlpm.a`) and before functions of add-ins (`_xldudf_SILT_CONE_PATTERN`).
 */

/** The formula as typed, beginning with `=`. Quoted text is left as it is. */
export function typedFormula(stored: string): string {
  const formula = `=${stored.replace(/^=/, '')}`;
  return /_xl/i.test(formula) ? typed(tokenize(formula)) : formula;
}

function typed(tokens: readonly Token[]): string {
  let text = '';
  let at = -1;
  for (const [place, { type, value }] of tokens.entries()) {
    // What a marker stands before has been written with it.
    if (place <= at) continue;
    at = place;
    const marker = type === 'func' ? /^_xlfn\.(SINGLE|ANCHORARRAY)$/i.exec(value)?.[1]?.toUpperCase() : undefined;
    if (marker === undefined) {
      text += type === 'string' ? value : withoutPrefix(value);
      continue;
    }
    const end = operandEnd(tokens, at);
    const inside = tokens.slice(at + 2, end);
    if (marker === 'ANCHORARRAY') text += `${typed(inside)}#`;
    else text += operandEnd(inside, 0) === inside.length - 1 ? `@${typed(inside)}` : `@(${typed(inside)})`;
    at = end;
  }
  return text;
}

function withoutPrefix(name: string): string {
  return name
    .replace(/^_xlfn\.(?:_xlws\.)?/i, '')
    .replace(/^(?:_xlpm|_xleta)\./i, '')
    .replace(/^_xldudf_([A-Z0-9_]+)$/i, (_, udf: string) => udf.replaceAll('_', '.'));
}
