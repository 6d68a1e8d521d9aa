/** What to buy for all drums of a job, in packs with costs if the workbook has prices. */
import type { MixedCell } from '../../catalogue/argument';
import { partsOfDrum } from '../../catalogue/plan/plan-parts';
import { ArgumentError } from '../../catalogue/reading/argument-error';
import type { CellScalar } from '../../hosts/workbook-model';
import { toProfile } from '../../units/quantity';
import { figureText, lengthText } from './figure-text';
import { PacketMistake } from './packet-cells';
import type { PaperTable } from './paper-table';
import type { JobDrum } from './read-drums';
import type { Job } from './read-job';

export interface ShoppingList {
  readonly table: PaperTable;
  readonly notes: readonly string[];
}

interface Item {
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  readonly what: string;
}

export const withoutPrices =
  'For packs, costs and a total, insert the ready-made Materials sheets into the workbook and type your shop’s prices on the sheet Prices.';

const wording: Readonly<Record<string, string>> = {
  'bedding mortar': 'thin coat under the cones',
  sealant: 'rims, drains and seams; safe for fish, and tested on polyethylene',
  pipe: 'ports, drain drops and two headers; measure your own',
  'stand posts': 'legs of all stands',
  'stand tops': 'for each drum, a square as wide as the drum',
  'drain fittings': 'one per drum; see its bore on the shop sheet',
  'drain valves': 'no zinc, brass or copper',
  unions: 'so that you can take a drum out',
};

export function shoppingList(job: Job): ShoppingList {
  const { items, notes } = itemsOf(job);
  if (job.prices === undefined) return { table: table(items, new Map()), notes: [...notes, withoutPrices] };
  try {
    const lines = job.call(
      'COST.LINES',
      items.map(({ item, quantity, unit }) => [item, quantity, unit]),
      job.prices.rows,
      job.prices.allowance,
      false,
    );
    const bought = new Map(lines.map(([item = '', ...rest]) => [String(item), rest]));
    const [words = '', , , total = ''] = lines.at(-1) ?? [];
    return { table: table(items, bought, [words, '', '', '', total, '']), notes };
  } catch (error) {
    if (!(error instanceof PacketMistake)) throw error;
    return { table: table(items, new Map()), notes: [...notes, `No costs: ${error.message}`] };
  }
}

function table(
  items: readonly Item[],
  bought: ReadonlyMap<string, readonly CellScalar[]>,
  total?: readonly CellScalar[],
): PaperTable {
  return {
    name: 'To buy',
    ticks: true,
    footed: total !== undefined,
    columns: [
      { heading: 'item', share: 22 },
      { heading: 'needed', share: 9, kind: 'number' },
      { heading: 'unit', share: 7 },
      { heading: 'packs', share: 9, kind: 'number' },
      { heading: 'cost', share: 10, kind: 'money' },
      { heading: 'what', share: 50 },
    ],
    rows: [
      ...items.map(({ item, quantity, unit, what }) => {
        const [needed = quantity, packs = '', cost = ''] = bought.get(item) ?? [];
        return [item, needed, unit, packs, cost, what];
      }),
      ...(total === undefined ? [] : [total]),
    ],
  };
}

function itemsOf(job: Job): { readonly items: readonly Item[]; readonly notes: readonly string[] } {
  const { sheetLength, sheetWidth, thickness } = job.settings;
  const size = `${lengthText(job, sheetLength)} by ${lengthText(job, sheetWidth)}, ${lengthText(job, thickness)} thick`;
  const [sheets = 0, , , share = 0] = job.sheets;
  const [aggregate = 0, cement = 0, bags = 0] = job.toBuy.values;
  const { parts, notes } = fittingsOf(job);
  const rivets = job.drums.reduce((sum, drum) => sum + rivetsOf(job, drum).all, 0);
  const own = job.prices?.own ?? [];
  return {
    items: [
      {
        ...{ item: 'sheet for cones', quantity: Number(sheets), unit: 'sheet' },
        what: `${size}; ${Math.round(Number(share) * 100)} % used`,
      },
      {
        ...{ item: 'rivets', quantity: rivets, unit: 'each' },
        what: `at most ${lengthText(job, job.rivetSpacing)} apart; a metal that is safe for fish`,
      },
      {
        ...{ item: 'base mix aggregate', quantity: Number(aggregate), unit: job.profile.units.bulk.symbol },
        what: 'light aggregate for all drums, with spills',
      },
      {
        ...{ item: 'base mix cement', quantity: Number(bags), unit: 'bag' },
        what: `${figureText(job, 'mass', cement)} in all`,
      },
      ...parts,
      { item: 'pail', quantity: 1, unit: 'each', what: 'one for all drums' },
      ...own.map(([item = '', quantity = 0, unit = '']) => ({
        ...{ item: String(item), quantity: Number(quantity), unit: String(unit) },
        what: 'your own: see Materials',
      })),
    ],
    notes,
  };
}

/** Fittings, mortar, sealant and stands, as PLAN.PARTS counts them for each drum, added up. */
function fittingsOf(job: Job): { readonly parts: readonly Item[]; readonly notes: readonly string[] } {
  const parts = new Map<string, Item>();
  const notes: string[] = [];
  for (const drum of job.drums) {
    try {
      for (const { item, quantity, unit, how } of partsOfDrum(bankOf(job, drum), job.profile)) {
        const before = parts.get(item)?.quantity ?? 0;
        const what = wording[item] ?? (typeof how === 'object' && 'text' in how ? how.text : '');
        parts.set(item, { item, quantity: before + inProfile(job, quantity), unit, what });
      }
    } catch (error) {
      if (!(error instanceof ArgumentError)) throw error;
      notes.push(`Fittings and stand of ${drum.name} are not counted: ${error.message}`);
    }
  }
  parts.delete('pail');
  return { parts: [...parts.values()], notes };
}

function inProfile({ profile }: Job, quantity: MixedCell): number {
  return typeof quantity === 'object' && 'si' in quantity
    ? toProfile(profile, quantity.kind, quantity.si)
    : Number(quantity);
}

/** A drum as a bank of one. */
function bankOf(job: Job, drum: JobDrum): readonly (readonly CellScalar[])[] {
  const { si, settings, rivetSpacing } = job;
  const [, , , , , , , , pieces = 1, lap = 0] = drum.patternCells;
  const filled = [drum.depth, drum.coneHeight, settings.rise].reduce<number>(
    (sum, part) => sum + si('dimension', part),
    0,
  );
  return [
    ['drums', 1],
    ['drum diameter', drum.diameter],
    ['drum height', `${filled} m`],
    ['cone bottom', drum.drain],
    ['cone height', drum.coneHeight],
    ['pieces', pieces],
    ['lap', lap],
    ['thickness', settings.thickness],
    ['rivet spacing', rivetSpacing],
    ['sheet length', settings.sheetLength],
    ['sheet width', settings.sheetWidth],
    ['gap', settings.gap],
    ['base rise', settings.rise],
    ['container height', settings.pail],
    ['drain drop', settings.drop],
    ['legs', settings.legs],
    ...job.plumbing,
  ];
}

/** Rivets of one seam, and of all seams of the cone. */
export function rivetsOf(job: Job, drum: JobDrum): { readonly seam: number; readonly all: number } {
  const [, slant = '', , , , , , , pieces = 1] = drum.patternCells;
  const [[seam = 0] = []] = job.call('CONE.RIVETS', slant, job.rivetSpacing);
  return { seam: Number(seam), all: Number(seam) * Number(pieces) };
}
