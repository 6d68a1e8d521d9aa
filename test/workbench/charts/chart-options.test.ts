import { describe, expect, it } from 'vitest';
import type { ChartData } from '../../../src/hosts/workbook-model';
import { onPaper } from '../../../src/workbench/charts/chart-colors';
import { inLines, longestLabel, options } from '../../../src/workbench/charts/chart-options';
import { plotChart } from '../../../src/workbench/charts/plotted-chart';

const place = 'A1:D8';
const plotted = (type: ChartData['type']) => {
  const series = [{ name: 'solids', values: 'A!A1:A2' }];
  return plotChart({ type, title: 'Solids', series, valueTitle: 'lb per day', place }, () => [1, 2]);
};

describe('the axes of a chart', () => {
  it.each(['column', 'line', 'scatter'] as const)('have no turned title beside a %s chart', (type) => {
    expect(options(plotted(type), onPaper).scales?.y?.title?.display).toBe(false);
  });

  it('name every lying bar in one line, and what its length is below it', () => {
    const { scales } = options(plotted('bar'), onPaper);
    expect(scales?.y?.ticks).toMatchObject({ autoSkip: false });
    expect(scales?.x).toMatchObject({ title: { display: true, text: 'lb per day' } });
    expect(inLines('share of solids', longestLabel.bar)).toBe('share of solids');
  });
});
