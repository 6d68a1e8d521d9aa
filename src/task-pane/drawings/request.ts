import type { TrainStage } from '../../drawing/train-drawing';
import type { CellScalar } from '../../hosts/workbook-model';

/** Rows of cells as they stand in a sheet, without errors. */
export type Cells = readonly (readonly CellScalar[])[];

interface Asked {
  /** The profile that bare numbers are in. */
  readonly units: string;
}

/** Pattern rows, ten columns each, with their names and their place in the sheet. */
export interface PatternsRequest extends Asked {
  readonly what: 'patterns';
  readonly rows: Cells;
  readonly names: readonly string[];
}

/** Rows as `SILT.CUT.PLAN` gives them, the pattern rows that it laid and the size of the sheets. */
export interface CutPlanRequest extends Asked {
  readonly what: 'cut plan';
  readonly plan: Cells;
  readonly patterns: Cells;
  readonly sheetLength: CellScalar;
  readonly sheetWidth: CellScalar;
}

export const drumFields = [
  'drumDiameter',
  'depth',
  'coneHeight',
  'coneTop',
  'coneBottom',
  'rise',
  'stand',
  'drumHeight',
  'container',
  'drainDrop',
] as const;
export type DrumField = (typeof drumFields)[number];

/** A settling drum in section; the drawing has defaults for what is left out. */
export interface DrumRequest extends Asked {
  readonly what: 'drum';
  readonly figures: Readonly<Partial<Record<DrumField, CellScalar>>>;
  readonly name?: string;
  readonly isSmall?: boolean;
}

/** A scenario's train, with every figure already as text. */
export interface TrainRequest extends Asked {
  readonly what: 'train';
  readonly title: string;
  readonly stages: readonly TrainStage[];
  readonly returning?: string;
  readonly notes: readonly string[];
}

/** Rows as `SILT.PLAN.RANGE` or `SILT.PLAN.DRIVERS` gives them. */
export interface HowSureRequest extends Asked {
  readonly what: 'how sure';
  readonly title: string;
  readonly rows: Cells;
}

/** Everything that a drawing is made from, as plain data that can be passed to another page. */
export type DrawingRequest = PatternsRequest | CutPlanRequest | DrumRequest | TrainRequest | HowSureRequest;
