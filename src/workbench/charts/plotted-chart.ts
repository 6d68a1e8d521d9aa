import { numfmt } from '@univerjs/core';
import { splitSheet } from '../../hosts/address';
import type { CellResult, ChartData } from '../../hosts/workbook-model';

/** One series as it is plotted; a value is missing where its cell holds no number. */
export interface PlottedSeries {
  readonly name: string;
  readonly values: readonly (number | undefined)[];
  /** Places along the horizontal axis, of a scatter chart only. */
  readonly across: readonly (number | undefined)[];
  /** What each cell shows, for the table of numbers. */
  readonly shown: readonly string[];
}

/** A chart with the numbers of its cells. */
export interface PlottedChart {
  readonly type: ChartData['type'];
  readonly title: string;
  readonly categories: readonly string[];
  readonly series: readonly PlottedSeries[];
  readonly categoryTitle: string;
  readonly valueTitle: string;
  readonly formatCategory: (value: number) => string;
  /** For the axis. */
  readonly formatValue: (value: number) => string;
  /** For one number by itself, which needs more digits than an axis. */
  readonly exactValue: (value: number) => string;
  /** References without cells, for example because their sheet was removed. */
  readonly missing: readonly string[];
}

/** The cells of a reference in their order, row by row; undefined where there are none. */
export type ReadCells = (reference: string) => readonly CellResult[] | undefined;

const isReference = (text: string): boolean => splitSheet(text).sheet !== undefined;

function formatter(pattern: string | undefined): (value: number) => string {
  if (pattern === undefined || pattern === 'General') return (value) => String(Number(value.toPrecision(6)));
  return (value) => {
    try {
      return numfmt.format(pattern, value);
    } catch {
      return String(value);
    }
  };
}

function exactly(pattern: string | undefined): (value: number) => string {
  if (pattern?.includes('%')) return formatter('0.0%');
  return (value) => value.toLocaleString('en-US', { maximumSignificantDigits: 4 });
}

function textOf(cell: CellResult, format: (value: number) => string): string {
  if (typeof cell === 'object') return cell.error.code;
  return typeof cell === 'number' ? format(cell) : String(cell);
}

const numberIn = (cell: CellResult | undefined): number | undefined => (typeof cell === 'number' ? cell : undefined);

/** Combines the model of a chart from a file with the present values of its cells. */
export function plotChart(chart: ChartData, read: ReadCells): PlottedChart {
  const missing: string[] = [];
  const cellsOf = (reference: string | undefined): readonly CellResult[] => {
    if (reference === undefined) return [];
    const cells = read(reference);
    if (cells === undefined) missing.push(reference);
    return cells ?? [];
  };
  const exactValue = exactly(chart.valueFormat);
  const formatCategory = formatter(chart.categoryFormat);
  const wordsOf = (text: string): string =>
    isReference(text)
      ? cellsOf(text)
          .map((cell) => textOf(cell, formatCategory))
          .join(' ')
      : text;
  const series = chart.series.map((given, index): PlottedSeries => {
    const cells = cellsOf(given.values);
    const along = chart.type === 'scatter' ? cellsOf(given.categories) : [];
    // If the categories of a file are missing or are words, points are counted from 1.
    const isCounted = !along.some((cell) => typeof cell === 'number');
    return {
      name: wordsOf(given.name) || `Series ${index + 1}`,
      values: cells.map(numberIn),
      across: chart.type !== 'scatter' ? [] : cells.map((_, at) => (isCounted ? at + 1 : numberIn(along[at]))),
      shown: cells.map((cell) => textOf(cell, exactValue)),
    };
  });
  const named = cellsOf(chart.series.find(({ categories }) => categories !== undefined)?.categories);
  const longest = Math.max(0, ...series.map(({ values }) => values.length));
  return {
    type: chart.type,
    title: chart.title || (series.length === 1 ? (series[0]?.name ?? '') : '') || 'Chart without a title',
    categories: Array.from({ length: longest }, (_, at) => {
      const cell = named[at];
      return cell === undefined ? String(at + 1) : textOf(cell, formatCategory);
    }),
    series,
    categoryTitle: chart.categoryTitle ?? '',
    valueTitle: wordsOf(chart.valueTitle ?? ''),
    formatCategory,
    formatValue: formatter(chart.valueFormat),
    exactValue,
    missing,
  };
}
