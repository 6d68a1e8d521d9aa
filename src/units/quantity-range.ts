import type { Kind } from './kinds';
import { numberAtHead } from './number-text';
import { tidyText, wordText } from './text';
import { Unreadable } from './unreadable';

/** Both ends of a range as it was typed, each as text or number that reads as a quantity by itself. */
export interface RangeText {
  readonly low: string;
  readonly high: string;
}

const fromTo = /^(.+?)\s+(?:to|until)\s+(.+)$/i;
const aroundIt = /^(.+?)\s*(?:±|\+\s*\/\s*-|\+\s*-)\s*(.+)$/;

interface Part {
  readonly value: number;
  readonly unit: string;
}

function partOf(text: string): Part | undefined {
  const head = numberAtHead(text.trim());
  return head === undefined || 'readings' in head || !Number.isFinite(head.value)
    ? undefined
    : { value: head.value, unit: head.rest };
}

/** Whether text reads as a range rather than as one quantity. */
export function isRangeText(value: unknown): value is string {
  if (typeof value !== 'string' || value.length > 200) return false;
  const text = tidyText(value);
  return /\d/.test(text) && (fromTo.test(text) || aroundIt.test(text));
}

/**
 * Splits `0.2 to 0.4`, `8 to 12 oz`, `350 ± 20` and `68 ± 4 °F` into two quantities. A unit after the second figure is
 * also that of the first, if the first has none; `±` is a half-width from end to end. Whether the ends are in order is
 * for the reader, who knows what they come to. Throws Unreadable where the half-width is none.
 */
export function splitRange(kind: Kind, value: string): RangeText {
  const text = tidyText(value);
  const [, from, to] = fromTo.exec(text) ?? [];
  if (from !== undefined && to !== undefined) {
    const unit = partOf(from)?.unit === '' ? (partOf(to)?.unit ?? '') : '';
    return { low: `${from} ${unit}`.trim(), high: to.trim() };
  }
  const [, middle = '', half = ''] = aroundIt.exec(text) ?? [];
  const [around, width] = [partOf(middle), partOf(half)];
  if (around === undefined || width === undefined) {
    throw new Unreadable(`${wordText(value)} is not a range of ${kind}; write it as 0.2 to 0.4, or as 0.3 ± 0.1`);
  }
  if (width.value < 0) throw new Unreadable(`${wordText(value)} has a half-width below 0; write it as 0.3 ± 0.1`);
  if (around.unit !== '' && width.unit !== '' && around.unit !== width.unit) {
    throw new Unreadable(`${wordText(value)} has two units; give both figures in one`);
  }
  const unit = around.unit === '' ? width.unit : around.unit;
  const end = (figure: number): string => `${Number(figure.toPrecision(15))} ${unit}`.trim();
  return { low: end(around.value - width.value), high: end(around.value + width.value) };
}
