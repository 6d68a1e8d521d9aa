import type { SheetHost } from '../../hosts/sheet-host';
import type { CellScalar } from '../../hosts/workbook-model';
import type { Surroundings } from '../follow/evaluate';
import type { DrawingRequest, DrumField } from './request';

/** What the selection can be drawn as. */
export interface Recognized {
  readonly request: DrawingRequest;
  /** The cells it comes from: `Patterns!B5:K5`. */
  readonly from: string;
  /** What is left out of the drawing and why. */
  readonly note?: string;
  /** Where there are several of which one is drawn: what they are called, and how another is seen. */
  readonly others?: Others;
}

export interface Others {
  readonly titles: readonly string[];
  readonly chosen: number;
  readonly recognizeOther: (index: number) => Recognized;
}

export type DrumFigures = Readonly<Partial<Record<DrumField, CellScalar>>>;

/** What was looked at: a drawing; figures of a drum for its form; else a sentence that says what to do. */
export type Recognition =
  | { readonly recognized: Recognized }
  | { readonly drum: DrumFigures; readonly units: string | undefined; readonly from: string }
  | { readonly sentence: string };

export interface SelectionContext extends Surroundings {
  readonly host: SheetHost;
  /** The workbook's profile; undefined where it has none. */
  readonly units: string | undefined;
}
