/** A call as it is typed: `SILT.CONE.ANGLE("US",22.5,4,9.25)`, each argument a constant, a block of them or a call. */
export interface Call {
  /** Without the namespace. */
  readonly name: string;
  readonly values: readonly (unknown | Call)[];
}

const token = /\s*("(?:[^"]|"")*"|-?\d+(?:\.\d+)?(?:e[+-]?\d+)?%?|TRUE|FALSE|SILT\.[A-Z0-9.]+|[(){},;])/iy;

/** Reads a cell formula made of SILT calls and constants only; throws at anything else. */
export function readCall(formula: string): Call {
  const tokens = tokensOf(formula.replace(/^=/, ''));
  const call = readArgument(tokens);
  if (!isCall(call) || tokens.length > 0) throw new Error(`${formula} is not one call`);
  return call;
}

export function isCall(value: unknown): value is Call {
  return typeof value === 'object' && value !== null && 'name' in value;
}

function tokensOf(text: string): string[] {
  const tokens: string[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < text.length) {
    const start = token.lastIndex;
    const found = token.exec(text);
    if (found?.[1] === undefined) throw new Error(`cannot read ${text.slice(start)}`);
    tokens.push(found[1]);
  }
  return tokens;
}

function readArgument(tokens: string[]): unknown {
  if (tokens[0] === ',' || tokens[0] === ')') return null;
  const first = tokens.shift() ?? '';
  if (first === '{') return readBlock(tokens);
  if (first.startsWith('SILT.')) return readValues(first.slice('SILT.'.length), tokens);
  return constant(first);
}

function readValues(name: string, tokens: string[]): Call {
  const values: unknown[] = [];
  if (tokens.shift() !== '(') throw new Error(`${name} without arguments`);
  if (tokens[0] === ')') {
    tokens.shift();
    return { name, values };
  }
  for (;;) {
    values.push(readArgument(tokens));
    const next = tokens.shift();
    if (next === ')') return { name, values };
    if (next !== ',') throw new Error(`${name} does not end`);
  }
}

function readBlock(tokens: string[]): unknown[][] {
  let row: unknown[] = [];
  const rows = [row];
  for (;;) {
    row.push(constant(tokens.shift() ?? ''));
    const next = tokens.shift();
    if (next === '}') return rows;
    if (next === ';') {
      row = [];
      rows.push(row);
    } else if (next !== ',') throw new Error(`a block that does not end`);
  }
}

function constant(text: string): string | number | boolean {
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  if (/^(TRUE|FALSE)$/i.test(text)) return text.toUpperCase() === 'TRUE';
  const digits = text.replace('%', '');
  // By moving the point, as the spreadsheet engine does; dividing by 100 may be off in the last digit.
  const value = Number(digits === text || /e/i.test(digits) ? digits : `${digits}e-2`);
  if (text === '' || Number.isNaN(value)) throw new Error(`cannot read ${text}`);
  return digits !== text && /e/i.test(digits) ? value / 100 : value;
}
