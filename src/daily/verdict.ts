import { waterCheckRow } from '../catalogue/rows/water-check';
import { adapt } from '../functions/adapter';
import { capitalized } from '../units/text';
import { type Reading, readings } from './entries';

const check = adapt(waterCheckRow, (_, message) => new Error(message));

const fine = /^(within limits|not measured|no limit)/;
const cannotJudge = 'cannot judge';

/** What is to be said of a water test. */
export interface Judged {
  /** What is wrong and what to do at once, or why a reading cannot be judged: a short sentence each, in the words of WATER.CHECK. */
  readonly wrong: readonly string[];
  /** The readings that were not taken. */
  readonly missing: readonly string[];
}

/** Judges a water test; where it cannot be read, says why. */
export function judged(
  units: string,
  species: string,
  values: Readonly<Record<Reading, string>>,
): Judged | { readonly unread: string } {
  const given = readings.map((reading) => values[reading].trim() || '-');
  try {
    const rows = check(units, species, ...given.slice(0, 6), 0, given[6]);
    const names = rows.map(([name]) => String(name));
    return {
      wrong: rows
        .filter(([, value, , , verdict]) => typeof verdict === 'string' && isToBeSaid(verdict, value !== ''))
        .map(([name, , , , verdict, note]) =>
          capitalized(`${name} ${said(String(verdict))}. ${firstSentence(String(note))}`),
        ),
      missing: readings
        .filter((_, at) => given[at] === '-')
        .map((reading) => names.find((name) => name.toLowerCase() === reading) ?? reading),
    };
  } catch (error) {
    return { unread: error instanceof Error ? error.message : String(error) };
  }
}

/** A reading that was taken and cannot be judged is never passed over: ammonia without pH may kill. */
function isToBeSaid(verdict: string, isTaken: boolean): boolean {
  return verdict !== '' && !fine.test(verdict) && (verdict !== cannotJudge || isTaken);
}

function said(verdict: string): string {
  return verdict === cannotJudge ? 'cannot be judged' : verdict;
}

function firstSentence(note: string): string {
  const [first = ''] = note.split(/[.:;] /);
  return first === '' || /^Limit/.test(first) ? '' : `${first.replace(/\.$/, '')}.`;
}
