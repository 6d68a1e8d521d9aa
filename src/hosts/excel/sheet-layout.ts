import type { CellStyle, PrintSetup, SheetData, Validation } from '../workbook-model';
import { supports } from './run';
import { rangeAt } from './sheet-styles';
import { widthInPoints } from './write-cells';

/** Everything of a sheet that is not in single cells; what an older Excel does not know is left out. */
export function putLayout(worksheet: Excel.Worksheet, sheet: SheetData): void {
  for (const [column, width] of Object.entries(sheet.columnWidths ?? {})) {
    worksheet.getRangeByIndexes(0, Number(column), 1, 1).format.columnWidth = widthInPoints(width);
  }
  for (const [row, height] of Object.entries(sheet.rowHeights ?? {})) {
    worksheet.getRangeByIndexes(Number(row), 0, 1, 1).format.rowHeight = height;
  }
  for (const merge of sheet.merges ?? []) rangeAt(worksheet, merge).merge();
  if (sheet.frozenRows && sheet.frozenColumns) {
    worksheet.freezePanes.freezeAt(worksheet.getRangeByIndexes(0, 0, sheet.frozenRows, sheet.frozenColumns));
  } else if (sheet.frozenRows) worksheet.freezePanes.freezeRows(sheet.frozenRows);
  else if (sheet.frozenColumns) worksheet.freezePanes.freezeColumns(sheet.frozenColumns);
  if (sheet.tabColor !== undefined) worksheet.tabColor = `#${sheet.tabColor}`;
  if (supports('1.8')) {
    for (const validation of sheet.validations ?? []) putValidation(worksheet, validation);
    if (sheet.hideGridlines) worksheet.showGridlines = false;
  }
  for (const { range, formula, style } of sheet.conditions ?? []) {
    putCondition(rangeAt(worksheet, range), formula, style);
  }
  for (const { name, range } of sheet.tables ?? []) {
    const table = worksheet.tables.add(rangeAt(worksheet, range), true);
    table.name = name;
  }
  if (supports('1.9') && sheet.print !== undefined) putPrint(worksheet.pageLayout, sheet.print);
  if (sheet.hidden) worksheet.visibility = 'Hidden';
}

const kinds = {
  decimal: 'decimal',
  whole: 'wholeNumber',
  date: 'date',
  textLength: 'textLength',
} as const;

const operators = {
  between: 'Between',
  notBetween: 'NotBetween',
  equal: 'EqualTo',
  notEqual: 'NotEqualTo',
  greaterThan: 'GreaterThan',
  lessThan: 'LessThan',
  greaterThanOrEqual: 'GreaterThanOrEqualTo',
  lessThanOrEqual: 'LessThanOrEqualTo',
} as const;

function putValidation(worksheet: Excel.Worksheet, validation: Validation): void {
  const { dataValidation } = rangeAt(worksheet, validation.range);
  const [first = '', second] = validation.formulas;
  const formula = (text: string): string => (/^-?[\d.]+$/.test(text) ? text : `=${text}`);
  if (validation.type === 'list') {
    const words = /^"(.*)"$/.exec(first)?.[1];
    dataValidation.rule = { list: { inCellDropDown: true, source: words ?? `=${first}` } };
  } else if (validation.type === 'custom') dataValidation.rule = { custom: { formula: `=${first}` } };
  else {
    dataValidation.rule = {
      [kinds[validation.type]]: {
        formula1: formula(first),
        ...(second === undefined ? {} : { formula2: formula(second) }),
        operator: operators[validation.operator ?? 'between'],
      },
    };
  }
  if (validation.allowBlank !== undefined) dataValidation.ignoreBlanks = validation.allowBlank;
  if (validation.prompt !== undefined) {
    dataValidation.prompt = { showPrompt: true, title: validation.promptTitle ?? '', message: validation.prompt };
  }
  const style = ({ stop: 'Stop', warning: 'Warning', information: 'Information' } as const)[
    validation.errorStyle ?? 'stop'
  ];
  dataValidation.errorAlert = {
    showAlert: validation.error !== undefined,
    style,
    title: validation.errorTitle ?? '',
    message: validation.error ?? '',
  };
}

function putCondition(range: Excel.Range, formula: string, style: CellStyle): void {
  const { custom } = range.conditionalFormats.add('Custom');
  custom.rule.formula = formula.startsWith('=') ? formula : `=${formula}`;
  if (style.fontColor !== undefined) custom.format.font.color = `#${style.fontColor}`;
  if (style.bold !== undefined) custom.format.font.bold = style.bold;
  if (style.fill !== undefined) custom.format.fill.color = `#${style.fill}`;
}

function putPrint(layout: Excel.PageLayout, print: PrintSetup): void {
  if (print.landscape !== undefined) layout.orientation = print.landscape ? 'Landscape' : 'Portrait';
  if (print.paper === 1) layout.paperSize = 'Letter';
  if (print.paper === 9) layout.paperSize = 'A4';
  if (print.fitToWidth !== undefined || print.fitToHeight !== undefined) {
    layout.zoom = {
      ...(print.fitToWidth ? { horizontalFitToPages: print.fitToWidth } : {}),
      ...(print.fitToHeight ? { verticalFitToPages: print.fitToHeight } : {}),
    };
  }
  if (print.area !== undefined) layout.setPrintArea(print.area);
  if (print.titleRows !== undefined) layout.setPrintTitleRows(print.titleRows.replace(/(\d+):(\d+)/, '$$$1:$$$2'));
}
