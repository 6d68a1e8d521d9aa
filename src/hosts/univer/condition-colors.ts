import { type ICellData, type ICommandInfo, InterceptorEffectEnum, type IStyleData } from '@univerjs/core';
import { INTERCEPTOR_POINT, SetWorksheetNameMutation, SheetInterceptorService } from '@univerjs/sheets';
import type { FWorksheet } from '@univerjs/sheets/facade';
import { type CellRange, parseRange } from '../address';
import { movedParts } from '../moved-parts';
import { movedCell } from '../moved-rule';
import type { CellResult, SheetData } from '../workbook-model';
import type { Evaluated } from './evaluate';
import { anyMove } from './line-moves';
import { sheetsNow } from './sheets-now';
import { toEngineStyle } from './snapshot-style';
import { offsetFormula, spreadFormula } from './spread-formula';
import type { Spreadsheet } from './spreadsheet';

type Condition = NonNullable<SheetData['conditions']>[number];
/** Styles by `row,column`. */
type Colors = ReadonlyMap<string, IStyleData>;

const keyOf = (sheet: FWorksheet): string => `${sheet.getWorkbook().getUnitId()} ${sheet.getSheetId()}`;

/** A rule whose formula is computed for each cell is drawn for at most this many cells. */
const mostCells = 400;

const isTrue = (value: CellResult | undefined): boolean => value === true || (typeof value === 'number' && value !== 0);

const answerAt = (answer: Evaluated, row: number, column: number): CellResult | undefined => {
  if (!Array.isArray(answer)) return answer as CellResult;
  // A result that depends only on the row is one column; one that depends only on the column is one row.
  const line: readonly CellResult[] | undefined = answer[answer.length === 1 ? 0 : row];
  return line?.[line.length === 1 ? 0 : column];
};

/** The cells of a block for which a rule holds, counted from the block's first cell. */
async function cellsThatHold(
  formula: string,
  { rows, columns }: CellRange,
  evaluate: (formula: string) => Promise<Evaluated>,
): Promise<(readonly [row: number, column: number])[]> {
  const places = Array.from({ length: rows * columns }, (_, at) => [Math.floor(at / columns), at % columns] as const);
  const spread = spreadFormula(formula, rows, columns);
  if (spread !== undefined) {
    const answer = await evaluate(spread);
    return places.filter(([row, column]) => isTrue(answerAt(answer, row, column)));
  }
  const found: (readonly [number, number])[] = [];
  for (const [row, column] of places.slice(0, mostCells)) {
    if (isTrue(answerAt(await evaluate(offsetFormula(formula, row, column)), 0, 0))) found.push([row, column]);
  }
  return found;
}

/**
 * Draws the rules that color cells by a formula, which the spreadsheet itself keeps but does not draw. The colors exist
 * only on the screen: cells and file stay as they are. (The spreadsheet's own package for such rules makes every edit
 * slow, because its formulas stand among those of the cells.)
 */
export class ConditionColors {
  private readonly spreadsheet: Spreadsheet;
  /** By workbook and sheet. */
  private readonly colors = new Map<string, Colors>();
  private run = 0;
  private lookedAt = '';

  constructor(spreadsheet: Spreadsheet) {
    this.spreadsheet = spreadsheet;
    spreadsheet.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      effect: InterceptorEffectEnum.Style,
      handler: (cell, place, next) => {
        const color = this.colors.get(`${place.unitId} ${place.subUnitId}`)?.get(`${place.row},${place.col}`);
        if (color === undefined) return next(cell);
        const own = typeof cell?.s === 'string' ? place.workbook.getStyles().get(cell.s) : cell?.s;
        const drawn: ICellData = { ...cell, s: { ...own, ...color } };
        return next(drawn);
      },
    });
  }

  /** Lets colors follow rows, columns and cells at once; whether the rules have to be looked at again after a command. */
  follow(command: Readonly<ICommandInfo>): boolean {
    const moved = anyMove(command);
    if (moved === undefined) return command.id === SetWorksheetNameMutation.id;
    const of = `${moved.workbook} ${moved.sheet}`;
    const now = [...(this.colors.get(of) ?? [])].flatMap(([key, style]): [string, IStyleData][] => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      const place = movedCell({ row, column, rows: 1, columns: 1 }, moved.move);
      return place === undefined ? [] : [[`${place.row},${place.column}`, style]];
    });
    this.colors.set(of, new Map(now));
    return true;
  }

  /** Looks at the rules of the sheet in view again, as after a change of its cells. */
  async update(): Promise<void> {
    this.run += 1;
    const mine = this.run;
    const open = this.spreadsheet.current();
    const sheet = open.facade.getActiveSheet();
    this.lookedAt = keyOf(sheet);
    const found = new Map<string, IStyleData>();
    const source = open.sources.get(sheet.getSheetId());
    const conditions = source?.conditions && movedParts(source, sheetsNow(open)).conditions;
    for (const condition of conditions ?? []) {
      await this.add(condition, sheet.getSheetName(), found);
      if (mine !== this.run) return;
    }
    this.show(sheet, found);
  }

  /** The same where another sheet has come into view. */
  async updateIfOther(): Promise<void> {
    if (keyOf(this.spreadsheet.current().facade.getActiveSheet()) !== this.lookedAt) await this.update();
  }

  /** What is drawn over the cells of the sheet in view. */
  now(): Colors {
    return this.colors.get(keyOf(this.spreadsheet.current().facade.getActiveSheet())) ?? new Map();
  }

  private async add(
    { range, formula, style }: Condition,
    sheet: string,
    found: Map<string, IStyleData>,
  ): Promise<void> {
    const blocks = range.split(/\s+/).flatMap((text) => parseRange(text) ?? []);
    const [first] = blocks;
    if (first === undefined) return;
    const evaluate = (text: string): Promise<Evaluated> => this.spreadsheet.evaluate(sheet, text);
    for (const block of blocks) {
      // Rules are written for the first cell of all their blocks.
      const [down, across] = [block.row - first.row, block.column - first.column];
      const own = offsetFormula(formula.startsWith('=') ? formula : `=${formula}`, down, across);
      for (const [row, column] of await cellsThatHold(own, block, evaluate)) {
        const key = `${block.row + row},${block.column + column}`;
        if (!found.has(key)) found.set(key, toEngineStyle(style));
      }
    }
  }

  private show(sheet: FWorksheet, found: Map<string, IStyleData>): void {
    const before = this.colors.get(keyOf(sheet)) ?? new Map();
    if (JSON.stringify([...before]) === JSON.stringify([...found])) return;
    this.colors.set(keyOf(sheet), found);
    sheet.refreshCanvas();
  }
}
