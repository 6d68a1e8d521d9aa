import type { ChartConfiguration, ChartDataset } from 'chart.js';
import type { ChartColors } from './chart-colors';
import type { PlottedChart } from './plotted-chart';

export type Kind = 'bar' | 'line' | 'scatter';
type Configuration = ChartConfiguration<Kind>;

/** Series differ by more than color. */
const marks = ['circle', 'rect', 'triangle', 'rectRot', 'star', 'cross'] as const;
const dashes = [[], [6, 3], [2, 2], [8, 3, 2, 3], [10, 4], [4, 4]];

/** Characters in a line of a label under a column, of one beside a lying bar, and of the title of an axis. */
export const longestLabel = { column: 12, bar: 24 } as const;
const longestTitle = 26;

/** Breaks words into lines, so that labels stand upright and are read whole. */
export function inLines(text: string, longest: number): string | string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + word.length < longest) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines.length > 1 ? lines : text;
}

const isSorted = (places: readonly (number | undefined)[]): boolean =>
  places.every((place, at) => at === 0 || (place ?? 0) >= (places[at - 1] ?? 0));

export function datasets(plotted: PlottedChart, colors: ChartColors): ChartDataset<Kind>[] {
  return plotted.series.map(({ name, values, across }, index): ChartDataset<Kind> => {
    const color = colors.series[index % colors.series.length] ?? colors.ink;
    if (plotted.type === 'column' || plotted.type === 'bar') {
      return {
        type: 'bar',
        label: name,
        data: values.map((value) => value ?? null),
        backgroundColor: color,
        borderColor: colors.ink,
        borderWidth: index % 2,
      };
    }
    const line = {
      label: name,
      borderColor: color,
      backgroundColor: color,
      borderWidth: 2,
      borderDash: dashes[index % dashes.length] ?? [],
      pointStyle: marks[index % marks.length] ?? 'circle',
      pointRadius: 3.5,
    };
    if (plotted.type === 'line') return { ...line, type: 'line', data: values.map((value) => value ?? null) };
    const points = values.flatMap((y, at) => {
      const x = across[at];
      return x === undefined || y === undefined ? [] : [{ x, y }];
    });
    return { ...line, type: 'scatter', data: points, showLine: isSorted(across) };
  });
}

function axisOptions(title: string, colors: ChartColors, hasLines: boolean) {
  return {
    title: { display: title !== '', text: inLines(title, longestTitle), color: colors.ink },
    ticks: { color: colors.ink },
    grid: { display: hasLines, color: colors.line },
    border: { color: colors.quiet },
  };
}

export function options(plotted: PlottedChart, colors: ChartColors): NonNullable<Configuration['options']> {
  const isScatter = plotted.type === 'scatter';
  const isLying = plotted.type === 'bar';
  const format = (shown: (value: number) => string) => (value: number | string) => shown(Number(value));
  const values = axisOptions(isLying ? plotted.valueTitle : '', colors, true);
  const categories = axisOptions(plotted.categoryTitle, colors, isScatter);
  const valueAxis = { ...values, ticks: { ...values.ticks, callback: format(plotted.formatValue) } };
  const categoryAxis = isScatter
    ? {
        ...categories,
        type: 'linear' as const,
        ticks: { ...categories.ticks, callback: format(plotted.formatCategory) },
      }
    : { ...categories, type: 'category' as const, ticks: { ...categories.ticks, autoSkip: !isLying } };
  const scales: NonNullable<NonNullable<Configuration['options']>['scales']> = isLying
    ? { x: valueAxis, y: categoryAxis }
    : { x: categoryAxis, y: valueAxis };
  return {
    animation: false,
    responsive: true,
    maintainAspectRatio: false,
    locale: 'en-US',
    indexAxis: isLying ? 'y' : 'x',
    scales,
    plugins: {
      legend: {
        display: plotted.series.length > 1,
        position: 'bottom',
        labels: { color: colors.ink, usePointStyle: plotted.type === 'line' || isScatter, boxHeight: 8 },
      },
      tooltip: {
        callbacks: {
          title: ([item]) => (isScatter || item === undefined ? '' : (plotted.categories[item.dataIndex] ?? '')),
          label: ({ dataset, parsed }) => {
            const value = isLying ? parsed.x : parsed.y;
            const shown = value === null ? '' : plotted.exactValue(value);
            return isScatter && parsed.x !== null
              ? `${plotted.formatCategory(parsed.x)}: ${shown}`
              : `${dataset.label}: ${shown}`;
          },
        },
      },
    },
  };
}
