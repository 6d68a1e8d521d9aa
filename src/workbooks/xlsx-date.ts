/** Days from the spreadsheet's day 0 to 1970-01-01. */
const epochDays = 25_569;

/** The serial number of a date that a file library hands over as a moment in universal time. */
export const serial = (date: Date): number => date.getTime() / 86_400_000 + epochDays;
