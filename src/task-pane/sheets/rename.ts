import { tokenize } from '@borgar/fx';
import { quoteSheet, splitSheet } from '../../hosts/address';
import type { CellData, ChartData, SheetData, Validation, WorkbookData } from '../../hosts/workbook-model';

/** New names by the old ones; anything else keeps its name. */
export interface NewNames {
  readonly sheets: ReadonlyMap<string, string>;
  /** Of defined names and of tables. */
  readonly names: ReadonlyMap<string, string>;
}

/** A workbook with its sheets and names renamed, also in every formula, chart and list of choices. */
export function renamed(workbook: WorkbookData, given: NewNames): WorkbookData {
  const { sheets, names } = folded(given);
  const newSheetName = (name: string): string => sheets.get(name.toLowerCase()) ?? name;
  const newName = (name: string): string => names.get(name.toLowerCase()) ?? name;
  const formula = (text: string): string => inFormula(text, newSheetName, newName);
  const reference = (text: string): string => formula(`=${text}`).slice(1);
  const { activeSheet, names: defined } = workbook;
  return {
    ...workbook,
    sheets: workbook.sheets.map((one) => renamedSheet(one, { sheet: newSheetName, word: newName, formula, reference })),
    ...(defined === undefined
      ? {}
      : {
          names: defined.map((one) => ({ ...one, name: newName(one.name), refersTo: reference(one.refersTo) })),
        }),
    ...(activeSheet === undefined ? {} : { activeSheet: newSheetName(activeSheet) }),
  };
}

interface Renaming {
  readonly sheet: (name: string) => string;
  readonly word: (name: string) => string;
  /** Text beginning with `=`. */
  readonly formula: (text: string) => string;
  /** Text without. */
  readonly reference: (text: string) => string;
}

function renamedSheet(data: SheetData, to: Renaming): SheetData {
  const { cells, validations, conditions, charts, tables } = data;
  return {
    ...data,
    name: to.sheet(data.name),
    cells: cells.map(
      (cell): CellData => (cell.formula === undefined ? cell : { ...cell, formula: to.formula(cell.formula) }),
    ),
    ...(validations && {
      validations: validations.map((rule): Validation => ({ ...rule, formulas: rule.formulas.map(to.reference) })),
    }),
    ...(conditions && {
      conditions: conditions.map((one) => ({
        ...one,
        formula: one.formula.startsWith('=') ? to.formula(one.formula) : to.reference(one.formula),
      })),
    }),
    ...(charts && { charts: charts.map((chart) => renamedChart(chart, to)) }),
    ...(tables && { tables: tables.map((table) => ({ ...table, name: to.word(table.name) })) }),
  };
}

function renamedChart(chart: ChartData, { reference }: Renaming): ChartData {
  // Series and axes are named by text or by the cell that holds it.
  const words = (text: string): string => (splitSheet(text).sheet === undefined ? text : reference(text));
  return {
    ...chart,
    ...(chart.valueTitle === undefined ? {} : { valueTitle: words(chart.valueTitle) }),
    series: chart.series.map((series) => ({
      ...series,
      name: words(series.name),
      values: reference(series.values),
      ...(series.categories === undefined ? {} : { categories: reference(series.categories) }),
    })),
  };
}

function inFormula(text: string, sheet: Renaming['sheet'], word: Renaming['word']): string {
  return tokenize(text)
    .map(({ type, value }) => {
      if (!type.startsWith('range') && type !== 'structured') return value;
      const split = splitSheet(value);
      const rest = split.rest.replace(/^[A-Za-z_\\][\w.\\]*(?=\[|$)/, (name) => word(name));
      if (split.sheet === undefined) return rest;
      const next = sheet(split.sheet);
      return next === split.sheet
        ? `${value.slice(0, value.length - split.rest.length)}${rest}`
        : `${quoteSheet(next)}!${rest}`;
    })
    .join('');
}

function folded({ sheets, names }: NewNames): NewNames {
  const lower = (map: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
    new Map([...map].map(([name, next]) => [name.toLowerCase(), next]));
  return { sheets: lower(sheets), names: lower(names) };
}
