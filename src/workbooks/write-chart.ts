import type { Worksheet as FileSheet } from '@cj-tech-master/excelts';
import { cellName, parseRange } from '../hosts/address';
import type { ChartData, TableData } from '../hosts/workbook-model';

const isReference = (text: string): boolean => /!\$?[A-Z]{1,3}\$?\d+/i.test(text);
/** Colors that most people with color blindness can tell apart (Okabe and Ito, 2008, "Color universal design"). */
const colors = ['0072B2', 'E69F00', '009E73', 'CC79A7', '56B4E9', 'D55E00'];

/** Text, or the cell that holds it. */
function wordsOf(text: string): string | { formula: string } {
  return isReference(text) ? { formula: text } : text;
}

/** Puts a chart that the spreadsheet draws itself onto a sheet of the file. */
export function addChart(sheet: FileSheet, chart: ChartData): void {
  const axis = (title: string | undefined, format: string | undefined) => ({
    // The library takes a cell as it does for the title of a chart, but its types know only text.
    ...(title === undefined ? {} : { title: wordsOf(title) as string }),
    ...(format === undefined ? {} : { numFmt: format, numFmtLinked: false }),
  });
  const common = {
    title: chart.title,
    showLegend: chart.series.length > 1,
    legendPosition: 'b' as const,
    categoryAxis: axis(chart.categoryTitle, chart.categoryFormat),
    valueAxis: { ...axis(chart.valueTitle, chart.valueFormat), majorGridlines: true },
  };
  const series = chart.series.map((given, index) => {
    const color = colors[index % colors.length] ?? '000000';
    const { categories, values } = given;
    // Numbers on the category axis, such as dates, must be marked as numbers, or their format is ignored.
    const areNumbers = chart.type === 'scatter' || chart.categoryFormat !== undefined;
    const source = (formula: string) => (areNumbers ? { numRef: { formula } } : formula);
    return {
      name: wordsOf(given.name),
      values,
      color,
      ...(categories === undefined ? {} : { categories: source(categories) }),
    };
  });
  if (chart.type === 'column' || chart.type === 'bar') {
    const bars = series.map(({ color, ...one }) => ({ ...one, fill: color }));
    sheet.addChart({ ...common, type: 'bar', barDir: chart.type === 'bar' ? 'bar' : 'col', series: bars }, chart.place);
  } else if (chart.type === 'line') {
    const lines = series.map(({ color, ...one }) => ({ ...one, line: color, lineWidth: 2.25 }));
    sheet.addChart({ ...common, type: 'line', showMarker: true, series: lines }, chart.place);
  } else {
    const points = series.map(({ color, categories, ...one }) => ({
      ...one,
      line: color,
      lineWidth: 1.5,
      ...(categories === undefined ? {} : { xValues: categories }),
    }));
    sheet.addChart({ ...common, type: 'scatter', scatterStyle: 'lineMarker', series: points }, chart.place);
  }
}

/** Makes the cells of a range a table; headings and rows are already in their cells. */
export function addTable(sheet: FileSheet, table: TableData): void {
  const range = parseRange(table.range);
  if (range === undefined) throw new Error(`the table ${table.name} has no range: ${table.range}`);
  const valueAt = (row: number, column: number) => sheet.getCell(range.row + row + 1, range.column + column + 1).value;
  sheet.addTable({
    name: table.name,
    ref: cellName(range.row, range.column),
    headerRow: true,
    style: { theme: 'TableStyleLight1', showRowStripes: true },
    columns: Array.from({ length: range.columns }, (_, column) => ({ name: String(valueAt(0, column) ?? '') })),
    rows: Array.from({ length: range.rows - 1 }, (_, row) =>
      Array.from({ length: range.columns }, (_, column) => valueAt(row + 1, column)),
    ),
  });
}
