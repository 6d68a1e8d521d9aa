import type { Worksheet as FileSheet } from '@cj-tech-master/excelts';
import { rangeName } from '../hosts/address';
import type { ChartData, ChartSeries } from './workbook-model';

type FileChart = ReturnType<FileSheet['getCharts']>[number];
type Plot = NonNullable<FileChart['chartModel']>['chart']['plotArea'];
type Title = { readonly rawTx?: string } | undefined;

interface FileSeries {
  readonly tx?: { readonly strRef?: { readonly formula: string }; readonly value?: string };
  readonly cat?: Source;
  readonly val?: Source;
  readonly xVal?: Source;
  readonly yVal?: Source;
}
interface Source {
  readonly numRef?: { readonly formula: string };
  readonly strRef?: { readonly formula: string };
}

const reference = (source: Source | undefined): string | undefined =>
  source?.numRef?.formula ?? source?.strRef?.formula;

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function titleText(title: Title): string | undefined {
  const runs = Array.from(title?.rawTx?.matchAll(/<a:t>([^<]*)<\/a:t>/g) ?? [], (match) => match[1]);
  if (runs.length === 0) return undefined;
  return runs.join('').replace(/&(\w+);/g, (whole, name: string) => entities[name] ?? whole);
}

function typeOf(plot: Plot): ChartData['type'] | undefined {
  const group = plot.chartTypes[0];
  if (group === undefined || plot.chartTypes.length > 1) return undefined;
  if (group.type === 'bar') return group.barDir === 'bar' ? 'bar' : 'column';
  return group.type === 'line' || group.type === 'scatter' ? group.type : undefined;
}

function readSeries(series: FileSeries): ChartSeries[] {
  const values = reference(series.val ?? series.yVal);
  const categories = reference(series.cat ?? series.xVal);
  if (values === undefined) return [];
  const name = series.tx?.strRef?.formula ?? series.tx?.value ?? '';
  return [{ name, values, ...(categories === undefined ? {} : { categories }) }];
}

function placeOf(chart: FileChart): string | undefined {
  const { tl, br } = chart.range ?? {};
  if (tl === undefined || br === undefined) return undefined;
  const [row, column] = [tl.nativeRow, tl.nativeCol];
  return rangeName({ row, column, rows: Math.max(1, br.nativeRow - row), columns: Math.max(1, br.nativeCol - column) });
}

/** A chart of a kind that the model knows; undefined for any other, such as a pie. */
export function readChart(chart: FileChart): ChartData | undefined {
  const plot = chart.chartModel?.chart.plotArea;
  const type = plot === undefined ? undefined : typeOf(plot);
  const place = placeOf(chart);
  const group = plot?.chartTypes[0];
  if (plot === undefined || group === undefined || type === undefined || place === undefined) return undefined;
  const [category, value] = plot.axes;
  const words = {
    categoryTitle: titleText(category?.title),
    valueTitle: titleText(value?.title),
    categoryFormat: category?.numFmt?.sourceLinked === false ? category.numFmt.formatCode : undefined,
    valueFormat: value?.numFmt?.sourceLinked === false ? value.numFmt.formatCode : undefined,
  };
  return {
    type,
    title: typeof chart.title === 'string' ? chart.title : '',
    place,
    series: (group.series as readonly FileSeries[]).flatMap(readSeries),
    ...Object.fromEntries(Object.entries(words).filter(([, word]) => word !== undefined)),
  };
}
