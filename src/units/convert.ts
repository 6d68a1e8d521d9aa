import { kindOfUnit, listedUnits, unitOfKind } from './kind-units';
import { kinds } from './kinds';
import { nearest } from './nearest';
import { nitrogenShare, splitNitrogenForm } from './nitrogen-form';
import { numberAtHead } from './number-text';
import { tidyText, wordList, wordText } from './text';
import { neat } from './unit';
import { Unreadable } from './unreadable';
import { phraseOfKind } from './wrong-unit';

/**
 * Converts a number from one unit into another, both by name, temperatures as temperatures. Units with `as NO3` and the
 * like convert into each other. Throws Unreadable where no kind is measured in both.
 */
export function convert(value: unknown, from: string, to: string): number {
  const number = plainNumber(value);
  const source = splitNitrogenForm(tidyText(from.slice(0, 100)));
  const target = splitNitrogenForm(tidyText(to.slice(0, 100)));
  if (Boolean(source.as) === Boolean(target.as)) {
    const share = source.as && target.as ? nitrogenShare[source.as] / nitrogenShare[target.as] : 1;
    for (const kind of source.as ? (['concentration'] as const) : kinds) {
      const a = unitOfKind(kind, source.text);
      const b = a && unitOfKind(kind, target.text);
      if (!a || !b) continue;
      const ratio = (number + a.shift) * (a.numerator * b.denominator);
      return neat((ratio / (a.denominator * b.numerator)) * share - b.shift, b.shift);
    }
  }
  if (Boolean(source.as) !== Boolean(target.as)) {
    const [says, silent] = source.as ? [from, to] : [to, from];
    throw new Unreadable(
      `${wordText(says)} says what it is measured as and ${wordText(silent)} does not; say it of both or neither`,
    );
  }
  throw new Unreadable(`${describe(from)} and ${describe(to)}; give two units of one kind`);
}

function plainNumber(value: unknown): number {
  const head = typeof value === 'string' && value.length < 200 ? numberAtHead(tidyText(value)) : undefined;
  if (head && 'readings' in head) {
    throw new Unreadable(
      `${wordText(String(value))} could be ${wordList(head.readings.map(String))}; write the one that is meant`,
    );
  }
  const number = typeof value === 'number' ? value : head?.rest === '' ? head.value : Number.NaN;
  if (Number.isFinite(number)) return number;
  const given =
    typeof value === 'string' ? wordText(value) : value === null || value === undefined ? 'blank' : String(value);
  throw new Unreadable(`${given} is not a number; give the number alone and its unit as the next argument`);
}

const everyUnit = [...new Set(kinds.flatMap(listedUnits))];

function describe(unit: string): string {
  if (unit.trim() === '') return 'blank is no unit';
  const kind = unit.length > 100 ? undefined : /^[cfk]$/i.test(unit.trim()) ? 'temperature' : kindOfUnit(unit);
  return kind
    ? `${wordText(unit)} is ${phraseOfKind(kind)}`
    : `${wordText(unit)} is not a unit that is read (nearest: ${nearest(unit, everyUnit).join(', ')})`;
}
