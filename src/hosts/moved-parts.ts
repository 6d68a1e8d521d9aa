import { tokenize } from '@borgar/fx';
import { parseRange, quoteSheet, rangeName, splitSheet } from './address';
import { type MovesOf, movedReferences } from './moved-formula';
import { type Move, movedLines, movedRange } from './moved-lines';
import { movedRules } from './moved-rule';
import type { ChartData, PrintSetup, SheetData, WorkbookData } from './workbook-model';

/** What belongs to the cells of a sheet without being in them. */
export const keptParts = ['validations', 'conditions', 'charts', 'otherCharts', 'tables', 'print'] as const;
export type KeptParts = Pick<SheetData, (typeof keptParts)[number]>;

/** The sheets of a workbook as they are now, by the names that the parts of sheets have for them. */
export interface SheetsNow {
  readonly movesOf: MovesOf;
  readonly nameOf: (sheet: string) => string | undefined;
}

/** The name that parts have for a sheet, whatever it is called now. */
export const nameInParts = ({ openedAs, addedAs, name }: SheetData): string => openedAs ?? addedAs ?? name;

/** A formula or reference with other names for sheets. */
export function renamedSheets(formula: string, nameOf: SheetsNow['nameOf']): string {
  const isTyped = formula.startsWith('=');
  const text = tokenize(isTyped ? formula : `=${formula}`)
    .map(({ type, value }) => {
      const { sheet, rest } = type.startsWith('range') ? splitSheet(value) : { sheet: undefined, rest: value };
      const now = sheet === undefined ? undefined : nameOf(sheet);
      return now === undefined || now === sheet ? value : `${quoteSheet(now)}!${rest}`;
    })
    .join('');
  return isTyped ? text : text.slice(1);
}

const isReference = (text: string): boolean => {
  const { sheet, rest } = splitSheet(text);
  return sheet !== undefined && parseRange(rest) !== undefined;
};

/** A chart with other references; titles may be text. */
function withReferences(chart: ChartData, change: (reference: string) => string): ChartData {
  const title = (text: string): string => (isReference(text) ? change(text) : text);
  return {
    ...chart,
    ...(chart.valueTitle === undefined ? {} : { valueTitle: title(chart.valueTitle) }),
    series: chart.series.map((series) => ({
      ...series,
      name: title(series.name),
      values: change(series.values),
      ...(series.categories === undefined ? {} : { categories: change(series.categories) }),
    })),
  };
}

/** A range where its cells are now; undefined if none is left. */
export function movedText(range: string, moves: readonly Move[]): string | undefined {
  const before = parseRange(range);
  const now = before && movedRange(before, moves);
  return now && rangeName(now);
}

function movedPrint({ area, titleRows, ...print }: PrintSetup, moves: readonly Move[]): PrintSetup {
  const [from, to] = (titleRows ?? '').split(':').map(Number);
  const rows = from && to ? movedLines('row', from - 1, to - from + 1, moves) : undefined;
  const printed = area === undefined ? undefined : movedText(area, moves);
  return {
    ...print,
    ...(printed === undefined ? {} : { area: printed }),
    ...(rows === undefined ? {} : { titleRows: `${rows[0] + 1}:${rows[0] + rows[1]}` }),
  };
}

/** The parts of a sheet where its cells are now, with the present names of sheets. */
export function movedParts(sheet: SheetData, { movesOf, nameOf }: SheetsNow): KeptParts {
  const own = nameInParts(sheet);
  const moves = movesOf(own);
  const { validations, conditions, charts, tables, print, otherCharts } = sheet;
  const named = (formula: string): string => renamedSheets(formula, nameOf);
  const rules = validations?.flatMap((rule) =>
    movedRules(rule, own, movesOf).map((now) => ({ ...rule, range: now.range, formulas: now.formulas.map(named) })),
  );
  const colors = conditions?.flatMap((condition) =>
    movedRules({ range: condition.range, formulas: [condition.formula] }, own, movesOf).map((now) => ({
      ...condition,
      range: now.range,
      formula: named(now.formulas[0] ?? ''),
    })),
  );
  const drawn = charts?.map((chart) => ({
    ...withReferences(chart, (reference) => named(movedReferences(reference, own, movesOf))),
    place: movedText(chart.place, moves) ?? chart.place,
  }));
  return {
    ...(rules === undefined ? {} : { validations: rules }),
    ...(colors === undefined ? {} : { conditions: colors }),
    ...(drawn === undefined ? {} : { charts: drawn }),
    ...(otherCharts === undefined ? {} : { otherCharts }),
    ...(tables === undefined
      ? {}
      : {
          tables: tables.flatMap((table) => {
            const range = movedText(table.range, moves);
            return range === undefined ? [] : [{ ...table, range }];
          }),
        }),
    ...(print === undefined ? {} : { print: movedPrint(print, moves) }),
  };
}

/** A workbook with the parts of all sheets where their cells are now. */
export function withMovedParts(workbook: WorkbookData): WorkbookData {
  const sheets = new Map(workbook.sheets.map((sheet) => [nameInParts(sheet).toLowerCase(), sheet]));
  const now: SheetsNow = {
    movesOf: (name) => sheets.get(name.toLowerCase())?.moves ?? [],
    nameOf: (name) => sheets.get(name.toLowerCase())?.name,
  };
  return {
    ...workbook,
    sheets: workbook.sheets.map(({ moves: _moves, ...sheet }) => ({ ...sheet, ...movedParts(sheet, now) })),
  };
}

/** The parts of a sheet for a copy of it with another name, which reads itself where the sheet read itself. */
export function copiedParts(sheet: SheetData, name: string): SheetData {
  const own = nameInParts(sheet).toLowerCase();
  const ofCopy = (formula: string): string =>
    renamedSheets(formula, (named) => (named.toLowerCase() === own ? name : undefined));
  const { validations, conditions, charts, tables, print } = sheet;
  return {
    name,
    cells: [],
    ...(validations && { validations: validations.map((rule) => ({ ...rule, formulas: rule.formulas.map(ofCopy) })) }),
    ...(conditions && { conditions: conditions.map((one) => ({ ...one, formula: ofCopy(one.formula) })) }),
    ...(charts && { charts: charts.map((chart) => withReferences(chart, ofCopy)) }),
    ...(tables && { tables }),
    ...(print && { print }),
  };
}
