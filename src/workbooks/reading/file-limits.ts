import { SaxesParser } from 'saxes';
import { cellName, parseRange } from '../../hosts/address';
import { sheetParts, workbookPart } from '../workbook-parts';
import { DamagedZip, readZip, unpack, type ZipEntry } from '../zip-container';
import { checkSize, RefusedWorkbook } from './file-size';
import { checkNames } from './name-limits';

/** Far above any workbook of a farm, far below what would stop a computer. */
export const limits = {
  unpackedBytes: 300e6,
  files: 5_000,
  sheets: 500,
  cells: 500_000,
  formulas: 100_000,
  /** Cells that merges, or one array formula, may cover. */
  area: 1_000_000,
  /** What Excel allows (its published specifications and limits). */
  formulaLength: 8_192,
  formulaDepth: 64,
  textLength: 32_767,
  markupDepth: 128,
} as const;

const lastRow = 1_048_575;
const lastColumn = 16_383;

const count = (number: number): string => number.toLocaleString('en-US');

function checkZip(bytes: Uint8Array): readonly ZipEntry[] {
  checkSize(bytes.length);
  const entries = readZip(bytes);
  if (entries.length > limits.files) throw new RefusedWorkbook(`the file holds more than ${count(limits.files)} parts`);
  const seen = new Set<string>();
  let size = 0;
  for (const entry of entries) {
    const name = entry.name.toLowerCase();
    if (seen.has(name)) throw new RefusedWorkbook(`the file holds two parts named ${entry.name.slice(0, 100)}`);
    seen.add(name);
    size += entry.size;
    if (size > limits.unpackedBytes) throw new RefusedWorkbook('the file would unpack to more than 300 MB');
  }
  return entries;
}

/** How deep brackets are nested, outside quotes. */
function bracketDepth(formula: string): number {
  let [depth, deepest] = [0, 0];
  for (const mark of formula.replace(/"(?:[^"]|"")*"/g, '').match(/[()]/g) ?? []) {
    depth += mark === '(' ? 1 : -1;
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}

function checkFormula(where: string, formula: string): void {
  if (formula.length > limits.formulaLength)
    throw new RefusedWorkbook(
      `${where} holds a formula of ${count(formula.length)} characters; ${count(limits.formulaLength)} are allowed`,
    );
  if (bracketDepth(formula) > limits.formulaDepth)
    throw new RefusedWorkbook(
      `${where} holds a formula with brackets in each other more than ${limits.formulaDepth} deep`,
    );
}

interface Totals {
  cells: number;
  formulas: number;
  area: number;
}

function areaOf(where: string, ref: string): number {
  const range = parseRange(ref);
  if (range === undefined)
    throw new RefusedWorkbook(`the workbook is damaged: ${where} names ${ref.slice(0, 40)}, which is no range`);
  return range.rows * range.columns;
}

