/** True for each row of a log in which any column is filled, so that a row without its date is told of, not left out. */
export function anyGiven(columns: readonly string[], last: number): string {
  return `${columns.map((column) => `(${column}6:${column}${last}<>"")`).join('+')}>0`;
}
