import { parseRange, rangeName } from '../../hosts/address';
import { type MovesOf, movedReferences } from '../../hosts/moved-formula';
import { isLineMove, movedLines, movedRange } from '../../hosts/moved-lines';
import { markup } from '../stored-value';
import type { WorkbookPackage } from './package';
import {
  applyEdits,
  childNamed,
  childrenNamed,
  type Edit,
  type ElementSpan,
  elementTree,
  retagged,
  unmarked,
} from './xml-elements';

const chartPart = /^xl\/charts\/[^_]*\.xml$/;
const pivotCache = /^xl\/pivotCache\/pivotCacheDefinition\d*\.xml$/;

/** Lets what lies outside of the sheets, but speaks of their cells, follow rows and columns: charts, pivot tables, names of single sheets. */
export function moveOutside(file: WorkbookPackage, movesOf: MovesOf): void {
  const moved = (stored: string, sheet = ''): string => {
    const text = unmarked(stored);
    const now = movedReferences(text, sheet, movesOf);
    return now === text ? stored : markup(now);
  };
  for (const part of file.names().filter((name) => chartPart.test(name))) {
    const xml = file.needed(part);
    file.set(
      part,
      xml.replace(/(<(?:\w+:)?f>)([^<]*)(?=<\/)/g, (_, open: string, text: string) => open + moved(text)),
    );
  }
  for (const part of file.names().filter((name) => pivotCache.test(name))) {
    const xml = file.needed(part).replace(/<(?:\w+:)?worksheetSource\b[^>]*>/g, (tag) => {
      const sheet = /\ssheet="([^"]*)"/.exec(tag)?.[1];
      const range = / ref="([^"]*)"/.exec(tag)?.[1];
      const now = sheet && range ? movedReferences(`=${range}`, unmarked(sheet), movesOf).slice(1) : undefined;
      return now === undefined ? tag : tag.replace(/ ref="[^"]*"/, ` ref="${now}"`);
    });
    file.set(part, xml);
  }
  // The names that the spreadsheet has follow there; those of a single sheet, as what it prints, and hidden ones it has not.
  const workbook = file.workbook();
  const xml = file
    .needed(workbook)
    .replace(
      /(<(?:\w+:)?definedName [^>]*(?:localSheetId|hidden)="[^>]*>)([^<]*)(?=<\/)/g,
      (_, open: string, text: string) => open + moved(text),
    );
  file.set(workbook, xml);
}

/** Lets the drawings and pivot tables of a sheet follow its rows and columns. */
export function moveAttached(file: WorkbookPackage, path: string, sheet: string, movesOf: MovesOf): void {
  if (movesOf(sheet).length === 0) return;
  for (const { type, target } of file.relations(path)) {
    if (type.endsWith('/drawing')) file.set(target, movedDrawing(file.needed(target), sheet, movesOf));
    else if (type.endsWith('/pivotTable')) {
      const xml = file.needed(target);
      const location = childNamed(elementTree(xml, 1), 'location');
      const range = location && parseRange(location.attributes.ref ?? '');
      const now = range && movedRange(range, movesOf(sheet));
      if (location && now) file.set(target, applyEdits(xml, [retagged(xml, location, { ref: rangeName(now) })]));
    }
  }
}

/** Charts and pictures over the cells that they were over. */
function movedDrawing(xml: string, sheet: string, movesOf: MovesOf): string {
  const edits = elementTree(xml, 3).children.flatMap((anchor): Edit[] => {
    const { editAs } = anchor.attributes;
    const [from, to] = [childNamed(anchor, 'from'), childNamed(anchor, 'to')];
    if (from === undefined || editAs === 'absolute') return [];
    return (['row', 'column'] as const).flatMap((across) => {
      const [start, end] = [from, to].map((corner) => lineOf(xml, corner, across));
      if (start === undefined) return [];
      const length = end === undefined || editAs === 'oneCell' ? 1 : end.line - start.line + 1;
      const moves = movesOf(sheet)
        .filter(isLineMove)
        .filter((move) => move.across === across);
      // Where all cells under it are gone it stays as large as it was.
      const deleted = (): [number, number] => [Math.min(start.line, ...moves.map(({ first }) => first)), length];
      const [line, lines] = movedLines(across, start.line, length, moves) ?? deleted();
      const last = editAs === 'oneCell' && end !== undefined ? end.line + line - start.line : line + lines - 1;
      return [start.at(line), ...(end === undefined ? [] : [end.at(last)])];
    });
  });
  return applyEdits(xml, edits);
}

function lineOf(xml: string, corner: ElementSpan | undefined, across: 'row' | 'column') {
  const element = childrenNamed(corner, across === 'row' ? 'row' : 'col')[0];
  if (element === undefined) return undefined;
  const end = xml.indexOf('</', element.openEnd);
  const line = Number(xml.slice(element.openEnd, end));
  return { line, at: (now: number): Edit => ({ start: element.openEnd, end, text: String(now) }) };
}
