import type { Worksheet as FileSheet } from '@cj-tech-master/excelts';
import type { PrintSetup, SheetData, TableData, Validation } from '../hosts/workbook-model';
import type { SheetCharts } from './reading/chart-parts';
import { typedFormula } from './typed-formula';
import { serial } from './xlsx-date';
import { readConditionStyle } from './xlsx-style';

/** A formula inside a rule, without `=`; a date is its serial number. */
function ruleFormula(formula: unknown): string {
  return formula instanceof Date ? String(serial(formula)) : typedFormula(String(formula)).slice(1);
}

function withoutEmpty<T extends object>(parts: T): Partial<T> {
  return Object.fromEntries(
    Object.entries(parts).filter(([, part]) => part !== undefined && part !== ''),
  ) as Partial<T>;
}

function readValidations(sheet: FileSheet): Validation[] {
  return Object.entries(sheet.dataValidations.model).flatMap(([address, rule]): Validation[] => {
    if (rule === undefined || rule.type === 'any') return [];
    return [
      {
        range: address.replace(/^range:/, ''),
        type: rule.type,
        formulas: (rule.formulae ?? []).map(ruleFormula),
        ...withoutEmpty({
          operator: rule.type === 'list' || rule.type === 'custom' ? undefined : rule.operator,
          allowBlank: rule.allowBlank === true,
          promptTitle: rule.promptTitle,
          prompt: rule.prompt,
          errorTitle: rule.errorTitle,
          error: rule.error,
          errorStyle: rule.errorStyle as Validation['errorStyle'],
        }),
      } as Validation,
    ];
  });
}

function readConditions(sheet: FileSheet): NonNullable<SheetData['conditions']> {
  return (sheet.conditionalFormattings ?? []).flatMap(({ ref, rules }) =>
    rules.flatMap((rule) => {
      if (rule.type !== 'expression' || rule.formulae?.[0] === undefined) return [];
      const formula = typedFormula(String(rule.formulae[0]));
      return [{ range: ref, formula, style: readConditionStyle(rule.style) }];
    }),
  );
}

function readPrint(sheet: FileSheet): PrintSetup | undefined {
  // A sheet that was read has only what its file has.
  const { pageSetup, headerFooter }: Partial<Pick<FileSheet, 'pageSetup' | 'headerFooter'>> = sheet;
  const print = withoutEmpty({
    landscape: pageSetup?.orientation === 'landscape' || undefined,
    paper: pageSetup?.paperSize as number | undefined,
    fitToWidth: pageSetup?.fitToPage ? pageSetup?.fitToWidth : undefined,
    fitToHeight: pageSetup?.fitToPage ? pageSetup?.fitToHeight : undefined,
    area: pageSetup?.printArea,
    titleRows: pageSetup?.printTitlesRow,
    header: headerFooter?.oddHeader,
    footer: headerFooter?.oddFooter,
  });
  return Object.keys(print).length === 0 ? undefined : (print as PrintSetup);
}

function readTables(sheet: FileSheet): TableData[] {
  return sheet.getTables().flatMap((table): TableData[] => {
    const model = table.model;
    const range = model?.tableRef ?? model?.ref;
    return range === undefined ? [] : [{ name: model.name, range }];
  });
}

/** What a sheet has besides its cells: rules, print setup, tables, charts. */
export function readSheetParts(sheet: FileSheet, charts: SheetCharts | undefined): Partial<SheetData> {
  const lists = {
    validations: readValidations(sheet),
    conditions: readConditions(sheet),
    tables: readTables(sheet),
    charts: charts?.charts ?? [],
    otherCharts: charts?.otherCharts ?? [],
  };
  const print = readPrint(sheet);
  return {
    ...Object.fromEntries(Object.entries(lists).filter(([, list]) => list.length > 0)),
    ...(print === undefined ? {} : { print }),
  };
}
