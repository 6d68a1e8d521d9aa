/** Lengths of time in seconds. A year is 365 days and a month a twelfth of it, everywhere. */
export const HOUR = 3600;
export const DAY = 24 * HOUR;
export const YEAR = 365 * DAY;
export const MONTH = YEAR / 12;
