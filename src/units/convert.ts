import { kindOfUnit, listedUnits, unitOfKind } from './kind-units';
import { type Kind, kinds } from './kinds';
import { nearest } from './nearest';
import { type NitrogenForm, nitrogenShare, splitNitrogenForm } from './nitrogen-form';
import { numberAtHead } from './number-text';
import { tidyText, wordList, wordText } from './text';
import { neat } from './unit';
import type { Measure } from './unit-text';
import { Unreadable } from './unreadable';
import { phraseOfKind } from './wrong-unit';

/**
 * Converts a number from one unit into another, both by name, temperatures as temperatures. Units with `as NO3` and the
 * like convert into each other. Throws Unreadable where no kind is measured in both.
 */
export function convert(value: unknown, from: string, to: string): number {
  const number = plainNumber(value);
  const source = readUnit(from);
  const target = readUnit(to);
  if (Boolean(source.as) === Boolean(target.as)) {
    const share = source.as && target.as ? nitrogenShare[source.as] / nitrogenShare[target.as] : 1;
    for (const [kind, a] of source.measures) {
      const b = target.measures.get(kind);
      if (b === undefined) continue;
      const ratio = (number + a.shift) * (a.numerator * b.denominator);
      return neat((ratio / (a.denominator * b.numerator)) * share - b.shift, b.shift);
    }
  }
  if (Boolean(source.as) !== Boolean(target.as)) {
    const [says, silent] = source.as ? [from, to] : [to, from];
    throw new Unreadable(
      `${wordText(says)} says what it is measured as and ${wordText(silent)} does not; write it for both or neither`,
    );
  }
  throw new Unreadable(`${describe(from)} and ${describe(to)}; give two units of one kind`);
}

interface ReadUnit {
  readonly as: NitrogenForm | undefined;
  /** What the text says of each kind that is measured in it. */
  readonly measures: ReadonlyMap<Kind, Measure>;
}

/** A workbook converts between the same few units in many cells. */
const unitsRead = new Map<string, ReadUnit>();

function readUnit(name: string): ReadUnit {
  const known = unitsRead.get(name);
  if (known !== undefined) return known;
  const { text, as } = splitNitrogenForm(tidyText(name.slice(0, 100)));
  const measures = new Map<Kind, Measure>();
  for (const kind of as ? (['concentration'] as const) : kinds) {
    const measure = unitOfKind(kind, text);
    if (measure !== undefined) measures.set(kind, measure);
  }
  if (unitsRead.size >= 200) unitsRead.clear();
  unitsRead.set(name, { as, measures });
  return { as, measures };
}

function plainNumber(value: unknown): number {
  const head = typeof value === 'string' && value.length < 200 ? numberAtHead(tidyText(value)) : undefined;
  if (head && 'readings' in head) {
    throw new Unreadable(
      `${wordText(String(value))} could be ${wordList(head.readings.map(String))}; write the one that you mean`,
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
  if (unit.trim() === '') return 'blank is not a unit';
  const kind = unit.length > 100 ? undefined : /^[cfk]$/i.test(unit.trim()) ? 'temperature' : kindOfUnit(unit);
  return kind
    ? `${wordText(unit)} is ${phraseOfKind(kind)}`
    : `${wordText(unit)} is not a unit that is read (nearest: ${nearest(unit, everyUnit).join(', ')})`;
}
