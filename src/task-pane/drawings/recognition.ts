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
  /** If one of several is drawn: their titles, and a function that recognizes another. */
  readonly others?: Others;
  /** Of a cut plan: what a longer search needs. */
  readonly cutSearch?: CutSearch;
}

/** A cell that lays out a cut plan, for a longer search of the same plan. */
export interface CutSearch {
  readonly place: { readonly sheet: string; readonly row: number; readonly column: number };
  readonly formula: string;
  /** The cell's formula with another effort; undefined where its effort is no plain number. */
  readonly formulaWith: (effort: number) => string | undefined;
  /** Units, patterns, sheet length, sheet width and gap as the cell has them. */
  readonly arguments: readonly unknown[];
  readonly effort: number;
}

export interface Others {
  readonly titles: readonly string[];
  readonly chosen: number;
  readonly recognizeOther: (index: number) => Recognized;
}

export type DrumFigures = Readonly<Partial<Record<DrumField, CellScalar>>>;

/** The result: a drawing, figures of a drum for its form, or a sentence that says what to do. */
export type Recognition =
  | { readonly recognized: Recognized }
  | { readonly drum: DrumFigures; readonly units: string | undefined; readonly from: string }
  | { readonly sentence: string };

/** `host` reads the workbook that the selection is in. */
export interface SelectionContext extends Surroundings {
  /** The workbook's profile; undefined where it has none. */
  readonly units: string | undefined;
}
