import { parseRange, splitSheet } from '../address';
import type { ChartData, SheetData } from '../workbook-model';
import { supports } from './run';
import { rangeAt } from './sheet-styles';

const chartTypes = {
  column: 'ColumnClustered',
  bar: 'BarClustered',
  line: 'Line',
  scatter: 'XYScatter',
} as const;

/** Draws the charts of a sheet after every cell is filled. */
export function putCharts(context: Excel.RequestContext, worksheet: Excel.Worksheet, { charts = [] }: SheetData): void {
  for (const data of charts) putChart(context, worksheet, data);
}

function putChart(context: Excel.RequestContext, worksheet: Excel.Worksheet, data: ChartData): void {
  const first = data.series[0];
  if (first === undefined) return;
  const chart = worksheet.charts.add(chartTypes[data.type], referred(context, worksheet, first.values), 'Auto');
  chart.title.text = data.title;
  const place = parseRange(data.place);
  if (place !== undefined) {
    const last = worksheet.getCell(place.row + place.rows - 1, place.column + place.columns - 1);
    chart.setPosition(worksheet.getCell(place.row, place.column), last);
  }
  data.series.forEach((series, at) => {
    const drawn = at === 0 ? chart.series.getItemAt(0) : chart.series.add();
    drawn.setValues(referred(context, worksheet, series.values));
    if (series.categories !== undefined) drawn.setXAxisValues(referred(context, worksheet, series.categories));
    drawn.name = series.name.includes('!') ? `=${series.name}` : series.name;
  });
  if (data.categoryTitle !== undefined) chart.axes.categoryAxis.title.text = data.categoryTitle;
  if (data.valueTitle !== undefined) putTitle(chart.axes.valueAxis.title, data.valueTitle);
  if (supports('1.8')) {
    if (data.valueFormat !== undefined) chart.axes.valueAxis.numberFormat = data.valueFormat;
    if (data.categoryFormat !== undefined) chart.axes.categoryAxis.numberFormat = data.categoryFormat;
  }
}

/** A title in a cell needs a newer Excel; an older one shows the axis without it. */
function putTitle(title: Excel.ChartAxisTitle, words: string): void {
  if (!words.includes('!')) title.text = words;
  else if (supports('1.12')) title.setFormula(`=${words}`);
}

function referred(context: Excel.RequestContext, worksheet: Excel.Worksheet, reference: string): Excel.Range {
  const { sheet, rest } = splitSheet(reference);
  return rangeAt(sheet === undefined ? worksheet : context.workbook.worksheets.getItem(sheet), rest);
}
