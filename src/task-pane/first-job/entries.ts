import { namingErrors } from '../../catalogue/reading/argument-error';
import { figureReader } from '../../catalogue/reading/read-figure';
import type { CellScalar } from '../../hosts/workbook-model';
import { dateOfSerial } from '../../units/date';
import { numberAtHead } from '../../units/number-text';
import type { Profile } from '../../units/profile';
import { tidyText } from '../../units/text';
import { isAsTyped } from '../shown-figure';
import type { Field } from './field';
import { cellOf, type FieldId, fields, heightWays, type Ways, widthWays } from './fields';
import type { JobCells } from './job-cells';

/** What a person typed as its cell holds it: a number where it is only a number, fractions included, else the text. */
function asCell({ kind }: Field, given: string): CellScalar {
  const typed = given.trim();
  if (kind === undefined) return typed.replace(/^[=\s]+/, '');
  const text = tidyText(typed);
  const head = numberAtHead(text);
  const isNumber = head !== undefined && 'value' in head && head.rest === '' && Number.isFinite(head.value);
  // Of 22 1/3, which has no end as a number, the cell holds what was typed; every function reads it.
  if (isNumber && text.includes('/') && !isAsTyped(head.value)) return typed;
  // A date is text, so that no program reads it in another order of day and month.
  return isNumber && kind !== 'date' ? head.value : typed;
}

/** The content of a field's cell for what was typed. Throws ArgumentError where it is not allowed there. */
export function contentOf(id: FieldId, text: string, row: number, profile: Profile): CellScalar {
  const field = fields[id];
  const value = asCell(field, text);
  if (value === '') return '';
  const { kind, label, bounds, reader } = field;
  if (reader !== undefined) namingErrors(label, () => reader(String(value), profile));
  if (kind !== undefined) figureReader(label, { kind, meaning: label, ...bounds })(value, profile);
  if (field.worked === undefined) return value;
  return field.worked.formula(typeof value === 'string' ? `"${value.replaceAll('"', '""')}"` : String(value), row);
}

/** What a person typed into a field, from its cell; blank where the cell was filled in another way. */
export function typedIn(cells: JobCells, id: FieldId, row: number): string {
  const { sheet, worked, kind } = fields[id];
  const content = cells.content(sheet, cellOf(id, row));
  const entry = worked?.entry.exec(content)?.[1];
  if (worked !== undefined) return entry === undefined ? '' : entry.replace(/^"|"$/g, '').replaceAll('""', '"');
  // A formula of the person's own in a cell is shown as what it gives.
  if (!content.startsWith('=')) return kind === 'date' && Number(content) > 0 ? dateOfSerial(Number(content)) : content;
  const value = cells.value(sheet, cellOf(id, row));
  return isWorkedElsewhere(content) || typeof value === 'object' ? '' : String(value);
}

function isWorkedElsewhere(content: string): boolean {
  return Object.values(fields).some(({ worked }) => worked?.entry.test(content));
}

/** The way of a measurement that stands in the cells; the first where nothing does. */
export function wayInUse(cells: JobCells, { ways }: Ways, row: number): number {
  const used = ways.findIndex(({ asks: [first] }) => first !== undefined && typedIn(cells, first, row) !== '');
  return Math.max(0, used);
}

/** The fields whose cells must be empty once one of another way is filled: the sheet prefers a diameter to a girth. */
export function replacedBy(id: FieldId): readonly FieldId[] {
  const others = [widthWays, heightWays].flatMap(({ ways }) => {
    const mine = ways.find(({ asks }) => asks.includes(id));
    return mine === undefined ? [] : ways.filter((way) => way !== mine).flatMap(({ asks }) => asks);
  });
  return others.filter((other) => fields[other].cell !== fields[id].cell);
}
