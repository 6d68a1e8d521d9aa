import type { BinaryExpression, CallExpression, ReferenceIdentifier } from '@borgar/fx';
import { parseRange, splitSheet } from '../../hosts/address';
import type { CellData, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { type Part, readFormula, siltName, targetOf } from '../../task-pane/cell-formula/read-formula';
import type { LookFormula, LookNode, LookPlan, LookValue } from '../../workbench/first-look/look-plan';
import { decimalsOf } from '../../workbench/first-look/shown-text';

/** Thrown for a formula that comes down to more than calls of our functions. */
class NotCovered extends Error {}

/**
 * Translates the formulas of a sheet that come down to calls of our functions, IF, ISERROR, comparison with blank text
 * or 0, joined text and cells, for the page to compute before there is a spreadsheet. Others, and what depends on them, are left out.
 */
export function lookPlan(workbook: WorkbookData, sheet: SheetData, rows: number): LookPlan {
  const translation = new Translation(workbook, sheet);
  for (const cell of sheet.cells) if (cell.formula !== undefined && cell.row < rows) translation.add(cell);
  return translation.plan();
}

class Translation {
  private readonly names = new Map<string, LookValue>();
  private readonly typed = new Map<string, readonly [number, number, LookValue]>();
  private readonly formulas: LookFormula[] = [];
  /** Cells that are computed, by the formula that does it; each formula is looked at once. */
  private readonly seen = new Map<CellData, LookFormula | undefined>();

  private readonly workbook: WorkbookData;
  private readonly sheet: SheetData;

  constructor(workbook: WorkbookData, sheet: SheetData) {
    this.workbook = workbook;
    this.sheet = sheet;
  }

  /** Only with the names and typed cells of formulas that are covered to their end. */
  plan(): LookPlan {
    const nodes = this.formulas.flatMap(({ is }) => partsOf(is));
    const isNamed = (name: string): boolean => nodes.some((node) => node[0] === 'name' && node[1] === name);
    const isRead = (row: number, column: number): boolean =>
      nodes.some(([kind, top, left, rows, columns]) => {
        const [down, across] = [row - Number(top), column - Number(left)];
        return kind === 'cells' && down >= 0 && down < Number(rows) && across >= 0 && across < Number(columns);
      });
    return {
      names: Object.fromEntries([...this.names].filter(([name]) => isNamed(name))),
      typed: [...this.typed.values()].filter(([row, column]) => isRead(row, column)),
      formulas: this.formulas,
    };
  }

  /** Whether the formula of a cell is covered, with all that it depends on. */
  add(cell: CellData): boolean {
    if (this.seen.has(cell)) return this.seen.get(cell) !== undefined;
    // One that depends on itself is not covered.
    this.seen.set(cell, undefined);
    const part = readFormula(cell.formula ?? '');
    if (part === undefined) return false;
    try {
      const { rows, columns } = parseRange(cell.spill ?? '') ?? { rows: 1, columns: 1 };
      const decimals = decimalsOf(cell.style?.numberFormat);
      const is = this.node(part);
      const formula = { row: cell.row, column: cell.column, rows, columns, is, ...(decimals && { decimals }) };
      this.seen.set(cell, formula);
      this.formulas.push(formula);
      return true;
    } catch (thrown) {
      if (thrown instanceof NotCovered) return false;
      throw thrown;
    }
  }

  private node(part: Part): LookNode {
    switch (part.type) {
      case 'Literal':
        return ['value', part.value as LookValue];
      case 'ReferenceIdentifier':
        return this.reference(part);
      case 'CallExpression':
        return this.call(part);
      case 'BinaryExpression':
        return this.binary(part);
      default:
        throw new NotCovered(part.type);
    }
  }

  private call({ callee, arguments: given }: CallExpression): LookNode {
    const nodesOf = (parts: CallExpression['arguments']) =>
      parts.map((one): LookNode => (one ? this.node(one as Part) : ['value', null]));
    const name = siltName(callee.name);
    if (name !== undefined) return ['call', name, ...nodesOf(given)];
    const [condition, ...rest] = given;
    const [yes, no] = nodesOf(rest);
    if (callee.name.toUpperCase() !== 'IF' || given.length !== 3 || !condition || !yes || !no)
      throw new NotCovered(callee.name);
    return ['if', this.condition(condition as Part), yes, no];
  }

  /** A comparison, two that must both be true, or whether something is an error. */
  private condition(part: Part): LookNode {
    if (part.type === 'BinaryExpression' && part.operator === '*') {
      const [one, other] = part.arguments;
      return ['both', this.condition(one as Part), this.condition(other as Part)];
    }
    if (part.type === 'CallExpression' && part.callee.name.toUpperCase() === 'ISERROR' && part.arguments[0]) {
      return ['isError', this.node(part.arguments[0] as Part)];
    }
    const node = this.node(part);
    if (node[0] !== '=' && node[0] !== '<>') throw new NotCovered('a condition');
    return node;
  }

  private binary({ operator, arguments: [left, right] }: BinaryExpression): LookNode {
    const nodes = [this.node(left as Part), this.node(right as Part)] as const;
    const isComparable = ([kind, value]: LookNode): boolean => kind === 'value' && (value === '' || value === 0);
    if ((operator === '=' || operator === '<>') && nodes.some(isComparable)) return [operator, ...nodes];
    if (operator === '&' && nodes.every(isText)) return [operator, ...nodes];
    throw new NotCovered(operator);
  }

  private reference(reference: ReferenceIdentifier): LookNode {
    const target = targetOf(reference);
    if (target === undefined) throw new NotCovered(reference.value);
    if ('name' in target) return this.named(target.name);
    const { top, left, bottom, right } = target.range;
    const isOther = target.sheet !== undefined && target.sheet !== this.sheet.name;
    if (isOther || top === null || left === null || bottom === null || right === null)
      throw new NotCovered(reference.value);
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) this.need(row, column);
    }
    return ['cells', top, left, bottom - top + 1, right - left + 1];
  }

  /** A name of one typed cell. */
  private named(name: string): LookNode {
    const refersTo = this.workbook.names?.find((one) => one.name.toLowerCase() === name.toLowerCase())?.refersTo ?? '';
    const { sheet, rest } = splitSheet(refersTo.replace(/^=/, ''));
    const range = parseRange(rest.replaceAll('$', ''));
    const cell = this.workbook.sheets
      .find((one) => one.name === sheet)
      ?.cells.find(({ row, column }) => row === range?.row && column === range.column);
    if (cell === undefined || cell.formula !== undefined || typeof cell.value === 'object') throw new NotCovered(name);
    this.names.set(name, cell.value ?? null);
    return ['name', name];
  }

  /** Makes a cell known: one that is computed is computed first, and one that is typed goes into the plan. */
  private need(row: number, column: number): void {
    const filling = this.sheet.cells.find((cell) => {
      const spill = parseRange(cell.spill ?? '') ?? { row: cell.row, column: cell.column, rows: 1, columns: 1 };
      const isIn = row >= spill.row && row < spill.row + spill.rows;
      return cell.formula !== undefined && isIn && column >= spill.column && column < spill.column + spill.columns;
    });
    if (filling !== undefined) {
      if (!this.add(filling)) throw new NotCovered('a cell that is not covered');
      return;
    }
    const value = this.sheet.cells.find((cell) => cell.row === row && cell.column === column)?.value;
    if (typeof value === 'object') throw new NotCovered('an error');
    if (value !== undefined) this.typed.set(`${row},${column}`, [row, column, value]);
  }
}

/** A node with all nodes in it. */
function partsOf(node: LookNode): readonly LookNode[] {
  const inner = (node as readonly unknown[]).filter((one): one is LookNode => Array.isArray(one));
  return [node, ...inner.flatMap(partsOf)];
}

/** Whether the page surely gets text here; how it would write a number is the spreadsheet's matter. */
function isText([kind, value]: LookNode): boolean {
  return kind === '&' || (kind === 'value' && typeof value === 'string') || (kind === 'call' && value === 'UNIT.LABEL');
}
