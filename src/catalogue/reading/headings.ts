import type { Profile } from '../../units/profile';
import type { Column, Columns } from '../argument';

/** `innerRadius` in words: `inner radius`. */
export function inWords(key: string): string {
  return key.replace(
    /([a-z0-9])([A-Z])/g,
    (_, before: string, capital: string) => `${before} ${capital.toLowerCase()}`,
  );
}

function heading(key: string, column: Column, profile: Profile): string {
  const name = column.heading ?? inWords(key);
  const kind = 'kind' in column ? column.kind : 'unitOf' in column ? column.unitOf : undefined;
  const unit = kind === undefined ? '' : profile.units[kind].symbol;
  return unit ? `${name} (${unit})` : name;
}

/** The heading row of a spilled result, with units. */
export function headings(columns: Columns, profile: Profile): string[] {
  return Object.entries(columns).map(([key, column]) => heading(key, column, profile));
}
