import { waterCheckRow } from '../catalogue/rows/water-check';
import { adapt } from '../functions/adapter';
import { capitalized } from '../units/text';
import { type Reading, readings } from './entries';

const check = adapt(waterCheckRow, (_, message) => new Error(message));

const fine = /^(within limits|not measured|cannot judge|no limit)/;

/** What cannot be read in a water test; undefined if all can. */
export function misread(units: string, species: string, values: Readonly<Record<Reading, string>>): string | undefined {
  try {
    checked(units, species, values);
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function checked(units: string, species: string, values: Readonly<Record<Reading, string>>) {
  const given = readings.slice(0, 6).map((reading) => values[reading].trim() || '-');
  return check(units, species, ...given, 0, values.alkalinity.trim() || '-');
}

/** What is wrong with a water test and what to do at once, a short sentence each; the words are those of WATER.CHECK. */
export function wrongWith(
  units: string,
  species: string,
  values: Readonly<Record<Reading, string>>,
): readonly string[] {
  return checked(units, species, values)
    .filter(([, , , , verdict]) => typeof verdict === 'string' && verdict !== '' && !fine.test(verdict))
    .map(([reading, , , , verdict, note]) => capitalized(`${reading} ${verdict}. ${firstSentence(String(note))}`));
}

function firstSentence(note: string): string {
  const [first = ''] = note.split(/[.:;] /);
  return first === '' || /^Limit/.test(first) ? '' : `${first.replace(/\.$/, '')}.`;
}
