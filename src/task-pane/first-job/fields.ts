import type { Field } from './field';
import { measureFields } from './measure-fields';
import { sheetFields } from './sheet-fields';

export type FieldId = keyof typeof measureFields | keyof typeof sheetFields;
export const fields: Readonly<Record<FieldId, Field>> = { ...measureFields, ...sheetFields };

/** Two or three ways to give the same figure; the first that stands in the cells is the one in use. */
export interface Ways {
  readonly question: string;
  readonly ways: readonly { readonly label: string; readonly asks: readonly FieldId[] }[];
}

export const widthWays: Ways = {
  question: 'How do you measure its width?',
  ways: [
    { label: 'across the inside', asks: ['diameter'] },
    { label: 'with a tape around the outside', asks: ['girth', 'wall'] },
  ],
};

export const heightWays: Ways = {
  question: 'What do you know of the cone?',
  ways: [
    { label: 'its angle', asks: ['angle'] },
    { label: 'its height', asks: ['height'] },
    { label: 'its slant', asks: ['slant'] },
  ],
};

/** The address of a field's cell for a drum in a row, counted from 1. */
export function cellOf(id: FieldId, row: number): string {
  return fields[id].cell.replace('#', String(row));
}
