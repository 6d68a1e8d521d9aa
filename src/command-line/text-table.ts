/** Rows under headings, in columns as wide as their widest cell; numbers are right-aligned. */
export function textTable(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [headings, ...rows];
  const widths = headings.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  const isNumber = (cell: string) => /^[\d,.]+( \S+)?$/.test(cell);
  const toRight = headings.map((_, column) => rows.every((row) => isNumber(row[column] ?? '') || row[column] === ''));
  const line = (row: readonly string[]) =>
    widths
      .map((width, column) =>
        toRight[column] ? (row[column] ?? '').padStart(width) : (row[column] ?? '').padEnd(width),
      )
      .join('  ')
      .trimEnd();
  return [line(headings), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n');
}
