/**
 * Build calendar of a settling drum, from the first leak test to the first fill.
 */
import { DAY } from '../numeric/time';
import { wholeUp } from '../numeric/whole';

export interface PlanDate {
  readonly step: string;
  /** Date serial. */
  readonly date: number;
  readonly note: string;
}

/** A leak test takes a night, so the next step begins the day after. */
const OVERNIGHT = 1;

/**
 * Steps with their dates: leak test before any mix, base, mortar, sealant, leaching, leak test again, first fill.
 *
 * Each step begins when the one before has had its time; times in s, part days count as whole days; a sealant time of 0
 * leaves the sealant out. Start is a date serial. Times are common practice: the makers' sheets for cement, mortar and
 * sealant come first.
 */
export function planDates(
  start: number,
  baseDays: number,
  mortarDays: number,
  sealantDays: number,
  leachDays: number,
): readonly PlanDate[] {
  const whole = (time: number): number => wholeUp(time / DAY);
  const rows: PlanDate[] = [];
  let date = Math.floor(start);
  const add = (step: string, days: number, note: string): void => {
    rows.push({ step, date, note });
    date += days;
  };
  add(
    'leak test before any mix',
    OVERNIGHT,
    'Fit the fittings, fill to the brim and look again the next day: a leak behind cement cannot be mended.',
  );
  add(
    'pour base mix',
    whole(baseDays),
    'Hold the cone down, because wet mix lifts it. Wear a respirator against dust, and gloves and goggles: wet cement burns.',
  );
  add(
    'mortar coat on the cured base',
    whole(mortarDays),
    'Keep it damp and shaded while it cures; wear gloves and goggles as before.',
  );
  if (sealantDays > 0) {
    add(
      'sealant on the cured mortar',
      whole(sealantDays),
      'Use one that is safe for fish according to its maker’s sheet. Air the drum: vapor is heavier than air.',
    );
  }
  add(
    'fill to leach',
    whole(leachDays),
    'Fresh cement raises pH: change the water every day or two and write down its pH.',
  );
  add(
    'leak test after',
    OVERNIGHT,
    'Empty it, fill it and mark the level; look again the next day. Keep clear of the stand while it fills.',
  );
  add('first fill', 0, 'Only when water left in the drum for a day keeps its pH: test before adding fish.');
  return rows;
}
