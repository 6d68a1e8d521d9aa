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

/** A leak test stands overnight, so that what follows it begins the day after. */
const OVERNIGHT = 1;

/**
 * Steps with their dates: leak test before any mix, base, mortar, sealant, leaching, leak test again, first fill.
 *
 * Each begins when the one before has had its time; times in s, part days counted as whole ones; a sealant time of 0
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
    'Fill to the brim, fittings in, and look again the next day: a leak behind cement cannot be mended.',
  );
  add(
    'pour base mix',
    whole(baseDays),
    'Hold the cone down, wet mix lifts it; mask for dust, gloves and goggles for wet cement, which burns.',
  );
  add(
    'mortar coat on the cured base',
    whole(mortarDays),
    'Keep it damp and shaded while it cures; gloves and goggles as before.',
  );
  if (sealantDays > 0) {
    add(
      'sealant on the cured mortar',
      whole(sealantDays),
      'One that is safe for fish, by its maker’s sheet; air the drum, vapor is heavier than air.',
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
    'Empty, fill and mark the level; look again the next day. Keep clear of the stand while it fills.',
  );
  add('first fill', 0, 'Only when pH of water left a day in the drum stays what it was: test it before any fish.');
  return rows;
}
