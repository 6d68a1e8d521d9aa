import { cutPlanDrawing } from '../drawing/cut-plan-drawing';
import type { Drawing } from '../drawing/drawing-model';
import { drumSectionDrawing } from '../drawing/drum-section-drawing';
import { patternDrawing } from '../drawing/pattern-drawing';
import { toSvg } from '../drawing/svg';
import { conePattern } from '../formulas/cone/cone-pattern';
import { cutPlan } from '../formulas/cut/cut-plan';
import { functionLibrary } from '../functions/function-library';
import { drawingsOf } from '../task-pane/drawings/drawings-of';
import { recognizedScenario } from '../task-pane/drawings/recognize-scenario';
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

const wholePattern = (lap: number) => () => patternDrawing({ pattern: pattern(22.5, 9.25, 1, lap), profile });

const drums = [pattern(22.5, 9.25, 2, 0.75), pattern(20, 8, 2, 0.75), pattern(18, 7, 2, 0.75)] as const;

function planOf(patterns: readonly ReturnType<typeof pattern>[]): Drawing {
  const sheet = { sheetLength: 96 * INCH, sheetWidth: 48 * INCH };
  const plan = cutPlan(patterns, { ...sheet, gap: 0.25 * INCH });
  return cutPlanDrawing({ patterns, plan, ...sheet, profile });
}

const section = (depth: number, more: Partial<Parameters<typeof drumSectionDrawing>[0]>) =>
  drumSectionDrawing({
    profile,
    drumDiameter: 22.5 * INCH,
    depth: depth * INCH,
    coneHeight: 9.25 * INCH,
    coneBottom: 4 * INCH,
    ...more,
  });

const drumSection = () => section(24, { stand: 18 * INCH });

const farm = [
  ['scenario', 'Small farm'],
  ['fish count', 120],
  ['fish mass', '1 lb'],
  ['feeding rate', 0.015],
  ['tank volume', 550],
  ['pump flow', 12],
  ['drums', 2],
  ['drum diameter', 22.5],
  ['pads', 2],
  ['pad area', '8 ft2'],
  ['media volume', 14],
  ['water out', '60 gal'],
  ['bed area', 160],
] as const;

/** The stages of a small farm, as the pane draws a column of scenarios. */
function smallFarm(): Drawing {
  const { request } = recognizedScenario(farm, 0, 'US', 'Scenarios!A1:B13', functionLibrary);
  const [train] = drawingsOf(request);
  if (train === undefined) throw new Error('the small farm of the manual has no drawing');
  return train;
}

/** The drawing behind a function's example, with its sizes, if a picture says more than words. */
const drawings: Readonly<Record<string, () => Drawing>> = {
  'CONE.PATTERN': wholePattern(0),
  'CONE.RIVETS': wholePattern(0.75),
  'CONE.MARKS': wholePattern(0),
  'CONE.ANGLE': drumSection,
  'CONE.HEIGHT': drumSection,
  'CONE.VOLUME': drumSection,
  'CONE.BACKFILL': drumSection,
  'CUT.PLAN': () => planOf(drums),
  'CUT.SHEETS': () => planOf(drums.slice(0, 1)),
  'TANK.VOLUME': () => section(20, {}),
  'TANK.PORTS': drumSection,
  'TANK.STAND': () => section(24, { stand: 21 * INCH, container: 14 * INCH, drainDrop: 6 * INCH }),
  'PLAN.LIMIT': smallFarm,
  'PLAN.BALANCE': smallFarm,
};

/** As SVG markup that takes the page's own ink; undefined where nothing is drawn. */
export function exampleDrawing(name: string): string | undefined {
  const draw = drawings[name];
  if (draw === undefined) return undefined;
  const drawn = draw();
  const svg = toSvg(drawn, { caption: true });
  // A diagram has no scale and runs down the page.
  return drawn.fullSize ? svg : svg.replace('<svg ', '<svg class="tall" ');
}
