import type { CellResult } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { readQuantity } from '../../units/quantity';
import { capitalized } from '../../units/text';
import { Unreadable } from '../../units/unreadable';
import { drumWidths, noSuchWidth } from '../../workbooks/sheets/cone-cut-plan/drum-widths';
import { withoutNames } from '../checks/entry-words';
import { shownFigure } from '../shown-figure';
import { typedIn, wayInUse } from './entries';
import { figure, placeRow } from './facts';
import { type FieldId, fields, heightWays, widthWays } from './fields';
import type { Job } from './job';
import type { JobCells } from './job-cells';

/** Why the job cannot go past its check. */
export interface Stop {
  /** The measurement to look at again. */
  readonly field: FieldId;
  readonly sentence: string;
}

/** What the check found: what stops the job, and what to mind. */
export interface Verdict {
  readonly stops: readonly Stop[];
  readonly notes: readonly string[];
  /** False until the sheets have calculated the drum's pattern. */
  readonly isDone: boolean;
}

/** Words of the sheets' own messages, and the field that each is about; the first that occurs counts. */
const about: readonly (readonly [words: RegExp, field: FieldId | 'width' | 'cone'])[] = [
  [/give the drum a name/i, 'name'],
  [/^(the )?girth\b/i, 'girth'],
  [/^(the )?wall\b/i, 'wall'],
  [/sheet in any rotation|^(the )?pieces|\bpieces must/i, 'pieces'],
  [/\blap\b/i, 'lap'],
  [/drain|^(the )?bottom/i, 'drain'],
  [/water/i, 'depth'],
  [/thickness/i, 'thickness'],
  [/clearance/i, 'clearance'],
  [/\bcone\b|^(the )?(height|angle)/i, 'cone'],
  [/diameter|girth|^(the )?top/i, 'width'],
];

/** Judges the drum by what its cells say. */
export function verdictOf(cells: JobCells, job: Job, profile: Profile): Verdict {
  const field = (words: string): FieldId => {
    const match = about.find(([pattern]) => pattern.test(words))?.[1] ?? 'cone';
    if (match === 'width') return wayOf(cells, job, widthWays);
    return match === 'cone' ? wayOf(cells, job, heightWays) : match;
  };
  const pattern = cells.value('patterns', `B${placeRow(cells, job)}`);
  const found = sentencesIn(cells.value('drums', `M${job.row}`));
  const checks = cells
    .rows('patterns', 'A16:A24')
    .flatMap(([line = '']) => (typeof line === 'string' && line !== '' ? [line] : []));
  const refused = checks.filter(isRefusal);
  const slant = slantStop(cells, job, profile);
  // A height that is worked out of an angle or a slant is blank while another measurement is missing.
  const isWorked = typedIn(cells, wayOf(cells, job, heightWays), job.row) !== '';
  const own = [
    ...found.filter(
      (words) =>
        (slant === undefined || !/cone|height/i.test(words)) && !(isWorked && /^give the cone’s height/i.test(words)),
    ),
    ...refused,
  ];
  // The function's own words about a figure that it was given; a height worked out of the diameter repeats them.
  const [across, height] = ['K', 'G'].map((column) => cells.value('drums', `${column}${job.row}`));
  const refusal = typeof across === 'object' ? across : height;
  if (typeof refusal === 'object' && refusal.error.message !== '') {
    const { message } = refusal.error;
    own.unshift(refusal === across ? message.replace(/^quantity/, 'diameter').replace(/^thickness/, 'wall') : message);
  }
  // The sheet cannot say this while its own formula of faults is in error.
  const width = typeof across === 'number' ? across * profile.units.dimension.scale : undefined;
  if (width !== undefined && (width < drumWidths.least || width > drumWidths.most)) own.unshift(noSuchWidth);
  // What the sheet itself found about a row says more than the function that then has no result.
  if (own.length === 0 && slant === undefined && typeof pattern === 'object') own.push(pattern.error.message);
  const stops = [
    ...(slant === undefined ? [] : [slant]),
    ...own.map((words) => stopFor(field(words), words, cells, job, profile)),
  ];
  const widthField = wayOf(cells, job, widthWays);
  // Whatever else is wrong with a drum whose width cannot be right may come from that width.
  const once = [...stops.filter(({ field }) => field === widthField), ...stops].filter(
    (stop, at, all) => all.findIndex(({ field }) => field === stop.field) === at,
  );
  return {
    stops: once,
    notes: checks.filter((line) => !isRefusal(line)),
    isDone: typeof pattern === 'number' && once.length === 0,
  };
}

