import type { CutRow, PlacedPattern } from '../../formulas/cut/cut-plan';
import type { Profile } from '../../units/profile';
import type { CellValue, TableRow } from '../argument';
import { patternColumns, planColumns } from '../pattern-columns';
import { isBlank } from './blank';
import { readTable } from './read-table';

type Cells = readonly (readonly CellValue[])[];

/** Pattern rows as CONE.PATTERN spills them, read into SI; `name` begins every message. */
export function readPatterns(name: string, cells: Cells, profile: Profile): readonly PlacedPattern[] {
  return readTable(name, patternColumns, cells, profile) as readonly TableRow<typeof patternColumns>[];
}

/** Plan rows as CUT.PLAN spills them, read into SI, without the rows that say why a pattern was not placed. */
export function readPlan(name: string, cells: Cells, profile: Profile): readonly CutRow[] {
  const laid = cells.filter(([pattern, piece]) => typeof pattern !== 'number' || !isBlank(piece));
  return readTable(name, planColumns, laid, profile) as readonly TableRow<typeof planColumns>[];
}
