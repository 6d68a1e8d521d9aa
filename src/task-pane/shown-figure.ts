/** Nobody types a number with more signs: it was computed, or converted from other units. */
const mostTyped = 10;

/**
 * A figure as a field shows it: as it was typed, or with four digits where it was computed. Whoever shows it keeps the
 * figure itself, and takes the text only once somebody has typed over it.
 */
export function shownFigure(text: string): string {
  const value = Number(text);
  if (text.length <= mostTyped || !Number.isFinite(value)) return text;
  const before = String(Math.trunc(Math.abs(value))).length;
  return String(Number(value.toPrecision(Math.min(15, Math.max(4, before)))));
}

/** Whether a number reads as something that a person types: 22.984375, but not 22.333333333333332. */
export function isAsTyped(value: number): boolean {
  return String(value).length <= mostTyped;
}
