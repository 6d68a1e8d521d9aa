import type { CellScalar } from '../../hosts/workbook-model';
import { dateOfSerial } from '../../units/date';
import type { Kind } from '../../units/kinds';
import { angleText, figureText, lengthText } from './figure-text';
import type { Job } from './read-job';

export interface Column {
  readonly heading: string;
  /** What its numbers measure; left out for words and plain numbers. */
  readonly kind?: Kind;
  /** Its share of the width on paper. */
  readonly share: number;
}

/** A table of the packet: paper shows its figures as words with units, a workbook holds them as numbers. */
export interface PaperTable {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly CellScalar[])[];
  /** Whether paper shows a box to tick before each row. */
  readonly ticks?: boolean;
  /** Whether the last row is a total. */
  readonly footed?: boolean;
}

/** A figure as paper shows it. */
export function cellText(job: Job, kind: Kind | undefined, value: CellScalar): string {
  if (typeof value !== 'number') return String(value);
  if (kind === 'dimension') return lengthText(job, value);
  if (kind === 'angle') return angleText(job, value);
  if (kind === 'date') return dateOfSerial(value);
  if (kind === 'money') return value.toFixed(2);
  return figureText(job, kind ?? 'number', value);
}

/** The table as paper shows it, headings first. */
export function textRows(job: Job, { columns, rows }: PaperTable): readonly (readonly string[])[] {
  return [
    columns.map(({ heading }) => heading),
    ...rows.map((row) => columns.map(({ kind }, i) => cellText(job, kind, row[i] ?? ''))),
  ];
}
