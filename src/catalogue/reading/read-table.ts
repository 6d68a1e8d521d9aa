import type { Profile } from '../../units/profile';
import { readQuantity } from '../../units/quantity';
import { wordText } from '../../units/text';
import type { CellFault, CellValue, Column, Columns } from '../argument';
import { ArgumentError, asArgumentError, withPlace } from './argument-error';
import { isBlank } from './blank';
import { allowed } from './bounds';
import { inWords } from './headings';
import { figureReader, missing } from './read-figure';

/**
 * Reads a table into rows of named values. All-blank rows and one heading row are skipped, columns to the right of the
 * known ones are ignored. Messages name a column by its heading. `row` counts from the first row below the headings, with
 * blank rows, as a user counts them. If faulty rows are kept, a row that holds an error or cannot be read has its `fault`
 * instead.
 */
export function readTable(
  name: string,
  columns: Columns,
  lines: readonly (readonly (CellValue | CellFault)[])[],
  profile: Profile,
  faulty: 'refused' | 'kept' = 'refused',
): readonly Readonly<Record<string, unknown>>[] {
  const keys = Object.keys(columns);
  const specs = Object.values(columns);
  const needed = Math.max(0, ...specs.map((spec, at) => ('blank' in spec && spec.blank ? 0 : at + 1)));
  const names = keys.map(inWords);
  const list = names.join(', ');
  const widest = lines[0]?.length ?? 0;
  if (widest < needed) {
    const given =
      widest === 1 && lines.length === 1
        ? wordText(String(lines[0]?.[0]))
        : `${widest} column${widest === 1 ? '' : 's'}`;
    throw new ArgumentError(`${name}: ${given} is not allowed; give rows of ${list}`);
  }
  const first = lines.findIndex((line) => !line.every(isBlank));
  const top = lines[first] ?? [];
  const hasHeadings = isHeading(top, specs, profile);
  const readers = specs.map((spec, j) => {
    const typed = hasHeadings && !isBlank(top[j]) ? wordText(String(top[j])) : undefined;
    return columnReader(typed ?? names[j] ?? '', spec);
  });
  const rows: Record<string, unknown>[] = [];
  for (const [i, line] of lines.slice(hasHeadings ? first + 1 : 0).entries()) {
    const cells = line.slice(0, keys.length);
    if (cells.every(isBlank)) continue;
    const row: Record<string, unknown> = { row: i + 1 };
    try {
      withPlace(`${name}: row ${i + 1}, `, () => {
        for (const [j, key] of keys.entries()) row[key] = readers[j]?.(figureOf(cells[j] ?? ''), profile);
      });
      rows.push(row);
    } catch (error) {
      if (faulty === 'refused' || !isFault(error)) throw error;
      rows.push({ row: i + 1, fault: error });
    }
  }
  if (rows.length === 0) throw new ArgumentError(`${name}: no rows were given; give rows of ${list}`);
  return rows;
}

function figureOf(value: CellValue | CellFault): CellValue {
  if (typeof value === 'object') throw value;
  return value;
}

function isFault(error: unknown): error is CellFault {
  return error instanceof Error && 'code' in error && typeof error.code === 'string';
}

/** The reader of a column, made once per table; its messages begin with the column's name. */
function columnReader(name: string, spec: Column): (value: CellValue, profile: Profile) => unknown {
  const mayBeBlank = 'blank' in spec && spec.blank;
  const accepts = (profile: Profile) =>
    'kind' in spec ? allowed(spec, profile) : 'reader' in spec ? spec.accepts : 'text';
  const read = 'kind' in spec ? figureReader(name, spec) : 'reader' in spec ? ownReader(name, spec.reader) : plainText;
  return (value, profile) => {
    if (!isBlank(value)) return read(value, profile);
    if (mayBeBlank) return undefined;
    throw missing(name, accepts(profile));
  };
}

function ownReader(name: string, reader: (value: CellValue, profile: Profile) => unknown): typeof reader {
  return (value, profile) => {
    try {
      return reader(value, profile);
    } catch (error) {
      throw asArgumentError(name, error);
    }
  };
}

function plainText(value: CellValue): string {
  return String(value).trim();
}

/** A heading row has no number, and has text that is no figure where the first figure belongs. */
function isHeading(line: readonly (CellValue | CellFault)[], specs: readonly Column[], profile: Profile): boolean {
  if (line.some((value) => typeof value === 'number' || typeof value === 'object')) return false;
  const place = specs.findIndex((spec) => !('text' in spec));
  const spec = specs[place];
  const value = line[place];
  if (spec === undefined || value === undefined || typeof value === 'object' || isBlank(value)) return false;
  try {
    if ('kind' in spec) readQuantity(profile, spec.kind, value);
    else if ('reader' in spec) spec.reader(value, profile);
    return false;
  } catch {
    return !/\d/.test(String(value)) || /\(/.test(String(value));
  }
}
