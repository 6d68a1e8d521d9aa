export interface NumberAtHead {
  readonly value: number;
  /** The text after the number. */
  readonly rest: string;
}

/** A number with a comma that can be a decimal sign or a thousands separator. */
export interface TwoReadings {
  readonly readings: readonly [number, number];
  readonly rest: string;
}

const WHOLE = String.raw`[1-9]\d{0,2}(?:,\d{3})+(?![\d,])|\d+`;

/** `22 1/2`, `3-1/4`, `5/8`. */
const fraction = new RegExp(String.raw`^(?:(${WHOLE})(?: ?- ?| ))?(\d+) ?/ ?(\d+)(?![\d.,]*\d)`);

/** `12`, `1,250.5`, `1 250`, `.5`, `1e-3`. */
const decimal = new RegExp(
  String.raw`^((?:[1-9]\d{0,2}(?: \d{3})+(?![\d ]*[\d/,])|${WHOLE})(?:\.\d*)?|\.\d+)(e[+-]?\d+)?(?![\d.])`,
  'i',
);

const decimalComma = /^(\d+),(\d+)(?![\d.,])/;

/**
 * Reads the number that tidied text begins with: decimals, exponents, common fractions and mixed numbers, commas
 * or spaces between thousands. Undefined where it begins with none.
 */
export function numberAtHead(text: string): NumberAtHead | TwoReadings | undefined {
  const negative = text.startsWith('-');
  const sign = negative ? -1 : 1;
  const body = negative || text.startsWith('+') ? text.slice(1).trimStart() : text;

  const [parts, whole, over, under] = fraction.exec(body) ?? [];
  if (parts !== undefined) {
    const numerator = Number(over);
    const denominator = Number(under);
    if (denominator === 0 || (whole !== undefined && numerator >= denominator)) return undefined;
    const units = whole === undefined ? 0 : Number(whole.replaceAll(',', ''));
    return { value: (sign * (units * denominator + numerator)) / denominator, rest: body.slice(parts.length).trim() };
  }
  const [number, mantissa = '', exponent = ''] = decimal.exec(body) ?? [];
  if (number === undefined) return undefined;
  const rest = body.slice(number.length);
  if (!rest.startsWith(','))
    return { value: sign * Number(mantissa.replace(/[, ]/g, '') + exponent), rest: rest.trim() };
  const [both, before = '', after = ''] = decimalComma.exec(body) ?? [];
  if (both === undefined) return undefined;
  return {
    readings: [sign * Number(`${before}.${after}`), sign * Number(before + after)],
    rest: body.slice(both.length).trim(),
  };
}
