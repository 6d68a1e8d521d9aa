import { cutPlanDrawing } from '../drawing/cut-plan-drawing';
import type { Drawing } from '../drawing/drawing-model';
import { drumSectionDrawing } from '../drawing/drum-section-drawing';
import { patternDrawing } from '../drawing/pattern-drawing';
import { toSvg } from '../drawing/svg';
import { conePattern } from '../formulas/cone/cone-pattern';
import { cutPlan } from '../formulas/cut/cut-plan';
import { readProfile } from '../units/profile';

const INCH = 0.0254;
const profile = readProfile('US');

const pattern = (top: number, height: number, pieces: number, lap: number) =>
  conePattern({
    top: top * INCH,
    bottom: 4 * INCH,
    height: height * INCH,
    pieces,
    lap: lap * INCH,
    thickness: 0,
    measured: 'fit',
    clearance: 0,
  });

/** The drawing behind a function's example, where people would rather look than read. */
const drawings: Readonly<Record<string, () => Drawing>> = {
  'CONE.PATTERN': () => patternDrawing({ pattern: pattern(22.5, 9.25, 1, 0.75), profile }),
  'CONE.MARKS': () => patternDrawing({ pattern: pattern(22.5, 9.25, 1, 0), profile }),
  'CUT.PLAN': () => {
    const patterns = [pattern(22.5, 9.25, 2, 0.75), pattern(20, 8, 2, 0.75), pattern(18, 7, 2, 0.75)];
    const sheet = { sheetLength: 96 * INCH, sheetWidth: 48 * INCH };
    const plan = cutPlan(patterns, { ...sheet, gap: 0.25 * INCH });
    return cutPlanDrawing({ patterns, plan, ...sheet, profile });
  },
  'TANK.PORTS': () =>
    drumSectionDrawing({
      profile,
      drumDiameter: 22.5 * INCH,
      depth: 24 * INCH,
      coneHeight: 9.25 * INCH,
      coneBottom: 4 * INCH,
      stand: 18 * INCH,
    }),
};

/** As SVG markup that takes the page's own ink; undefined where nothing is drawn. */
export function exampleDrawing(name: string): string | undefined {
  const draw = drawings[name];
  return draw && toSvg(draw(), { caption: true });
}
