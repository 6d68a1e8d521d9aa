import { columnName } from '../../hosts/address';
import type { PrintSetup } from '../workbook-model';
import { type ReadyProfile, SheetDraft } from './sheet-draft';

/** Shown on every sheet while numbers that were typed under one profile are read under another. */
export const unitsCaution =
  '=IF(SiltUnits=SiltTypedIn,"","Numbers here were typed in "&SiltTypedIn&" but are read as "&SiltUnits&". Trust no result until they are converted (task pane, Units) or typed anew.")';

/** A label that carries the unit of a kind under the workbook's profile: `Diameter (mm)`. */
export function withUnit(label: string, kind: string): string {
  return `="${label} ("&SILT.UNIT.LABEL(SiltUnits,"${kind}")&")"`;
}

/** The unit alone. */
export function unitOf(kind: string): string {
  return `=SILT.UNIT.LABEL(SiltUnits,"${kind}")`;
}

export interface Frame {
  readonly name: string;
  readonly title: string;
  /** What is done here, in a sentence or two. */
  readonly step: string;
  /** What can hurt in this step. */
  readonly caution?: string;
  /** Widths of the columns, in characters. */
  readonly widths: readonly number[];
}

/** What a window of 1280 pixels shows of a sheet beside the task pane, so that a caution is read without scrolling. */
const headPixels = 870;

/** How many of the columns the head runs over, and their width together in characters. */
function headColumns(widths: readonly number[]): { readonly count: number; readonly across: number } {
  let [across, pixels] = [0, 0];
  for (const [index, width] of widths.entries()) {
    pixels += 7 * width + 5;
    if (index > 0 && pixels > headPixels) return { count: index, across };
    across += width;
  }
  return { count: widths.length, across };
}

/** Lines that a text needs when it is wrapped over columns of so many characters. */
function lines(text: string, characters: number): number {
  return Math.ceil(text.length / (characters * 1.05));
}

/**
 * A sheet with its head: the title, the caution about units, then the step with what can hurt in it. Rows from 4 on
 * are the sheet's own; row 4 holds headings.
 */
export function framed({ name, title, step, caution, widths }: Frame): SheetDraft {
  const { count, across } = headColumns(widths);
  const last = columnName(count - 1);
  const draft = new SheetDraft(name);
  draft.wide(`A1:${last}1`, title, 'title', 26);
  draft.wide(`A2:${last}2`, unitsCaution, 'alarm', 18);
  const text = caution === undefined ? step : `${step} CAUTION: ${caution}`;
  draft.wide(`A3:${last}3`, text, caution === undefined ? 'step' : 'caution', 4 + 15 * lines(text, across));
  return draft;
}

export function columnWidths(widths: readonly number[]): Readonly<Record<number, number>> {
  return Object.fromEntries(widths.map((width, column) => [column, width]));
}

/** Letter paper under US, A4 under metric, fitted to one page across, headings on each page. */
export function print(profile: ReadyProfile, area: string, more: PrintSetup = {}): PrintSetup {
  return {
    paper: profile === 'US' ? 1 : 9,
    landscape: true,
    fitToWidth: 1,
    fitToHeight: 0,
    area,
    titleRows: '1:4',
    footer: '&L&F: &A&RPage &P of &N',
    ...more,
  };
}
