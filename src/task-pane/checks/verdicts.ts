import type { CellResult } from '../../hosts/workbook-model';
import { capitalized } from '../../units/text';

/** 4: can hurt fish or people; 3: no result; 2: a caution; 1: not known, or worth watching. */
export type Rank = 1 | 2 | 3 | 4;

export interface Verdict {
  /** The row of the result with the verdict, and its column if it is not the first. */
  readonly row: number;
  readonly column?: number;
  readonly sentence: string;
  readonly rank: Rank;
  /** The name of the reading in the result. */
  readonly reading?: string;
  /** True if the sentence follows the typed value: `too high`. */
  readonly ofValue?: true;
}

type Lines = readonly (readonly CellResult[])[];

/** The cautions in the results of each function. */
export function verdicts(names: readonly string[], lines: Lines): readonly Verdict[] {
  if (names.includes('WATER.CHECK')) return waterVerdicts(lines);
  if (names.some((name) => name.endsWith('.CHECK'))) return sentences(lines);
  if (names.includes('PLAN.DRIVERS')) return driverVerdicts(lines);
  return names.includes('COST.LINES') ? missingPrices(lines) : [];
}

/** Sentences in one column; a sentence that nothing was found is not a caution. */
function sentences(lines: Lines): readonly Verdict[] {
  return lines.flatMap(([value], row) => {
    if (typeof value !== 'string' || value.trim() === '' || /^nothing found[.:]/i.test(value.trim())) return [];
    return [{ row, sentence: asSentence(value), rank: 2 }];
  });
}

const fine = 'within limits';
const judged = new Set([fine, 'survives, grows poorly', 'too low', 'too high', 'not measured', 'cannot judge']);

/** One reading per row, its verdict in one column and what to do in the next. */
function waterVerdicts(lines: Lines): readonly Verdict[] {
  return lines.flatMap((line, row) => {
    const at = line.findIndex((value) => typeof value === 'string' && judged.has(value));
    if (at < 0 || line[at] === fine) return [];
    const note = line.slice(at + 1).find((value) => typeof value === 'string' && value !== '');
    const rank = String(line[at]).startsWith('too ') ? 4 : 1;
    const sentence = `${line[0]}: ${line[at]}.${note === undefined ? '' : ` ${asSentence(String(note))}`}`;
    return [{ row, sentence, rank, reading: String(line[0]) }];
  });
}

/** How many figures are named. */
export const mostWorth = 3;

/** The rows of PLAN.DRIVERS whose figure explains a part of the result that can be seen, those that explain most first. */
export function explaining(
  lines: Lines,
): readonly { readonly row: number; readonly name: string; readonly share: number }[] {
  return lines.flatMap((line, row) => {
    const share = line.at(-1);
    const isFigure = typeof share === 'number' && share >= 0.005 && line[0] !== 'together';
    return isFigure ? [{ row, name: String(line[0]), share }] : [];
  });
}

export function driverSentence(name: string, share: number, result: string): string {
  return `Worth measuring on your own farm: ${name}. Alone it explains ${Math.round(100 * share)} % of the uncertainty of ${result}.`;
}

function driverVerdicts(lines: Lines): readonly Verdict[] {
  return explaining(lines)
    .slice(0, mostWorth)
    .map(({ row, name, share }) => ({ row, sentence: driverSentence(name, share, 'the result'), rank: 1 }));
}

function missingPrices(lines: Lines): readonly Verdict[] {
  return lines.flatMap((line, row) => {
    if (!line.includes('no price')) return [];
    return [{ row, sentence: `${line[0]}: no price, so the total leaves it out.`, rank: 2 }];
  });
}

/** Whether a formula of the sheet itself writes verdicts, which `typedVerdicts` reads. */
export function givesVerdicts(formula: string): boolean {
  return /too (?:much|high|low|little)\b|"CAUTION: /i.test(formula);
}

/** Verdicts that formulas of the sheet itself write: `too much un-ionized`, `watch`, `CAUTION: …`. */
export function typedVerdicts(lines: Lines): readonly Verdict[] {
  return lines.flatMap((line, row) =>
    line.flatMap((value, column): readonly Verdict[] => {
      if (typeof value !== 'string') return [];
      const caution = /^CAUTION: (.*)/.exec(value)?.[1];
      if (caution !== undefined) return [{ row, column, sentence: asSentence(caution), rank: 2, ofValue: true }];
      const rank = /\btoo (?:much|high|low|little)\b/i.test(value) ? 4 : /^watch\b/i.test(value) ? 1 : undefined;
      if (rank === undefined) return [];
      return [{ row, column, sentence: rank === 4 ? asSentence(value) : 'Near the limit.', rank, ofValue: true }];
    }),
  );
}

/** Text as a sentence: with a capital, unless it continues another, and a full stop. */
export function asSentence(sentence: string, isWhole = true): string {
  const plain = sentence.trim();
  const begun = isWhole ? capitalized(plain) : plain;
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}