function isRefusal(line: string): boolean {
  return /^The \w+ is not allowed: /.test(line) || /does not fit/.test(line);
}

function wayOf(cells: JobCells, job: Job, ways: typeof widthWays): FieldId {
  return ways.ways[wayInUse(cells, ways, job.row)]?.asks[0] ?? 'diameter';
}

/** Measurements whose advice is to measure once more. */
const again: ReadonlySet<FieldId> = new Set(['drain', 'diameter', 'girth']);

/** `Drain bore: 24 in. The drain is as wide as the drum. Measure it again: …` */
function stopFor(field: FieldId, words: string, cells: JobCells, job: Job, profile: Profile): Stop {
  const typed = shownFigure(typedIn(cells, field, job.row));
  const { kind, label } = fields[field];
  const isBare = typed !== '' && Number.isFinite(Number(typed)) && kind !== undefined && kind !== 'count';
  const given =
    typed === '' ? `${label} is empty` : `${label}: ${typed}${isBare ? ` ${profile.units[kind].symbol}` : ''}`;
  // What is missing cannot be measured again.
  const advice = typed === '' && again.has(field) ? '' : wayOut(field, cells, job, profile);
  return { field, sentence: `${given}. ${ended(reworded(words))}${advice === '' ? '' : ` ${advice}`}` };
}

/** The check speaks of a cone's top and bottom, the guide of the drum and its drain. */
function reworded(words: string): string {
  const said = withoutNames(words)
    .replace(/^The \w+ is not allowed: |^.*? is not allowed; /, '')
    .replace(/\btop \(/, 'the inside diameter (');
  return capitalized(said);
}

function ended(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}

function wayOut(field: FieldId, cells: JobCells, job: Job, profile: Profile): string {
  const across = figure(cells.value('drums', `K${job.row}`), 'dimension', profile);
  const straight = figure(cells.value('drums', `L${job.row}`), 'dimension', profile);
  const isFigure = (text: string): boolean => /^\d/.test(text);
  switch (field) {
    case 'drain':
      return isFigure(across)
        ? `Measure the hole again, not the drum: it must be less than the inside diameter, ${across}.`
        : 'Measure the hole again.';
    case 'diameter':
    case 'girth':
      return 'Measure it again, and look at the unit.';
    case 'height':
      return isFigure(straight)
        ? `A wall at 45 degrees is ${straight} high.`
        : 'Or give its angle: 45 degrees is the usual least.';
    case 'depth':
      return 'Measure from the rim of the cone up to the water line.';
    default:
      return '';
  }
}

/** A slant that is shorter than the way from the drain to the drum, which no cell has a sentence for. */
function slantStop(cells: JobCells, job: Job, profile: Profile): Stop | undefined {
  const typed = typedIn(cells, 'slant', job.row);
  if (typed === '') return undefined;
  const diameter = cells.value('drums', `K${job.row}`);
  const read = (value: CellResult): number | undefined => {
    try {
      return typeof value === 'object' || value === '' ? undefined : readQuantity(profile, 'dimension', value);
    } catch (error) {
      if (error instanceof Unreadable) return undefined;
      throw error;
    }
  };
  const [across, bore, slant] = [diameter, cells.value('drums', `F${job.row}`), typed].map(read);
  if (across === undefined || bore === undefined || slant === undefined) return undefined;
  const least = (across - bore) / 2;
  if (slant > least || least <= 0) return undefined;
  const { symbol, scale } = profile.units.dimension;
  const words = `From the drain to the drum it is ${Number((least / scale).toFixed(2))} ${symbol} on the level already: give a longer slant.`;
  return { field: 'slant', sentence: `${stopFor('slant', words, cells, job, profile).sentence}` };
}

function sentencesIn(value: CellResult): readonly string[] {
  return typeof value === 'string' ? (value.match(/[^.]+\./g) ?? []).map((one) => one.trim()) : [];
}
