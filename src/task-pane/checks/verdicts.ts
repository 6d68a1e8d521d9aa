import type { CellResult } from '../../hosts/workbook-model';

interface Verdict {
  /** Which row of the answer says it. */
  readonly row: number;
  readonly sentence: string;
}

type Lines = readonly (readonly CellResult[])[];

/** What an answer cautions about, by the functions that gave it. */
export function verdicts(names: readonly string[], lines: Lines): readonly Verdict[] {
  if (names.includes('WATER.CHECK')) return waterVerdicts(lines);
  if (names.some((name) => name.endsWith('.CHECK'))) return sentences(lines);
  return names.includes('COST.LINES') ? missingPrices(lines) : [];
}

/** Sentences down one column; one that says that nothing was found is no caution. */
function sentences(lines: Lines): readonly Verdict[] {
  return lines.flatMap(([value], row) => {
    if (typeof value !== 'string' || value.trim() === '' || /^nothing was found$/i.test(value.trim())) return [];
    return [{ row, sentence: ended(value) }];
  });
}

const fine = 'within limits';
const judged = new Set([fine, 'survives, grows poorly', 'too low', 'too high', 'not measured', 'cannot judge']);

/** A reading a row, its verdict in one column and what to do behind it. */
function waterVerdicts(lines: Lines): readonly Verdict[] {
  return lines.flatMap((line, row) => {
    const at = line.findIndex((value) => typeof value === 'string' && judged.has(value));
    if (at < 0 || line[at] === fine) return [];
    const note = line.slice(at + 1).find((value) => typeof value === 'string' && value !== '');
    return [{ row, sentence: `${line[0]}: ${line[at]}.${note === undefined ? '' : ` ${ended(String(note))}`}` }];
  });
}

function missingPrices(lines: Lines): readonly Verdict[] {
  return lines.flatMap((line, row) => {
    if (!line.includes('no price')) return [];
    return [{ row, sentence: `${line[0]}: no price, so the total is without it.` }];
  });
}

function ended(sentence: string): string {
  const plain = sentence.trim();
  const capital = `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`;
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
}
