/**
 * The arguments, as written, of the first call of a function in a cell formula; undefined where it is not called. Commas
 * inside quotes, brackets and braces do not separate.
 */
export function callArguments(formula: string, functionName: string): readonly string[] | undefined {
  const start = callStart(formula, functionName);
  if (start === undefined) return undefined;
  const found: string[] = [''];
  let depth = 0;
  let quote = '';
  for (const letter of formula.slice(start)) {
    if (quote !== '') {
      if (letter === quote) quote = '';
    } else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '(' || letter === '{') depth += 1;
    else if (depth === 0 && letter === ')') return found.map((text) => text.trim());
    else if (letter === ')' || letter === '}') depth -= 1;
    else if (depth === 0 && letter === ',') {
      found.push('');
      continue;
    }
    found[found.length - 1] += letter;
  }
  return undefined;
}

/** Where the brackets of a call open, outside quoted text. */
function callStart(formula: string, functionName: string): number | undefined {
  const bare = formula.replace(/"[^"]*"/g, (quoted) => ' '.repeat(quoted.length)).toUpperCase();
  const escaped = functionName.toUpperCase().replaceAll('.', '\\.');
  const match = new RegExp(`(?<![\\w.])${escaped}\\s*\\(`).exec(bare);
  return match === null ? undefined : match.index + match[0].length;
}
