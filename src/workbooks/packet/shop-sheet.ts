import { layoutOf, type PaperPage, sentencesAt, tableAt } from '../../drawing/paper-page';
import { patternDrawing } from '../../drawing/pattern-drawing';
import type { Paper } from '../../drawing/tiling';
import type { CellScalar } from '../../hosts/workbook-model';
import { cautions, weightCautions } from '../sheets/cautions';
import { angleText, figureText, lengthText, rounded } from './figure-text';
import type { Job, JobDrum } from './read-job';

const small = 1.85;
const usual = 2.05;
/** Numbers of marking rows to try, from the most, until the steps fit below them. */
const mostMarks = [19, 15, 12, 9, 6];

/** One page per drum to hang in the shop: what to mark, cut, rivet, bed and test, with boxes to tick. */
export function shopSheet(job: Job, drum: JobDrum, where: string, size: Paper): PaperPage {
  const tried = mostMarks.map((most) => () => withMarks(job, drum, where, size, most));
  const fitting = tried.find((page) => page().bottom >= layoutOf(size).bottom) ?? tried.at(-1);
  if (fitting === undefined) throw new RangeError('no number of marks to try');
  return fitting().page;
}

function withMarks(
  job: Job,
  drum: JobDrum,
  where: string,
  size: Paper,
  most: number,
): { readonly page: PaperPage; readonly bottom: number } {
  const { left, right, top } = layoutOf(size);
  const width = right - left;
  const drawing = patternDrawing({ pattern: drum.pattern, profile: job.profile, row: drum.row, name: drum.name });
  const head = sentencesAt({ x: left, y: top }, width, [`${drum.name}: shop sheet`], 5, true);
  const under = sentencesAt(
    { x: left, y: head.bottom },
    width,
    [`Held ${drum.held === '' ? '________' : drum.held}. ${cautions.drums}`],
    usual,
  );
  const split = left + 0.53 * width;
  const factsAt = { x: split + 3, y: under.bottom - 1 };
  const facts = tableAt(factsAt, right - factsAt.x, factsOf(job, drum), { height: usual, columns: [11, 15] });
  const pictureBottom = Math.min(facts.bottom, under.bottom - 62);
  const marks = marksOf(job, drum, most);
  const marksHead = sentencesAt(
    { x: left, y: pictureBottom - 2.5 },
    width,
    ['Marking out: measure from the lower-left corner of the blank; no giant compass needed'],
    usual,
    true,
  );
  const table = tableAt({ x: left, y: marksHead.bottom }, width, marks, {
    ...{ height: small, headed: true, columns: [38, 14, 28, 28, 28, 28, 28] },
  });
  const stepsAt = { x: left, y: table.bottom - 2.5 };
  const steps = tableAt(stepsAt, 0.64 * width, stepsOf(job, drum), { height: small, columns: [1], ticks: true });
  const testsAt = { x: left + 0.66 * width, y: stepsAt.y };
  const tests = tableAt(testsAt, 0.34 * width, leakTests, { height: small, columns: [15, 10, 10], headed: true });
  const ports = tableAt({ x: testsAt.x, y: tests.bottom - 4 }, 0.34 * width, portsOf(job, drum), {
    ...{ height: small, columns: [10, 14, 14], headed: true },
  });
  const page: PaperPage = {
    title: `${drum.name}: shop sheet`,
    where,
    primitives: [head, under, facts, marksHead, table, steps, tests, ports].flatMap(({ primitives }) => primitives),
    pictures: [{ drawing, box: { left, right: split, bottom: pictureBottom, top: under.bottom - 1 } }],
  };
  return { page, bottom: Math.min(steps.bottom, ports.bottom) };
}

function factsOf(job: Job, drum: JobDrum): readonly (readonly string[])[] {
  const [wallAngle, slant, inner, outer, sector, blankLength, blankWidth, , pieces, lap] =
    drum.patternCells as CellScalar[];
  const length = (value: CellScalar | undefined) => lengthText(job, value ?? '');
  return [
    ['inside diameter', length(drum.diameter)],
    ['cone height', length(drum.coneHeight)],
    ['wall angle', angleText(job, wallAngle ?? '')],
    ['slant, and screed', length(slant)],
    ['inner radius', length(inner)],
    ['outer radius', length(outer)],
    ['sector angle', angleText(job, sector ?? '')],
    ['blank', `${length(blankLength)} by ${length(blankWidth)}`],
    ['pieces, lap', `${rounded(pieces ?? '')}, ${length(lap)}`],
    ['rivets', rivetsOf(job, drum)],
    ['seat: drain bore', length(drum.drain)],
    ['bolt circle', 'of the fitting: __________'],
    ['base mix', figureText(job, 'bulk', drum.baseMix)],
    ['water held', figureText(job, 'volume', drum.water)],
    ['total mass, per leg', `${figureText(job, 'mass', drum.massTotal)}, ${figureText(job, 'mass', drum.massPerLeg)}`],
    ['stand', length(job.settings.stand)],
  ].filter(([, value]) => value !== '');
}

