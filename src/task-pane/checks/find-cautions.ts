import { contains } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';
import type { Spot } from '../cell-formula/book';
import { siltCalls } from '../cell-formula/calls';
import { readFormula } from '../cell-formula/read-formula';
import { scopeOf } from '../cell-formula/scope';
import { verdicts } from './verdicts';

/** Something to look at in the workbook, with the cells that say it. */
export interface Finding {
  /** `wrong` where there is no result. */
  readonly tone: 'caution' | 'wrong';
  readonly sentence: string;
  readonly spots: readonly Spot[];
}

/** A cell that shows an error of one of our functions and does not say why. */
export interface Unexplained extends Spot {
  readonly code: string;
  readonly formula: string;
}

/** Why a cell shows an error, as far as that can be found out; undefined where it cannot. */
export type Explain = (cell: Unexplained) => Promise<string | undefined>;

/** Every caution that formulas of ours give in the used cells of a workbook, those that say the same together. */
export async function findCautions(
  blocks: readonly Block[],
  explain: Explain,
  step: (share: number) => Promise<void>,
): Promise<readonly Finding[]> {
  const found = new Map<
    string,
    { readonly tone: Finding['tone']; readonly sentence: string; readonly spots: Spot[] }
  >();
  const add = (tone: Finding['tone'], sentence: string, spot: Spot): void => {
    const known = found.get(sentence);
    if (known === undefined) found.set(sentence, { tone, sentence, spots: [spot] });
    else known.spots.push(spot);
  };
  for (const [index, block] of blocks.entries()) {
    for (const [down, line] of block.formulas.entries()) {
      await step((index + down / block.formulas.length) / blocks.length);
      for (const [across, formula] of line.entries()) {
        if (formula === undefined || !/\bSILT[._]/i.test(formula)) continue;
        await judge(block, { row: block.range.row + down, column: block.range.column + across }, formula, explain, add);
      }
    }
  }
  return [...found.values()].sort((a, b) => Number(b.tone === 'wrong') - Number(a.tone === 'wrong'));
}

type Add = (tone: Finding['tone'], sentence: string, spot: Spot) => void;

async function judge(
  block: Block,
  home: { readonly row: number; readonly column: number },
  formula: string,
  explain: Explain,
  add: Add,
): Promise<void> {
  const { sheet } = block;
  const filled = block.spills.find((one) => one.row === home.row && one.column === home.column);
  const range = filled ?? { ...home, rows: 1, columns: 1 };
  const lines: CellResult[][] = [];
  for (let row = range.row; row < range.row + range.rows; row++) {
    const line: CellResult[] = [];
    for (let column = range.column; column < range.column + range.columns; column++) {
      const value = contains(block.range, row, column)
        ? (block.values[row - block.range.row]?.[column - block.range.column] ?? '')
        : '';
      line.push(value);
      if (typeof value !== 'object') continue;
      const { code, message } = value.error;
      if (waiting.has(code)) continue;
      const spot = { sheet, row, column };
      const why = message !== '' ? message : (known[code] ?? (await explain({ ...spot, code, formula })));
      add('wrong', why === undefined ? code : `${code} ${why}`, spot);
    }
    lines.push(line);
  }
  for (const { row, sentence } of verdicts(namesIn(formula, { sheet, ...home }), lines)) {
    add('caution', sentence, { sheet, row: range.row + row, column: range.column });
  }
}

/** Names of our functions that a formula calls. */
function namesIn(formula: string, spot: Spot): readonly string[] {
  const part = readFormula(formula);
  if (part === undefined) return [];
  const home = { ...spot, value: '', formula, source: undefined };
  return [...siltCalls(part, scopeOf(home))].map(({ name }) => name);
}

/** A host still at work is no fault. */
const waiting = new Set(['#BUSY!', '#GETTING_DATA', '#CONNECT!']);

const known: Readonly<Record<string, string>> = {
  '#NAME?': 'the functions were not there when this was entered; press Re-enter SILT formulas in Functions.',
  '#SPILL!': 'something stands in the cells that the answer needs; clear the cells below and to the right.',
  '#REF!': 'it points at cells that are gone; point it at others.',
  '#CALC!': 'a formula around it finds nothing to hand over; see that its rows are filled in.',
};
