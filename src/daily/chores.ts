export type ChoreId = 'pull' | 'test' | 'pads' | 'alkali' | 'drums' | 'air' | 'beds';

/** Something to do again and again. */
export interface Chore {
  readonly id: ChoreId;
  readonly name: string;
  /** Days. */
  readonly every: number;
  /** Due for the first time after an interval, because at the start everything is clean. */
  readonly afterInterval?: boolean;
  readonly why: string;
}

/** In the order of the list, with the intervals until the plan or the user gives others. */
export const usualChores: readonly Chore[] = [
  { id: 'pull', name: 'Pull solids', every: 1, why: 'until the water runs clear; write down the volume' },
  {
    id: 'test',
    name: 'Test the water',
    every: 7,
    why: 'temperature, pH, ammonia, nitrite, nitrate, oxygen, alkalinity',
  },
  { id: 'pads', name: 'Change the pads', every: 7, why: 'in turn, never all at once', afterInterval: true },
  { id: 'alkali', name: 'Add alkali', every: 7, why: 'dissolved first and slowly, no more than the water test allows' },
  { id: 'drums', name: 'Check drums, stand and valves', every: 30, why: 'drips, cracks, a stand that leans' },
  { id: 'air', name: 'Test the backup air', every: 30, why: 'switch off the pump in daylight and time it' },
  { id: 'beds', name: 'Clean out a plant bed', every: 90, why: 'one at a time', afterInterval: true },
];

/** Longer intervals are no chores. */
export const longest = 730;

/** What the plan or the user has set. */
export interface Schedule {
  readonly every: Readonly<Partial<Record<ChoreId, number>>>;
  /** Words of the plan, such as how much alkali. */
  readonly notes: Readonly<Partial<Record<ChoreId, string>>>;
}

export const emptySchedule: Schedule = { every: {}, notes: {} };

/** The chores at the intervals of a schedule. */
export function choresOf({ every, notes }: Schedule): readonly Chore[] {
  return usualChores.map((chore) => {
    const note = notes[chore.id];
    return {
      ...chore,
      every: every[chore.id] ?? chore.every,
      why: note === undefined ? chore.why : `${chore.why}; ${note}`,
    };
  });
}

const dayMs = 86_400_000;

/** Days as moments of universal time, so that no clock change moves them. */
const momentOf = (date: string): number => Date.parse(`${date}T00:00:00Z`);
const dateOf = (moment: number): string => new Date(moment).toISOString().slice(0, 10);

/** The first day of all on which a chore is due. */
function firstDue({ every, afterInterval = false }: Pick<Chore, 'every' | 'afterInterval'>, start: string): number {
  return momentOf(start) + (afterInterval ? every * dayMs : 0);
}

/** The first day from `today` on which a chore is due; the work begins at `start`. */
export function nextDue(chore: Pick<Chore, 'every' | 'afterInterval'>, start: string, today: string): string {
  const { every } = chore;
  const [from, now] = [firstDue(chore, start), momentOf(today)];
  if (now <= from) return dateOf(from);
  const steps = Math.ceil((now - from) / (every * dayMs));
  return dateOf(from + steps * every * dayMs);
}

/** The chores as a calendar file (iCalendar, RFC 5545), whole days each. */
export async function calendarOf(chores: readonly Chore[], start: string): Promise<string> {
  const { default: calendar, ICalEventRepeatingFreq } = await import(
    /* webpackChunkName: "daily/calendar" */ 'ical-generator'
  );
  const stamp = new Date(momentOf(start));
  const made = calendar({ name: 'Siltstead chores', prodId: '//Siltstead//chores//EN' });
  for (const chore of chores) {
    const { id, name, every, why } = chore;
    made.createEvent({
      id: `${id}-${start}@siltstead`,
      start: new Date(firstDue(chore, start)),
      stamp,
      allDay: true,
      summary: name,
      description: why,
      repeating: { freq: ICalEventRepeatingFreq.DAILY, interval: every },
    });
  }
  return made.toString();
}