/** Rivets of one seam, and of all seams of the cone. */
export function rivetsOf(job: Job, drum: JobDrum): string {
  const [, slant = '', , , , , , , pieces = 1] = drum.patternCells;
  const [[seam = ''] = []] = job.call('CONE.RIVETS', slant, job.rivetSpacing);
  return `${rounded(seam)} per seam, ${rounded(Number(seam) * Number(pieces))} in all`;
}

/** The table of CONE.MARKS at the workbook's step, or at a wider step if the table would not fit the page. */
function marksOf(job: Job, drum: JobDrum, most: number): readonly (readonly string[])[] {
  const step = Number(job.markStep) > 0 ? Number(job.markStep) : 15;
  let marks = job.call('CONE.MARKS', [drum.patternCells], step, true);
  for (let times = 2; marks.length > most + 1 && times < 9; times++) {
    marks = job.call('CONE.MARKS', [drum.patternCells], step * times, true);
  }
  return marks.map((row, i) =>
    row.map((value, j) =>
      i === 0 || typeof value !== 'number' ? String(value) : j === 1 ? angleText(job, value) : lengthText(job, value),
    ),
  );
}

function portsOf(job: Job, drum: JobDrum): readonly (readonly string[])[] {
  const { si, profile } = job;
  const above = si('dimension', drum.coneHeight) + si('dimension', job.settings.rise);
  const floor = job.call('UNIT.READ', 'dimension', `${above} m`)[0]?.[0] ?? '';
  const rows = job.call('TANK.PORTS', drum.depth, floor, job.settings.stand, false);
  const unit = profile.units.dimension.symbol;
  return [
    ['port', `above floor (${unit})`, `above ground (${unit})`],
    ...rows.map(([port = '', , aboveFloor = '', aboveGround = '']) => [
      String(port),
      lengthText(job, aboveFloor),
      lengthText(job, aboveGround),
    ]),
  ];
}

const leakTests: readonly (readonly string[])[] = [
  ['leak test', 'date', 'no drop'],
  ['before any mix, to the brim', '', '[   ]'],
  ['next day, level at the mark', '', '[   ]'],
  ['after the cure, cone in', '', '[   ]'],
  ['next day, level at the mark', '', '[   ]'],
  ['pH after leaching', '', '[   ]'],
];

function stepsOf(job: Job, drum: JobDrum): readonly (readonly string[])[] {
  const [, slant = '', , , , , , , pieces = 1] = drum.patternCells;
  const [aggregate = '', cement = '', bags = ''] = job.call('CONE.MIX', drum.baseMix, ...job.mix)[0] ?? [];
  const mix = `${figureText(job, 'bulk', aggregate)} of light aggregate and ${figureText(job, 'mass', cement)} of cement (${rounded(bags)} ${bags === 1 ? 'bag' : 'bags'} opened)`;
  return [
    [
      `Check the pattern on paper, then cut ${rounded(pieces)} ${pieces === 1 ? 'piece' : 'equal pieces'}. Edges are sharp: wear gloves and goggles, clamp the piece.`,
    ],
    ['Leak test before you pour any mix. Stay clear of the stand while the drum fills.'],
    [`Form and rivet the cone. ${cautions.metals}`],
    [`Seat the drain, bore ${lengthText(job, drum.drain)}; mark the bolt circle from the fitting itself.`],
    [`Pour the base: ${mix}. Wet mix lifts a cone: fill it with water or put weights in it. ${cautions.dust}`],
    [`Level the slope with a screed board of ${lengthText(job, slant)}; let it cure.`],
    [`Stand ${lengthText(job, job.settings.stand)} high. ${weightCautions[job.profile.name]}`],
    ['Leak test again. Leach with changes of water and measure pH; only then add fish.'],
  ];
}
