import { parseRange, rangeName, splitSheet } from '../../hosts/address';
import { type LineMove, movedRange } from '../../hosts/moved-lines';
import type { WorkbookPackage } from './package';

const chartPart = /^xl\/charts\/[^_]*\.xml$/;

/** Lets the charts of a file follow the rows and columns of their cells; `moves` goes by the sheets' names in the file. */
export function moveCharts(file: WorkbookPackage, moves: ReadonlyMap<string, readonly LineMove[]>): void {
  if (moves.size === 0) return;
  for (const part of file.names().filter((name) => chartPart.test(name))) {
    const xml = file
      .needed(part)
      .replace(/(<(?:\w+:)?f>)([^<]*)(?=<\/)/g, (_, open: string, text: string) => open + movedReference(text, moves));
    file.set(part, xml);
  }
}

/** What a sheet prints, and the headings that it repeats, follow its rows and columns too. */
export function movePrinting(file: WorkbookPackage, moves: ReadonlyMap<string, readonly LineMove[]>): void {
  if (moves.size === 0) return;
  const part = file.workbook();
  const xml = file
    .needed(part)
    .replace(
      /(<(?:\w+:)?definedName [^>]*name="_xlnm\.Print_(?:Area|Titles)"[^>]*>)([^<]*)(?=<\/)/g,
      (_, open: string, text: string) => open + movedReference(text, moves),
    );
  file.set(part, xml);
}

function movedReference(stored: string, moves: ReadonlyMap<string, readonly LineMove[]>): string {
  const plain = stored.replaceAll('&apos;', "'").replaceAll('&amp;', '&');
  const { sheet, rest } = splitSheet(plain);
  const own = sheet === undefined ? undefined : moves.get(sheet);
  const lines = /^\$?(\d+):\$?(\d+)$/.exec(rest);
  const range = parseRange(lines === null ? rest : `A${lines[1]}:A${lines[2]}`);
  if (range === undefined || own === undefined) return stored;
  const place = stored.slice(0, stored.lastIndexOf('!') + 1);
  const now = movedRange(range, lines === null ? own : own.filter(({ across }) => across === 'row'));
  if (now !== undefined && lines !== null) return `${place}$${now.row + 1}:$${now.row + now.rows}`;
  return now === undefined ? `${place}#REF!` : place + rangeName(now).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
}
