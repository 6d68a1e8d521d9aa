import { capitalHeight, wrapped } from '../../drawing/text-width';
import { columnName } from '../../hosts/address';
import type { PrintSetup } from '../../hosts/workbook-model';
import { type ReadyProfile, SheetDraft } from './sheet-draft';

/** Shown on every sheet while numbers that were typed in one profile are read in another. */
export const unitsCaution =
  '=IF(SiltUnits=SiltTypedIn,"","The numbers here were typed in "&SiltTypedIn&" but are now read as "&SiltUnits&". Do not use any result until you convert them (task pane, Units) or type them again.")';

/** A label with the unit of its kind in the workbook's profile: `Diameter (mm)`. */
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
  /** What to do on this sheet, in one or two sentences. */
  readonly step: string;
  /** What can hurt people or fish in this step. */
  readonly caution?: string;
  /** Widths of the columns, in characters. */
  readonly widths: readonly number[];
}

/** The width of sheet that a 1280-pixel window shows beside the task pane: a caution must fit in it without scrolling. */
const headPixels = 870;

/** How many columns the head spans, and their total width in characters. */
function headColumns(widths: readonly number[]): { readonly count: number; readonly across: number } {
  let [across, pixels] = [0, 0];
  for (const [index, width] of widths.entries()) {
    pixels += 7 * width + 5;
    if (index > 0 && pixels > headPixels) return { count: index, across };
    across += width;
  }
  return { count: widths.length, across };
}

/** Width of a digit, in which column widths are counted, as a share of the type size. */
const digit = 0.556;

/**
 * The height of a row for texts that wrap in its cells, each with its width: what a function spills does not make a row
 * taller. Where the sheet’s face is not installed, the one in its place sets a sixth wider.
 */
export function wrappedHeight(texts: readonly (readonly [text: string, characters: number])[]): number {
  const counts = texts.map(([text, characters]) => wrapped(text, capitalHeight, (characters * digit) / 1.165).length);
  return 2 + 15 * Math.max(1, ...counts);
}

/**
 * A sheet with its head: the title, the caution about units, then the step with its caution. The sheet's own rows
 * begin at row 4, which holds headings.
 */
export function framed({ name, title, step, caution, widths }: Frame): SheetDraft {
  const { count, across } = headColumns(widths);
  const last = columnName(count - 1);
  const draft = new SheetDraft(name);
  draft.wide(`A1:${last}1`, title, 'title', 26);
  draft.wide(`A2:${last}2`, unitsCaution, 'alarm', 18);
  const text = caution === undefined ? step : `${step} CAUTION: ${caution}`;
  draft.wide(`A3:${last}3`, text, caution === undefined ? 'step' : 'caution', wrappedHeight([[text, across]]));
  return draft;
}

export function columnWidths(widths: readonly number[]): Readonly<Record<number, number>> {
  return Object.fromEntries(widths.map((width, column) => [column, width]));
}

/** Letter paper for US, A4 for metric; fitted to the width of one page, with headings on each page. */
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
