import type { Worksheet as FileSheet, CellValue as FileValue } from '@cj-tech-master/excelts';
import { cellName } from '../hosts/address';
import type { CellData, CellResult, PrintSetup, SheetData, Validation } from '../hosts/workbook-model';
import { isDynamic } from './array-flag';
import { conditionStyle, fileStyle } from './file-style';
import { storedFormula } from './stored-formula';
import { storedError } from './stored-value';
import { addChart, addTable } from './write-chart';

/** Points: room for a sentence or two beside a cell. */
const noteSize = { width: 220, height: 100 };

/** 1970-01-01 as a spreadsheet's day number. */
const dayOfEpoch = 25_569;

function fileResult(value: CellResult | undefined): unknown {
  return typeof value === 'object' ? { error: storedError(value.error.code) } : value;
}

function fileValue(cell: CellData, isRangeName: (name: string) => boolean): FileValue {
  if (cell.formula === undefined) return fileResult(cell.value) as FileValue;
  const formula = storedFormula(cell.formula);
  const result = fileResult(cell.value);
  if (!isDynamic(cell.formula, isRangeName) && cell.spill === undefined) return { formula, result } as FileValue;
  const ref = cell.spill ?? cellName(cell.row, cell.column);
  return { formula, result, shareType: 'array', ref, isDynamicArray: true } as FileValue;
}

/** The file writer takes dates as dates only, so that any other bound of a date is one of a number. */
function ruleType(rule: Validation): Validation['type'] {
  return rule.type === 'date' && !rule.formulas.every((formula) => Number.isFinite(Number(formula)))
    ? 'decimal'
    : rule.type;
}

function ruleFormula(type: Validation['type'], formula: string): string | Date {
  if (type === 'date') return new Date((Number(formula) - dayOfEpoch) * 86_400_000);
  return formula.startsWith('"') ? formula : storedFormula(formula);
}

function writeValidation(sheet: FileSheet, rule: Validation): void {
  const type = ruleType(rule);
  sheet.dataValidations.add(rule.range, {
    type,
    ...(rule.operator === undefined ? {} : { operator: rule.operator }),
    formulae: rule.formulas.map((formula) => ruleFormula(type, formula)),
    allowBlank: rule.allowBlank ?? true,
    showErrorMessage: true,
    showInputMessage: rule.prompt !== undefined,
    errorStyle: rule.errorStyle ?? 'stop',
    ...(rule.promptTitle === undefined ? {} : { promptTitle: rule.promptTitle }),
    ...(rule.prompt === undefined ? {} : { prompt: rule.prompt }),
    ...(rule.errorTitle === undefined ? {} : { errorTitle: rule.errorTitle }),
    ...(rule.error === undefined ? {} : { error: rule.error }),
  } as Parameters<FileSheet['dataValidations']['add']>[1]);
}

function writePrint(sheet: FileSheet, print: PrintSetup): void {
  Object.assign(sheet.pageSetup, {
    margins: { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 },
    orientation: print.landscape ? 'landscape' : 'portrait',
    ...(print.paper === undefined ? {} : { paperSize: print.paper }),
    ...(print.fitToWidth === undefined && print.fitToHeight === undefined
      ? {}
      : { fitToPage: true, fitToWidth: print.fitToWidth ?? 0, fitToHeight: print.fitToHeight ?? 0 }),
    ...(print.area === undefined ? {} : { printArea: print.area }),
    ...(print.titleRows === undefined ? {} : { printTitlesRow: print.titleRows }),
  });
  if (print.header !== undefined) sheet.headerFooter.oddHeader = print.header;
  if (print.footer !== undefined) sheet.headerFooter.oddFooter = print.footer;
}

function writeView(sheet: FileSheet, data: SheetData): void {
  const rows = data.frozenRows ?? 0;
  const columns = data.frozenColumns ?? 0;
  const grid = { showGridLines: data.hideGridlines !== true };
  sheet.views =
    rows + columns === 0
      ? [{ state: 'normal', ...grid } as FileSheet['views'][number]]
      : [{ state: 'frozen', xSplit: columns, ySplit: rows, topLeftCell: cellName(rows, columns), ...grid }];
}

/** The file writer leaves out columns of this width, and then every program shows its own standard width instead. */
const unwrittenWidth = 9;

/** Writes one sheet's data into an empty sheet of the file. */
export function writeSheet(sheet: FileSheet, data: SheetData, isRangeName: (name: string) => boolean): void {
  for (const [column, width] of Object.entries(data.columnWidths ?? {}))
    sheet.getColumn(Number(column) + 1).width = width === unwrittenWidth ? width + 0.001 : width;
  for (const [row, height] of Object.entries(data.rowHeights ?? {})) sheet.getRow(Number(row) + 1).height = height;
  for (const column of data.hiddenColumns ?? []) sheet.getColumn(column + 1).hidden = true;
  for (const row of data.hiddenRows ?? []) sheet.getRow(row + 1).hidden = true;
  for (const cell of data.cells) {
    const target = sheet.getCell(cell.row + 1, cell.column + 1);
    const value = fileValue(cell, isRangeName);
    if (value !== undefined) target.value = value;
    if (cell.note !== undefined) target.note = { texts: [{ text: cell.note }], ...noteSize };
  }
  for (const table of data.tables ?? []) addTable(sheet, table);
  // After the tables, which bring a style of their own.
  for (const cell of data.cells)
    if (cell.style !== undefined) Object.assign(sheet.getCell(cell.row + 1, cell.column + 1), fileStyle(cell.style));
  for (const merge of data.merges ?? []) sheet.mergeCells(merge);
  for (const rule of data.validations ?? []) writeValidation(sheet, rule);
  (data.conditions ?? []).forEach(({ range, formula, style }, index) => {
    const formulae = [storedFormula(formula)];
    const rule = { type: 'expression' as const, priority: index + 1, formulae, style: conditionStyle(style) };
    sheet.addConditionalFormatting({ ref: range, rules: [rule] });
  });
  for (const chart of data.charts ?? []) addChart(sheet, chart);
  writeView(sheet, data);
  if (data.print !== undefined) writePrint(sheet, data.print);
  if (data.tabColor !== undefined) sheet.properties.tabColor = { argb: `FF${data.tabColor}` };
  if (data.hidden) sheet.state = 'hidden';
}
