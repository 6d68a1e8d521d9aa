import { type CellRange, cellName, parseRange } from '../../hosts/address';
import type { CellData, CellScalar, CellStyle, SheetData, Validation } from '../../hosts/workbook-model';
import { alarmed, type StyleName, styles } from './styles';

/** A profile that ready-made sheets are written for. */
export type ReadyProfile = 'US' | 'metric';

type Style = StyleName | CellStyle;
type Condition = NonNullable<SheetData['conditions']>[number];

function styleOf(style: Style): CellStyle {
  return typeof style === 'string' ? styles[style] : style;
}

/** The place of a range. The sheets here write every address, so a wrong one is a fault in the code. */
function placeOf(address: string): CellRange {
  const place = parseRange(address);
  if (place === undefined) throw new Error(`"${address}" is not an address of cells`);
  return place;
}

/** A sheet while it is being written, cell by cell, by address. */
export class SheetDraft {
  private readonly cells = new Map<string, CellData>();
  private readonly merges: string[] = [];
  private readonly validations: Validation[] = [];
  private readonly conditions: Condition[] = [];
  private readonly heights: Record<number, number> = {};
  readonly name: string;

  constructor(name: string) {
    this.name = name;
  }

  /** Puts a value into a cell, or a formula if the text begins with `=`. */
  put(address: string, entry: CellScalar, style: Style = 'label', note?: string): this {
    const { row, column } = placeOf(address);
    const content =
      typeof entry === 'string' && entry.startsWith('=') ? { formula: entry } : entry === '' ? {} : { value: entry };
    const cell: CellData = { row, column, ...content, style: styleOf(style), ...(note === undefined ? {} : { note }) };
    this.cells.set(cellName(row, column), cell);
    return this;
  }

  /** Puts entries side by side, from a cell to the right. */
  across(address: string, entries: readonly CellScalar[], style: Style = 'label'): this {
    const { row, column } = placeOf(address);
    entries.forEach((entry, index) => {
      this.put(cellName(row, column + index), entry, style);
    });
    return this;
  }

  /** Styles the cells of a range and keeps their content; spills fill such cells. */
  fill(range: string, style: Style): this {
    const { row, column, rows, columns } = placeOf(range);
    for (let down = 0; down < rows; down += 1)
      for (let over = 0; over < columns; over += 1) {
        const name = cellName(row + down, column + over);
        const before = this.cells.get(name) ?? { row: row + down, column: column + over };
        this.cells.set(name, { ...before, style: styleOf(style) });
      }
    return this;
  }

  /** Text over several columns of one row. */
  wide(range: string, entry: CellScalar, style: Style, height?: number): this {
    const { row, column } = placeOf(range);
    this.put(cellName(row, column), entry, style);
    this.merges.push(range);
    if (height !== undefined) this.heights[row] = height;
    return this;
  }

  /**
   * Sentences that a function spills down from a cell. They are shown in merged cells with wrapped text, because a spill
   * cannot wrap over columns. `first` is the first of those rows.
   */
  sentences(formula: string, spill: string, first: string, rows: number, height = 31): this {
    const from = parseRange(spill);
    const shown = parseRange(first);
    if (from === undefined || shown === undefined) return this;
    this.put(cellName(from.row - 1, from.column), 'as the function gives it; shown at the left in lines', 'note');
    this.put(spill, formula, 'note');
    for (let down = 0; down < rows; down += 1) {
      const source = cellName(from.row + down, from.column);
      this.fill(source, 'note');
      const left = cellName(shown.row + down, shown.column);
      const right = cellName(shown.row + down, shown.column + shown.columns - 1);
      this.wide(`${left}:${right}`, `=IF(${source}="","",${source})`, 'text', height);
    }
    return this;
  }

  height(row: number, points: number): this {
    this.heights[row - 1] = points;
    return this;
  }

  validate(rule: Validation): this {
    this.validations.push(rule);
    return this;
  }

  /** A choice from words. */
  choice(range: string, words: readonly string[], prompt: string, strict = true): this {
    return this.validate({
      range,
      type: 'list',
      formulas: [`"${words.join(',')}"`],
      prompt,
      promptTitle: 'Choose',
      errorTitle: 'Not in the list',
      error: `Give ${words.slice(0, 6).join(', ')}${words.length > 6 ? ' …' : ''}.`,
      errorStyle: strict ? 'stop' : 'warning',
    });
  }

  /** A choice from the words in a range. */
  choiceFrom(range: string, source: string, prompt: string): this {
    return this.validate({
      range,
      type: 'list',
      formulas: [source],
      prompt,
      promptTitle: 'Choose',
      errorStyle: 'information',
    });
  }

  /** Colors the cells for which a formula is true; the formula is written for the first cell. */
  alarm(range: string, formula: string): this {
    this.conditions.push({ range, formula, style: alarmed });
    return this;
  }

  sheet(rest: Omit<SheetData, 'name' | 'cells' | 'merges' | 'validations' | 'conditions' | 'rowHeights'>): SheetData {
    const cells = [...this.cells.values()].sort((a, b) => a.row - b.row || a.column - b.column);
    return {
      name: this.name,
      cells,
      ...(this.merges.length > 0 ? { merges: this.merges } : {}),
      ...(this.validations.length > 0 ? { validations: this.validations } : {}),
      ...(this.conditions.length > 0 ? { conditions: this.conditions } : {}),
      rowHeights: this.heights,
      ...rest,
    };
  }
}
