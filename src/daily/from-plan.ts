/** Reads the chores' intervals from the results of a plan: rows of PLAN.COMPARE, as a spreadsheet copies them. */
import { type ResultKey, resultName } from '../catalogue/plan/scenario-results';
import { type ChoreId, longest, type Schedule } from './chores';

export interface Plan {
  /** The title of the scenario; empty if the headings were not copied. */
  readonly title: string;
  readonly schedule: Schedule;
}

/** Intervals in days: at most as long as the plan says. */
const intervals: Readonly<Partial<Record<ChoreId, ResultKey>>> = {
  pads: 'padChangeInterval',
  beds: 'bedCleaningInterval',
};

/** Amounts per day, so every day; the note says how much there is to do at a time. */
const amounts: readonly (readonly [chore: ChoreId, result: ResultKey, words: (amount: string) => string])[] = [
  ['alkali', 'alkaliPerDay', (amount) => `the plan needs ${amount} of alkali`],
  ['pull', 'slurryPerDay', (amount) => `the plan expects ${amount} of slurry`],
];

/** A number as a spreadsheet shows it, with commas for thousands or one for the decimals. */
function numberIn(text: string): number | undefined {
  const plain = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)
    ? text.replaceAll(',', '')
    : text.replace(/^(\d+),(\d+)$/, '$1.$2');
  return plain === '' || !Number.isFinite(Number(plain)) ? undefined : Number(plain);
}

/** One plan per column of figures; throws a sentence if there is none. */
export function plansIn(text: string): readonly Plan[] {
  const rows = text.split(/\r?\n/).map((line) => line.split('\t').map((cell) => cell.trim()));
  const byName = new Map(rows.map(([name = '', unit = '', ...values]) => [name.toLowerCase(), { unit, values }]));
  const known = [...Object.values(intervals), ...amounts.map(([, key]) => key)].flatMap((key) => {
    const row = byName.get(resultName(key).toLowerCase());
    return row === undefined ? [] : [row];
  });
  const columns = Math.max(0, ...known.map(({ values }) => values.length));
  if (columns === 0) {
    throw new Error(
      `No plan is in this text: copy the sheet Compare from column A on, with the row “${resultName('padChangeInterval')}”.`,
    );
  }
  const titles = rows.find(([name]) => name === 'result')?.slice(2) ?? [];
  return Array.from({ length: columns }, (_, column) => ({
    title: titles[column] ?? '',
    schedule: scheduleOf((key) => {
      const row = byName.get(resultName(key).toLowerCase());
      const value = numberIn(row?.values[column] ?? '');
      return value === undefined ? undefined : { value, unit: row?.unit ?? '' };
    }),
  }));
}

function scheduleOf(figure: (key: ResultKey) => { value: number; unit: string } | undefined): Schedule {
  const every: Partial<Record<ChoreId, number>> = {};
  const notes: Partial<Record<ChoreId, string>> = {};
  for (const [chore, key] of Object.entries(intervals) as [ChoreId, ResultKey][]) {
    const days = figure(key)?.value;
    if (days === undefined) continue;
    every[chore] = Math.min(longest, Math.max(1, Math.floor(days)));
    if (days < 1) notes[chore] = `they are full in ${Number(days.toPrecision(2))} days: plan for more of them`;
  }
  for (const [chore, key, words] of amounts) {
    const found = figure(key);
    if (found === undefined || found.value <= 0) continue;
    // What is used up per day is replaced per day: within a week without alkali, the alkalinity of most tanks is gone.
    every[chore] = 1;
    const unit = found.unit.replace(/\/d$/, '');
    notes[chore] = words(`${Number(found.value.toPrecision(3))} ${unit} a day`);
  }
  return { every, notes };
}
