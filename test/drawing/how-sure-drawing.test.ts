import { describe, expect, it } from 'vitest';
import { toPdf } from '../../src/drawing/pdf';
import { toSvg } from '../../src/drawing/svg';
import { drawingsOf } from '../../src/task-pane/drawings/drawings-of';
import { readRequest } from '../../src/task-pane/drawings/read-request';
import type { HowSureRequest } from '../../src/task-pane/drawings/request';

const range: HowSureRequest = {
  what: 'how sure',
  units: 'metric',
  title: 'How sure the plan is',
  rows: [
    ['result', 'unit', 'low', 'plan', 'high'],
    ['biomass', 'kg', 80, 80, 80],
    ['solids', 'kg/d', 0.1, 0.3, 0.5],
    ['solids in tank', 'mg/L', 2, 5, 'rises'],
    ['flow needed', 'L/min', 20, 35, 43],
    ['chance of first limit: air', '', '', 0.5, ''],
  ],
};
const drivers: HowSureRequest = {
  what: 'how sure',
  units: 'US',
  title: 'What to measure first',
  rows: [
    ['solids <share>', '', 0.04, 0.25, 0.7, 1, 3, 0.9],
    ['pad capture', '', 0.3, 0.5, 0.8, 2, 2.1, 0.05],
    ['removal', '', 0.2, 0.35, 0.6, 2, 2, 0],
    ['together', '', '', '', '', '', '', 0.05],
  ],
};

describe('how sure a plan is, drawn', () => {
  it('as a band for each result that has one', () => {
    const [drawing] = drawingsOf(range);
    const svg = drawing === undefined ? '' : toSvg(drawing, { standalone: true });
    expect(svg).toContain('0.1 kg/d to 0.5 kg/d');
    expect(svg).toContain('plan 35 L/min');
    expect(svg).not.toContain('biomass');
    expect(svg.match(/fill-opacity/g)).toHaveLength(2);
  });

  it('as bars in their rank, text from cells never being markup', () => {
    const [drawing] = drawingsOf(drivers);
    const svg = drawing === undefined ? '' : toSvg(drawing, { standalone: true });
    expect(svg).toContain('solids &lt;share&gt;');
    expect(svg.indexOf('90 %')).toBeLessThan(svg.indexOf('5 %</text>'));
    expect(svg).not.toContain('removal');
    expect(svg).not.toContain('together');
  });

  it('in the same widths as the figures say', () => {
    const [drawing] = drawingsOf(drivers);
    const widths = (drawing?.entities ?? []).flatMap((entity) =>
      entity.shape === 'area'
        ? [Math.max(...entity.boundary.map(({ x }) => x)) - Math.min(...entity.boundary.map(({ x }) => x))]
        : [],
    );
    expect((widths[0] ?? 0) / (widths[1] ?? 1)).toBeCloseTo(0.9 / 0.05, 9);
  });

  it('is saved as a PDF, and handed to a page of its own unchanged', () => {
    const [drawing] = drawingsOf(range);
    if (drawing === undefined) throw new Error('nothing was drawn');
    expect(toPdf(drawing, { paper: 'A4', fullSize: false }).slice(0, 5)).toEqual(new TextEncoder().encode('%PDF-'));
    expect(readRequest(JSON.parse(JSON.stringify(drivers)))).toEqual(drivers);
  });

  it('says why there is nothing to draw', () => {
    expect(() => drawingsOf({ ...range, rows: range.rows.slice(0, 2) })).toThrow(/nothing in it is uncertain/);
  });
});
