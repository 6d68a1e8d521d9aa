/** Draws charts by Chart.js. This file and the library are loaded when a sheet with a chart is first shown. */
import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  Legend,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  ScatterController,
  Tooltip,
} from 'chart.js';
import type { ChartColors } from './chart-colors';
import { datasets, inLines, type Kind, longestLabel, options } from './chart-options';
import type { PlottedChart } from './plotted-chart';

Chart.register(BarController, BarElement, CategoryScale, Legend, LinearScale, LineController, LineElement);
Chart.register(PointElement, ScatterController, Tooltip);

export interface DrawnChart {
  readonly show: (plotted: PlottedChart, colors: ChartColors) => void;
  /** Draws with more dots per pixel for paper, or with those of the screen. */
  readonly sharpen: (isPrinting: boolean) => void;
  /** The numbers of each series, read back from the places of their marks on the canvas. */
  readonly readBack: () => (number | undefined)[][];
  readonly remove: () => void;
}

/** The width of a chart in print, without its frame: see charts.css. */
const widthOnPaper = 378;

const kinds = { column: 'bar', bar: 'bar', line: 'line', scatter: 'scatter' } as const;

export function drawChart(canvas: HTMLCanvasElement, first: PlottedChart, colors: ChartColors): DrawnChart {
  const data = (plotted: PlottedChart, inColors: ChartColors) => ({
    labels: plotted.categories.map((name) => inLines(name, longestLabel[plotted.type === 'bar' ? 'bar' : 'column'])),
    datasets: datasets(plotted, inColors),
  });
  const chart = new Chart<Kind>(canvas, {
    type: kinds[first.type],
    data: data(first, colors),
    options: options(first, colors),
  });
  return {
    show: (plotted, inColors) => {
      chart.data = data(plotted, inColors);
      chart.options = options(plotted, inColors);
      chart.update('none');
    },
    sharpen: (isPrinting) => {
      const ratio = isPrinting ? Math.max(3, window.devicePixelRatio) : undefined;
      if (ratio === undefined) delete chart.options.devicePixelRatio;
      else chart.options.devicePixelRatio = ratio;
      // The page asks for this before it has the width of paper.
      if (isPrinting) chart.resize(widthOnPaper, chart.height);
      else chart.resize();
    },
    readBack: () => {
      const isLying = chart.options.indexAxis === 'y';
      const scale = chart.scales[isLying ? 'x' : 'y'];
      return chart.data.datasets.map(({ data }, index) =>
        chart.getDatasetMeta(index).data.map((mark, at) => {
          const place = isLying ? mark.x : mark.y;
          return data[at] === null ? undefined : scale?.getValueForPixel(place);
        }),
      );
    },
    remove: () => chart.destroy(),
  };
}