/** Looks at a worksheet's part without building anything from it. */
function checkSheet(name: string, xml: string, texts: number, totals: Totals): void {
  const parser = new SaxesParser({ xmlns: false });
  let depth = 0;
  let cell: { where: string; type: string | undefined } | undefined;
  let row = -1;
  let column = -1;
  let text = '';
  const inSheet = `'${name}'`;
  parser.on('error', (error) => {
    throw new RefusedWorkbook(
      `the workbook is damaged: the sheet ${inSheet} cannot be read (${error.message.slice(0, 80)})`,
    );
  });
  parser.on('doctype', () => {
    throw new RefusedWorkbook(`the sheet ${inSheet} defines words of its own (DOCTYPE), which no workbook does`);
  });
  parser.on('opentag', ({ name: tag, attributes }) => {
    depth += 1;
    if (depth > limits.markupDepth)
      throw new RefusedWorkbook(`the sheet ${inSheet} is nested more than ${limits.markupDepth} deep`);
    text = '';
    switch (tag.slice(tag.indexOf(':') + 1)) {
      case 'row':
        row = attributes.r === undefined ? row + 1 : Number(attributes.r) - 1;
        column = -1;
        if (!Number.isInteger(row) || row < 0 || row > lastRow)
          throw new RefusedWorkbook(
            `the workbook is damaged: the sheet ${inSheet} has a row ${String(attributes.r).slice(0, 20)}`,
          );
        break;
      case 'c': {
        const at = attributes.r === undefined ? { row, column: column + 1 } : parseRange(attributes.r);
        if (at === undefined || at.row > lastRow || at.column > lastColumn)
          throw new RefusedWorkbook(
            `the workbook is damaged: the sheet ${inSheet} has a cell ${String(attributes.r).slice(0, 20)}`,
          );
        column = at.column;
        totals.cells += 1;
        if (totals.cells > limits.cells)
          throw new RefusedWorkbook(`the workbook has more than ${count(limits.cells)} cells`);
        cell = { where: `${inSheet}!${cellName(at.row, at.column)}`, type: attributes.t };
        break;
      }
      case 'f':
        totals.formulas += 1;
        if (totals.formulas > limits.formulas)
          throw new RefusedWorkbook(`the workbook has more than ${count(limits.formulas)} formulas`);
        if (attributes.t === 'array' && areaOf(`a formula of ${inSheet}`, attributes.ref ?? 'A1') > limits.area)
          throw new RefusedWorkbook(`${cell?.where} fills more than ${count(limits.area)} cells`);
        break;
      case 'mergeCell':
        totals.area += areaOf(`a merge of ${inSheet}`, attributes.ref ?? '');
        if (totals.area > limits.area)
          throw new RefusedWorkbook(`merged cells of the sheet ${inSheet} cover more than ${count(limits.area)} cells`);
        break;
      default:
    }
  });
  parser.on('text', (more) => {
    text += more;
  });
  parser.on('closetag', ({ name: tag }) => {
    depth -= 1;
    const local = tag.slice(tag.indexOf(':') + 1);
    if (cell === undefined) return;
    if (local === 'f') checkFormula(cell.where, text);
    if (local === 'v') checkValue(cell.where, cell.type, text, texts);
    if (local === 'c') cell = undefined;
    text = '';
  });
  parser.write(xml).close();
}

function checkValue(where: string, type: string | undefined, text: string, texts: number): void {
  const shown = text.slice(0, 20);
  if (type === 's') {
    const index = Number(text);
    if (text.trim() === '' || !Number.isInteger(index) || index < 0 || index >= texts)
      throw new RefusedWorkbook(`the workbook is damaged: ${where} refers to text ${shown}, which is not in the file`);
  } else if ((type === undefined || type === 'n') && text.trim() !== '' && !Number.isFinite(Number(text)))
    throw new RefusedWorkbook(`the workbook is damaged: ${where} holds ${shown}, which is no number`);
  else if (text.length > limits.textLength)
    throw new RefusedWorkbook(
      `${where} holds a text of ${count(text.length)} characters; ${count(limits.textLength)} are allowed`,
    );
}

/** How many shared texts there are. */
function sharedTexts(xml: string | undefined): number {
  return xml === undefined ? 0 : (xml.match(/<(?:\w+:)?si[\s>/]/g)?.length ?? 0);
}

/** Refuses a file that could block its reader or that contradicts itself, before anything is built from it. */
export function checkFile(bytes: Uint8Array): void {
  try {
    const entries = new Map(checkZip(bytes).map((entry) => [entry.name, entry]));
    const textOf = (path: string): string | undefined => {
      const entry = entries.get(path);
      return entry === undefined ? undefined : new TextDecoder().decode(unpack(entry));
    };
    const parts = sheetParts(textOf);
    if (parts.length === 0) throw new RefusedWorkbook('the workbook has no sheets');
    if (parts.length > limits.sheets)
      throw new RefusedWorkbook(`the workbook has more than ${count(limits.sheets)} sheets`);
    checkNames(textOf(workbookPart(textOf).part) ?? '', (message) => new RefusedWorkbook(message));
    const texts = sharedTexts(textOf('xl/sharedStrings.xml'));
    const totals: Totals = { cells: 0, formulas: 0, area: 0 };
    for (const { name, path } of parts) checkSheet(name, textOf(path) ?? '', texts, totals);
  } catch (thrown) {
    if (thrown instanceof SyntaxError)
      throw new RefusedWorkbook(`the workbook is damaged: ${thrown.message.slice(0, 120)}`);
    if (thrown instanceof DamagedZip)
      throw new RefusedWorkbook(`this is not a readable .xlsx workbook: ${thrown.message}`);
    throw thrown;
  }
}
