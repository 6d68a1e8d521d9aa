import { describe, expect, test } from 'vitest';
import { callResult, formatDate, formatValue, withResults } from '../../../src/manual/guide/formula-result';
import { guidePages } from '../../../src/manual/guide/guide-pages';
import { steps } from '../../../src/manual/guide/steps';
import { readyMade } from '../../../src/workbooks/sheets/ready-made';

describe('the guide', () => {
  const pages = guidePages();

  test('has a page for each of twelve to fifteen steps, and one that lists them', () => {
    expect(steps.length).toBeGreaterThanOrEqual(12);
    expect(steps.length).toBeLessThanOrEqual(15);
    expect(new Set(pages.map(([path]) => path)).size).toBe(steps.length + 1);
  });

  test('shows no figure that a function does not give', () => {
    for (const { slug, calls } of steps) {
      const [, html = ''] = pages.find(([path]) => path === `guide/${slug}.html`) ?? [];
      expect(calls.length, slug).toBeGreaterThan(0);
      for (const { formula, column, table, unit } of calls) {
        const result = table ? callResult(formula).at(-1)?.[0] : callResult(formula)[0]?.[column ?? 0];
        expect(result, formula).not.toBe('');
        const words = unit === 'date' ? formatDate(result) : formatValue(result);
        expect(html).toContain(table ? formatValue(result, 4) : `<strong>${words}`);
      }
    }
  });

  test('has no figure in its sentences but what a call gives or a user types', () => {
    for (const { what, why, sheet, wrong, cautions } of steps) {
      for (const text of [what, ...why, sheet, ...wrong, ...cautions]) {
        if (text.startsWith('A full drum weighs')) continue;
        expect(text.replace(/`[^`]*`|\{[^}]*\}/g, '')).not.toMatch(/\d/);
      }
    }
    expect(withResults('wait {=SILT.REF.VALUE("metric","wait, touching soil")} days')).toBe('wait 120 days');
  });

  test('asks its questions about the figures of their formulas', () => {
    for (const { say, formula } of steps.flatMap(({ calls }) => calls)) {
      const given = (formula.match(/\d+(\.\d+)?/g) ?? []).map(Number);
      for (const [, whole = 0, above = 0, below = 1, plain = 0] of say.matchAll(
        /(?:\b(\d+) )?\b(\d+)\/(\d+)|\b(\d+(?:\.\d+)?)\b/g,
      )) {
        const figure = Number(whole) + Number(above) / Number(below) + Number(plain);
        // Per cent, feet in inches and grams in kilograms are typed in the formula's own unit.
        const typed = [figure, figure / 100, figure * 12, figure / 1000];
        expect(
          typed.some((one) => given.some((other) => Math.abs(one - other) < 1e-9)),
          `${figure} of "${say}" in ${formula}`,
        ).toBe(true);
      }
    }
  });

  test('names only workbooks, sheets and inputs that there are', () => {
    const sheets = new Map(
      readyMade.map(({ id, build }) => [id, build('metric').sheets.map((sheet) => sheet.name)] as const),
    );
    const inputs = callResult('=SILT.PLAN.INPUTS("metric")').map(([name]) => name);
    for (const { slug, sheet } of steps) {
      const named = [...sheet.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)].map(([, file = '']) => file);
      for (const file of named) expect([...sheets.keys()], slug).toContain(file);
      for (const [, input] of sheet.matchAll(/`([a-z]+ [a-z]+)`/g)) expect(inputs, slug).toContain(input);
    }
    // A step that has a figure measured names the function that reads it, unless a workbook has a sheet for it.
    const ownSheets = (sheets.get('own-figures') ?? []).join(' ');
    for (const [slug, call] of [
      ['run-the-settler', 'SETTLE.JAR'],
      ['pads-and-filter', 'SCREEN.HOLDING'],
    ] as const) {
      const step = steps.find((one) => one.slug === slug);
      expect(step?.sheet).toContain(call);
      expect(step?.calls.some(({ formula }) => formula.includes(call))).toBe(true);
      expect(step?.sheet).not.toContain('own-figures');
    }
    expect(ownSheets).not.toMatch(/jar|pad/i);
  });

  test('weighs base mix as light as base mix is', () => {
    const [, , baseMix, density] =
      /TANK\.WEIGHT\("US",(\d+),([\d.]+),([^,]+),/.exec(
        steps.flatMap(({ calls }) => calls.map((c) => c.formula)).join(),
      ) ?? [];
    const range = (which: string) => Number(callResult(`=SILT.REF.VALUE("US","base density","${which}")`)[0]?.[0]);
    expect(Number(baseMix)).toBeGreaterThan(0);
    expect(Number(density)).toBeGreaterThanOrEqual(range('low'));
    expect(Number(density)).toBeLessThanOrEqual(range('high'));
  });

  test('says what a cone that was cut wrong still fits', () => {
    const [, html = ''] = pages.find(([path]) => path === 'guide/cut.html') ?? [];
    const angle = Number(/cut at (\d+) degrees instead/.exec(html)?.[1]);
    const [rim, foot, height] = (/rim ([\d.]+) in, foot ([\d.]+) in, height ([\d.]+) in/.exec(html) ?? [])
      .slice(1)
      .map(Number);
    // The arcs of the piece are the circles of rim and foot, and its width is the slant.
    const [, slant, inner, outer] = (callResult('=SILT.CONE.PATTERN("US",22.5,4,9.25,1,0.75)')[0] ?? []).map(Number);
    expect((Math.PI * (rim ?? 0)) / ((2 * Math.PI * (outer ?? 1) * angle) / 360)).toBeCloseTo(1, 3);
    expect((foot ?? 0) / (rim ?? 1)).toBeCloseTo((inner ?? 0) / (outer ?? 1), 3);
    expect(Math.hypot(height ?? 0, ((rim ?? 0) - (foot ?? 0)) / 2)).toBeCloseTo(slant ?? 0, 2);
    expect(html).toContain(`<strong>${angle} degrees</strong>`);
  });

  test('has an answer where there is no web host, and a class kit with one impossible reading', () => {
    const [, html = ''] = pages.find(([path]) => path === 'guide/teach.html') ?? [];
    for (const words of ['No web host at hand', 'school’s own server', 'python3 -m http.server', 'the leak-test log']) {
      expect(html).toContain(words);
    }
    // 72 in around is 72 / pi across, which is less than 29 in.
    expect(html).toContain(`a bore of ${formatValue(72 / Math.PI)} in at most`);
    expect(html).toContain('Sedge: 45 degrees');
  });

  test('knows what a cone of 45 degrees is, by geometry', () => {
    expect(callResult('=SILT.CONE.ANGLE("US",22.5,4,9.25)')).toEqual([[45]]);
    expect(callResult('=SILT.CONE.HEIGHT("US",22.5,4,45)')[0]?.[0]).toBeCloseTo(9.25, 10);
    // A tape of 72 in round the outside: 72 / pi less two walls of 1/8 in.
    expect(callResult('=SILT.TANK.GIRTH("US",72,0.125)')[0]?.[0]).toBeCloseTo(72 / Math.PI - 0.25, 10);
  });

  test('shows whole numbers whole and others with three digits', () => {
    expect([formatValue(46263), formatValue(22.668312), formatValue(0.0294402), formatValue('a < b')]).toEqual([
      '46263',
      '22.7',
      '0.0294',
      'a &lt; b',
    ]);
  });
});
