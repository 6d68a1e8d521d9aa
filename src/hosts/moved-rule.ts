import { type CellRange, parseRange, rangeName } from './address';
import { type CellMove, common, isWithin, partsOf, shifted } from './moved-cells';
import { type FormulaCells, type MovesOf, movedFormula } from './moved-formula';
import { isLineMove, type LineMove, type Move, movedRange } from './moved-lines';

/** A rule for cells, such as a list to choose from or a color: their blocks with spaces between, and formulas for the first cell. */
export interface CellRule {
  readonly range: string;
  readonly formulas: readonly string[];
}

type Blocks = readonly [CellRange, ...CellRange[]];

interface PlacedRule {
  readonly blocks: Blocks;
  readonly formulas: readonly string[];
}

const hasSome = (blocks: readonly CellRange[]): blocks is Blocks => blocks.length > 0;

/**
 * A rule where its cells are now: none where none of them is left, and several where cells that were cut and pasted read
 * others than those that stayed.
 */
export function movedRules({ range, formulas }: CellRule, sheet: string, movesOf: MovesOf): readonly CellRule[] {
  const blocks = range.trim().split(/\s+/).map(parseRange);
  if (blocks.includes(undefined) || !hasSome(blocks as readonly CellRange[])) return [{ range, formulas }];
  let rules: readonly PlacedRule[] = [{ blocks: blocks as unknown as Blocks, formulas }];
  for (const move of movesOf(sheet)) {
    rules = rules.flatMap((rule) =>
      isLineMove(move) ? movedByLines(rule, sheet, move) : movedByCells(rule, sheet, move),
    );
  }
  const others: MovesOf = (name) => (name.toLowerCase() === sheet.toLowerCase() ? [] : movesOf(name));
  return rules.map((rule) => {
    const [first] = rule.blocks;
    return {
      range: rule.blocks.map(rangeName).join(' '),
      formulas: withFormulas(rule, { sheet, part: first, now: first }, others),
    };
  });
}

/** The formulas of a rule for a part of its cells. */
function withFormulas(
  { blocks, formulas }: PlacedRule,
  cells: Pick<FormulaCells, 'sheet' | 'part' | 'now'>,
  movesOf: MovesOf,
): readonly string[] {
  const all = { ...cells, writtenFor: blocks[0], before: around(blocks) };
  return formulas.map((formula) => movedFormula(formula, all, movesOf));
}

/** Only what a rule reads on its own sheet moves. */
const ownOnly =
  (sheet: string, moves: readonly Move[]): MovesOf =>
  (name) =>
    name.toLowerCase() === sheet.toLowerCase() ? moves : [];

/** Some cells of a rule before and after a move. */
interface Step {
  readonly part: CellRange;
  readonly now: CellRange;
}

/** A rule for some of its cells after a move. */
function placed(rule: PlacedRule, steps: readonly Step[], sheet: string, move: Move): readonly PlacedRule[] {
  const [first] = steps;
  const blocks = steps.map(({ now }) => now);
  if (first === undefined || !hasSome(blocks)) return [];
  // From the first cell on, as far as the blocks reach together.
  const { rows, columns } = around(steps.map(({ part }) => part) as unknown as Blocks);
  const size = { rows, columns };
  const cells = { sheet, part: { ...first.part, ...size }, now: { ...first.now, ...size } };
  return [{ blocks, formulas: withFormulas(rule, cells, ownOnly(sheet, [move])) }];
}

function movedByLines(rule: PlacedRule, sheet: string, move: LineMove): readonly PlacedRule[] {
  const place = (part: CellRange): readonly Step[] => {
    const now = movedRange(part, [move]);
    return now === undefined ? [] : [{ part, now }];
  };
  const stay = placed(rule, rule.blocks.flatMap(place), sheet, move);
  // Lines that are moved out of a block keep the rule.
  const go = rule.blocks.flatMap((block) => tornOff(block, move)).flatMap(place);
  if (go.length === 0) return stay;
  return together(stay, placed(rule, go, sheet, move), sheet).flatMap((one) => cleared(one, sheet));
}

/** The lines of a block that a move takes out of it. */
function tornOff(block: CellRange, move: LineMove): readonly CellRange[] {
  if (move.to === undefined) return [];
  const lines =
    move.across === 'row'
      ? { ...block, row: move.first, rows: move.count }
      : { ...block, column: move.first, columns: move.count };
  const part = common(block, lines);
  const [now, rest] = [part, block].map((range) => range && movedRange(range, [move]));
  return part && now && rest && !isWithin(now, rest) ? [part] : [];
}

function movedByCells(rule: PlacedRule, sheet: string, move: CellMove): readonly PlacedRule[] {
  const parts = partsOf(rule.blocks, move);
  const isTouched = rule.blocks.some((block) => !parts.stay.includes(block));
  const stay = parts.stay.map((part) => ({ part, now: part }));
  const go = parts.go.map((part) => ({ part, now: shifted(part, move) }));
  const rules = together(placed(rule, stay, sheet, move), placed(rule, go, sheet, move), sheet);
  return isTouched ? rules.flatMap((one) => cleared(one, sheet)) : rules;
}

/** Where one cell is after a move; undefined where it is gone. */
export function movedCell(cell: CellRange, move: Move): CellRange | undefined {
  if (isLineMove(move)) return movedRange(cell, [move]);
  const { stay, go } = partsOf([cell], move);
  return stay[0] ?? (go[0] && shifted(go[0], move));
}

/** The formulas of a rule as they would be written for the first cell of another block. */
const writtenFor = (rule: PlacedRule, block: CellRange, sheet: string): readonly string[] =>
  withFormulas(rule, { sheet, part: block, now: block }, () => []);

const isSame = (one: readonly string[], other: readonly string[]): boolean =>
  one.every((formula, index) => formula === other[index]);

/** One rule for the cells that stayed and those that moved, if it says the same for both. */
function together([stay]: readonly PlacedRule[], [go]: readonly PlacedRule[], sheet: string): readonly PlacedRule[] {
  if (stay === undefined || go === undefined) return [stay ?? go].flatMap((rule) => rule ?? []);
  if (!isSame(writtenFor(stay, go.blocks[0], sheet), go.formulas)) return [stay, go];
  const one = { ...stay, blocks: [...stay.blocks, ...go.blocks] as const };
  return isClear(one, sheet) ? [one] : [stay, go];
}

/**
 * Whether the first cell that a formula is written for is the first in every reading: that of the first block, and that
 * of all blocks together.
 */
function isClear(rule: PlacedRule, sheet: string): boolean {
  const { row, column } = around(rule.blocks);
  const [first] = rule.blocks;
  return (
    (first.row === row && first.column === column) ||
    rule.blocks.every((block) => isSame(writtenFor(rule, block, sheet), rule.formulas))
  );
}

/** A rule, or one for each of its blocks where it could be misread. */
const cleared = (rule: PlacedRule, sheet: string): readonly PlacedRule[] =>
  isClear(rule, sheet)
    ? [rule]
    : rule.blocks.map((block) => ({ blocks: [block], formulas: writtenFor(rule, block, sheet) }));

/** The smallest range that holds all others. */
function around(blocks: readonly CellRange[]): CellRange {
  const row = Math.min(...blocks.map((block) => block.row));
  const column = Math.min(...blocks.map((block) => block.column));
  return {
    row,
    column,
    rows: Math.max(...blocks.map((block) => block.row + block.rows)) - row,
    columns: Math.max(...blocks.map((block) => block.column + block.columns)) - column,
  };
}
