/** A thing to do again and again. */
export interface Chore {
  readonly name: string;
  /** Days. */
  readonly every: number;
  readonly why: string;
}

export const usualChores: readonly Chore[] = [
  { name: 'Pull solids', every: 1, why: 'until the water runs clear; write down the volume' },
  { name: 'Test the water', every: 7, why: 'temperature, pH, ammonia, nitrite, nitrate, oxygen, alkalinity' },
  { name: 'Change a pad', every: 7, why: 'in turn, never all at once; your plan gives the interval' },
  { name: 'Add alkali', every: 7, why: 'dissolved first and slowly, as much as the water test shows is needed' },
  { name: 'Check drums, stand and valves', every: 30, why: 'drips, cracks, a stand that leans' },
  { name: 'Test the backup air', every: 30, why: 'switch off the pump in daylight and time it' },
  { name: 'Clean out a plant bed', every: 90, why: 'one at a time; your plan gives the interval' },
];

const dayMs = 86_400_000;

/** Days as moments of universal time, so that no clock change moves them. */
const momentOf = (date: string): number => Date.parse(`${date}T00:00:00Z`);
const dateOf = (moment: number): string => new Date(moment).toISOString().slice(0, 10);

/** The first day from `today` on at which a chore that began at `start` is due. */
export function nextDue({ every }: Chore, start: string, today: string): string {
  const [from, now] = [momentOf(start), momentOf(today)];
  if (now <= from) return start;
  const steps = Math.ceil((now - from) / (every * dayMs));
  return dateOf(from + steps * every * dayMs);
}

/** The chores as a calendar file (iCalendar, RFC 5545), whole days each. */
export async function calendarOf(chores: readonly Chore[], start: string): Promise<string> {
  const { default: calendar, ICalEventRepeatingFreq } = await import(
    /* webpackChunkName: "daily/calendar" */ 'ical-generator'
  );
  const first = new Date(momentOf(start));
  const made = calendar({ name: 'Siltstead chores', prodId: '//Siltstead//chores//EN' });
  for (const { name, every, why } of chores) {
    made.createEvent({
      id: `${name.toLowerCase().replace(/\W+/g, '-')}-${start}@siltstead`,
      start: first,
      stamp: first,
      allDay: true,
      summary: name,
      description: why,
      repeating: { freq: ICalEventRepeatingFreq.DAILY, interval: every },
    });
  }
  return made.toString();
}
