import { waterCheckRow } from '../catalogue/rows/water-check';
import { adapt } from '../functions/adapter';
import { capitalized } from '../units/text';
import { type Reading, readings } from './entries';

const check = adapt(waterCheckRow, (_, message) => new Error(message));

const fine = /^(within limits|not measured|cannot judge|no limit)/;

/** What is wrong with a water test and what to do at once, a short sentence each; the words are those of WATER.CHECK. */
export function wrongWith(
  units: string,
  species: string,
  values: Readonly<Record<Reading, string>>,
): readonly string[] {
  const given = readings.slice(0, 6).map((reading) => values[reading].trim() || '-');
  try {
    const rows = check(units, species, ...given, 0, values.alkalinity.trim() || '-');
    return rows
      .filter(([, , , , verdict]) => typeof verdict === 'string' && verdict !== '' && !fine.test(verdict))
      .map(([reading, , , , verdict, note]) => capitalized(`${reading} ${verdict}. ${firstSentence(String(note))}`));
  } catch (error) {
    return [error instanceof Error ? error.message : String(error)];
  }
}

function firstSentence(note: string): string {
  const [first = ''] = note.split(/[.:;] /);
  return first === '' || /^Limit/.test(first) ? '' : `${first.replace(/\.$/, '')}.`;
}
