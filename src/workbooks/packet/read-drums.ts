/** Reads the drums of a packet from the sheets that have a row for each. */
import { readPatterns } from '../../catalogue/reading/read-patterns';
import type { PlacedPattern } from '../../formulas/cut/cut-plan';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { type NamedTable, PacketMistake, type SheetCells, tableIn, valueOrThrow } from './packet-cells';

/** One drum of the workbook; figures are the cell values, in the workbook's units. */
export interface JobDrum {
  readonly name: string;
  readonly held: string;
  /** Its pattern row, counted from 1. */
  readonly row: number;
  readonly pattern: PlacedPattern;
  readonly patternCells: readonly CellScalar[];
  readonly diameter: CellScalar;
  readonly drain: CellScalar;
  readonly coneHeight: CellScalar;
  readonly depth: CellScalar;
  readonly baseMix: CellScalar;
  readonly water: CellScalar;
  readonly massTotal: CellScalar;
  readonly massPerLeg: CellScalar;
  /** Blank if the workbook does not have it. */
  readonly massPerLegOfTwo: CellScalar;
}

export interface JobDrums {
  readonly drums: readonly JobDrum[];
  /** The drums that have no pattern, and why. */
  readonly left: readonly string[];
  readonly patterns: readonly PlacedPattern[];
}

type Row = readonly CellResult[];

/** The sheets in the order of the work: drums, patterns, base mix, stand. */
export function drumsOf(
  [drumSheet, patternSheet, mixSheet, standSheet]: readonly [SheetCells, SheetCells, SheetCells, SheetCells],
  profile: Profile,
): JobDrums {
  const list = tableIn(drumSheet, 'Drum', 'Diameter used');
  const made = tableIn(patternSheet, 'Drum', 'wall angle');
  const mixed = tableIn(mixSheet, 'Drum', 'Base mix');
  const weighed = tableIn(standSheet, 'Drum');
  const drums: JobDrum[] = [];
  const left: string[] = [];
  const patterns: PlacedPattern[] = [];
  for (const [i, row] of made.rows.entries()) {
    const name = String(valueOrThrow(row[0], 'Patterns'));
    // Two drums can have one name; the sheets list them in the same order.
    const nth = made.rows.slice(0, i).filter(([other]) => other === row[0]).length;
    const cells = row.slice(1, 11);
    const fault = cells.find((value) => typeof value === 'object');
    const figure = (table: NamedTable, heading: string): CellScalar => {
      const line = table.below.filter(([other]) => other === row[0])[nth] ?? [];
      return valueOrThrow(line[table.column(heading)] ?? '', `${name}, ${heading}`);
    };
    try {
      if (typeof fault === 'object') throw new PacketMistake(fault.error.message || fault.error.code);
      const patternCells = cells.map((value) => valueOrThrow(value, `Patterns, ${name}`));
      const [pattern] = readPatterns('pattern', [patternCells], profile);
      if (pattern === undefined) throw new PacketMistake('its pattern row is blank');
      patterns.push({ ...pattern, row: i + 1 });
      drums.push({
        ...{ name, row: i + 1, pattern, patternCells },
        held: String(figure(list, 'What it held')),
        diameter: figure(list, 'Diameter used'),
        drain: figure(list, 'Drain bore'),
        coneHeight: figure(list, 'Cone height'),
        depth: figure(list, 'Water above cone'),
        baseMix: figure(mixed, 'Base mix'),
        water: figure(mixed, 'Water held'),
        massTotal: figure(weighed, 'total'),
        massPerLeg: figure(weighed, 'load per leg'),
        massPerLegOfTwo: weighed.headings.some((heading) => heading.startsWith(ofTwo)) ? figure(weighed, ofTwo) : '',
      });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      // The name of an argument of the sheet's own formula tells a reader nothing.
      left.push(`${name}: ${why.replace(/^quantity: /, '')}`);
    }
  }
  left.push(...withoutRow(list, made, drumSheet));
  if (drums.length === 0)
    throw new PacketMistake(`no drum has a pattern${left.length > 0 ? ` (${left.join('; ')})` : ''}`);
  return { drums, left, patterns };
}

const ofTwo = 'load per leg if two';

/** Drums that were typed, but that the sheet of patterns does not have: without a name, or below the room for drums. */
function withoutRow(list: NamedTable, made: NamedTable, sheet: SheetCells): readonly string[] {
  const sizes = ['Drain bore', 'Cone height'].map(list.column);
  const top = sheet.rows.length - list.below.length;
  const isDrum = (row: Row): boolean => sizes.every((column) => (row[column] ?? '') !== '');
  // The row below the room has one wide cell for what to check: of a drum typed there, only the name is kept.
  const isNameOnly = ([name, ...others]: Row, before: Row | undefined): boolean =>
    before !== undefined &&
    isDrum(before) &&
    typeof name === 'string' &&
    !/^(check |$)/i.test(name) &&
    others.every((value) => value === '' || value === undefined);
  const places = list.below.flatMap((row, i) =>
    isDrum(row) || isNameOnly(row, list.below[i - 1]) ? [{ name: row[0] ?? '', line: top + i + 1 }] : [],
  );
  return places.flatMap(({ name, line }, i) => {
    if (name === '') return [`row ${line} of the sheet ${sheet.name}: give the drum a name`];
    const before = places.slice(0, i).filter((other) => other.name === name).length;
    if (made.rows.filter(([other]) => other === name).length > before) return [];
    return [
      `${String(name)}: the sheet Patterns has no row for it, because row ${line} of the sheet ${sheet.name} is below the room for drums; insert the ready-made sheets once more for it`,
    ];
  });
}
