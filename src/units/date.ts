/** Days from 1899-12-30 to 1970-01-01, the day from which the calendar below counts. */
const EPOCH = 25569;
const DAY = 86400000;

/** The last day that a spreadsheet knows, 9999-12-31. */
export const LAST_SERIAL = 2958465;

/**
 * The serial number, in the 1900 date system, of a date written year first: `2026-05-01` is 46143. Undefined where the
 * text is no such date or the calendar has none. The system holds 1900 for a leap year, so days before March are one less.
 */
export function serialOfDate(text: string): number | undefined {
  const [whole, year, month, day] = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const moment = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  if (moment.getUTCMonth() !== Number(month) - 1 || moment.getUTCDate() !== Number(day)) return undefined;
  const serial = Math.round(moment.getTime() / DAY) + EPOCH;
  const counted = serial > 60 ? serial : serial - 1;
  return Number(year) < 1900 || counted < 1 ? undefined : counted;
}

/** The date of a serial number as `2026-05-01`; the time of day is left out. */
export function dateOfSerial(serial: number): string {
  const day = Math.floor(serial);
  if (!(day >= 1 && day <= LAST_SERIAL)) return String(serial);
  if (day === 60) return '1900-02-29';
  return new Date((day + (day < 60 ? 1 : 0) - EPOCH) * DAY).toISOString().slice(0, 10);
}
