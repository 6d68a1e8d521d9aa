/** The tables and steps of one drum's shop sheet. */
import type { CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { cautions, weightCautions } from '../sheets/cautions';
import { figureText, lengthText, rounded } from './figure-text';
import type { PaperTable } from './paper-table';
import type { JobDrum } from './read-drums';
import type { Job } from './read-job';
import { rivetsOf } from './shopping-list';

export type Fact = readonly [label: string, value: CellScalar, kind?: Kind];

export function factsOf(job: Job, drum: JobDrum): readonly Fact[] {
  const [wallAngle = '', slant = '', inner = '', outer = '', sector = ''] = drum.patternCells;
  const [blankLength = '', blankWidth = '', , pieces = '', lap = ''] = drum.patternCells.slice(5);
  const rivets = rivetsOf(job, drum);
  const facts: readonly Fact[] = [
    ['inside diameter', drum.diameter, 'dimension'],
    ['cone height', drum.coneHeight, 'dimension'],
    ['wall angle', wallAngle, 'angle'],
    ['slant, and screed', slant, 'dimension'],
    ['inner radius', inner, 'dimension'],
    ['outer radius', outer, 'dimension'],
    ['sector angle', sector, 'angle'],
    ['blank length', blankLength, 'dimension'],
    ['blank width', blankWidth, 'dimension'],
    ['pieces', pieces, 'count'],
    ['lap', lap, 'dimension'],
    ['rivets per seam', rivets.seam, 'count'],
    ['rivets in all', rivets.all, 'count'],
    ['seat: drain bore', drum.drain, 'dimension'],
    ['bolt circle', 'of the fitting: __________'],
    ['base mix', drum.baseMix, 'bulk'],
    ['water held', drum.water, 'volume'],
    ['total mass', drum.massTotal, 'mass'],
    ['load per leg', drum.massPerLeg, 'mass'],
    ['if two legs carry all', drum.massPerLegOfTwo, 'mass'],
    ['stand', job.settings.stand, 'dimension'],
  ];
  // A cylinder has no radii and no sector angle.
  return facts.filter(([, value]) => value !== '');
}

/** The points of CONE.MARKS at the workbook's step, or at a wider step if there would be more rows than fit. */
export function marksOf(job: Job, drum: JobDrum, most = Number.POSITIVE_INFINITY): PaperTable {
  const step = Number(job.markStep) > 0 ? Number(job.markStep) : 15;
  let marks = job.call('CONE.MARKS', [drum.patternCells], step, true);
  for (let times = 2; marks.length > most + 1 && times < 9; times++) {
    marks = job.call('CONE.MARKS', [drum.patternCells], step * times, true);
  }
  const [headings = [], ...rows] = marks;
  const kinds: readonly (Kind | undefined)[] = [undefined, 'angle'];
  return {
    name: 'Marking out: measure from the lower-left corner of the blank; no giant compass needed',
    columns: headings.map((heading, i) => ({
      heading: String(heading).replace(/ \([^)]*\)$/, ''),
      ...(i === 0 ? {} : { kind: kinds[i] ?? 'dimension' }),
      share: [50, 13, 27, 27, 27, 27, 27][i] ?? 27,
    })),
    rows,
  };
}

export function portsOf(job: Job, drum: JobDrum): PaperTable {
  const above = job.si('dimension', drum.coneHeight) + job.si('dimension', job.settings.rise);
  const rows = job.call('TANK.PORTS', drum.depth, `${above} m`, job.settings.stand, false);
  return {
    name: 'Ports',
    columns: [
      { heading: 'port', share: 10 },
      { heading: 'above drum floor', share: 14, kind: 'dimension' },
      { heading: 'above ground', share: 14, kind: 'dimension' },
    ],
    rows: rows.map(([port = '', , floor = '', ground = '']) => [port, floor, ground]),
  };
}

/** Base mix of one drum: aggregate, cement, and bags to open. */
export function mixOf(job: Job, drum: JobDrum): readonly CellScalar[] {
  return job.call('CONE.MIX', drum.baseMix, ...job.mix)[0] ?? [];
}

export const leakTests: readonly string[] = [
  'before any mix, to the brim',
  'next day, level at the mark',
  'after the cure, cone in',
  'next day, level at the mark',
  'pH after leaching',
];

export function stepsOf(job: Job, drum: JobDrum): readonly string[] {
  const [, slant = '', , , , , , , pieces = 1] = drum.patternCells;
  const [aggregate = '', cement = '', bags = ''] = mixOf(job, drum);
  const mix = `${figureText(job, 'bulk', aggregate)} of light aggregate and ${figureText(job, 'mass', cement)} of cement (open ${rounded(bags)} ${bags === 1 ? 'bag' : 'bags'})`;
  return [
    `Check the pattern on paper, then cut ${rounded(pieces)} ${pieces === 1 ? 'piece' : 'equal pieces'}. Edges are sharp: wear gloves and goggles, and clamp the piece.`,
    'Test for leaks before you pour any mix. Keep clear of the stand while the drum fills.',
    `Form and rivet the cone. ${cautions.metals}`,
    `Seat the drain, bore ${lengthText(job, drum.drain)}; mark the bolt circle from the fitting itself.`,
    `Pour the base: ${mix}. Wet mix lifts a cone: fill it with water or put weights in it. ${cautions.dust}`,
    `Level the slope with a screed board of ${lengthText(job, slant)}; let it cure.`,
    `Put it on a stand ${lengthText(job, job.settings.stand)} high. ${weightCautions[job.profile.name]}`,
    'Test for leaks again. Leach with changes of water and measure pH; only then add fish.',
  ];
}
