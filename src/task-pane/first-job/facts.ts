import type { CellResult } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import type { Job } from './job';
import type { JobCells } from './job-cells';
import type { Given, Step } from './steps';

/** A figure that the guide shows, in words. */
export interface Fact {
  readonly label: string;
  readonly text: string;
  /** The function's own words where the cell has no figure. */
  readonly fault?: string;
}

/** Where the drum stands among those that have a name: the row of its pattern, counted from 1. */
export function placeRow(cells: JobCells, job: Job): number {
  const above = cells.rows('drums', `A5:A${job.row}`).slice(0, job.row - 5);
  return 5 + above.filter(([name]) => name !== '').length;
}

export function addressIn(cell: string, cells: JobCells, job: Job): string {
  return cell.replace('#', String(job.row)).replace('@', String(placeRow(cells, job)));
}

/** What a step gives, read from its cells. */
export function factsOf({ gives }: Step, cells: JobCells, job: Job, profile: Profile): readonly Fact[] {
  return gives
    .filter(({ sheet }) => cells.has(sheet))
    .map((given) => {
      const value = cells.value(given.sheet, addressIn(given.cell, cells, job));
      const text = figure(value, given.kind, profile);
      return typeof value === 'object'
        ? { label: given.label, text, fault: value.error.message }
        : { label: given.label, text };
    });
}

/** A cell's figure as the sheet shows it, with its unit; blank where there is none. */
export function figure(value: CellResult, kind: Given['kind'], profile: Profile): string {
  if (typeof value === 'object') return 'no figure yet';
  if (typeof value !== 'number') return String(value);
  if (kind === 'share') return `${rounded(100 * value)} %`;
  // Nothing that is bought costs nothing: the list has no figures yet.
  if (kind === 'money') return value === 0 ? '' : value.toFixed(2);
  const symbol = kind === undefined ? '' : profile.units[kind].symbol;
  return symbol === 'degrees' ? `${rounded(value)}°` : `${rounded(value)} ${symbol}`.trimEnd();
}

/** At most two decimals, as the sheets show them. */
export function rounded(value: number): string {
  return String(Number(value.toFixed(2)));
}
