import { parseRange, rangeName } from '../../hosts/address';
import { type MovesOf, movedReferences, movedRule } from '../../hosts/moved-formula';
import { type LineMove, movedLines, movedRange } from '../../hosts/moved-lines';
import { scanSheet } from '../sheet-scan';
import { markup } from '../stored-value';
import { movedCells, type StoredFormula, tagWith } from './move-cells';
import { applyEdits, type Edit, type ElementSpan, elementTree, innerText, retagged, unmarked } from './xml-elements';

/** Elements for cells: the attribute that names these, and whether several ranges may stand there. */
const placed: Readonly<Record<string, string>> = {
  dimension: 'ref',
  mergeCell: 'ref',
  hyperlink: 'ref',
  autoFilter: 'ref',
  sortState: 'ref',
  sortCondition: 'ref',
  protectedRange: 'sqref',
  ignoredError: 'sqref',
  cellWatch: 'r',
};

/** Elements that go if nothing is left in them; some say how many they hold. */
const lists = new Set(
  'mergeCells hyperlinks protectedRanges ignoredErrors cellWatches dataValidations conditionalFormattings sparklines rowBreaks colBreaks'.split(
    ' ',
  ),
);

/** Rules for cells: `sqref` is an attribute, or in extensions an element, and so are formulas. */
const rules = new Set(['conditionalFormatting', 'dataValidation', 'sparkline']);

const isFormula = (name: string): boolean => /^(?:formula|formula1|formula2|f)$/.test(name);

/**
 * A worksheet's part with all of its rows, columns and what belongs to their cells where they are now. `stored` has the
 * formulas of cells, for those that the file stores as a copy of another's.
 */
export function moveSheet(xml: string, sheet: string, movesOf: MovesOf, stored: StoredFormula): string {
  const moves = movesOf(sheet);
  const { data } = scanSheet(xml);
  const tag = `<${data.tag}/>`;
  // What is beside the cells is looked at without them, which are many.
  const beside = moveBeside(xml.slice(0, data.start) + tag + xml.slice(data.end), sheet, movesOf);
  const cells = moves.length === 0 ? xml.slice(data.start, data.end) : movedCells(xml, moves, stored);
  return beside.replace(tag, () => cells);
}

function moveBeside(xml: string, sheet: string, movesOf: MovesOf): string {
  const moves = movesOf(sheet);
  const edits: Edit[] = [];
  /** The edits of what is in an element; whether the element is left. */
  const visit = (element: ElementSpan): boolean => {
    const { name } = element;
    if (name === 'cols') return moveColumns(xml, element, moves, edits);
    const mark = edits.length;
    let isLeft = true;
    if (rules.has(name)) isLeft = moveRule(xml, element, sheet, movesOf, edits);
    else if (placed[name] !== undefined) isLeft = movePlace(xml, element, placed[name], moves, edits);
    else if (name === 'brk') isLeft = moveBreak(xml, element, moves, edits);
    if (isLeft && !rules.has(name)) {
      const left = element.children.filter(visit).length;
      if (lists.has(name) && left === 0) isLeft = false;
      else if (left < element.children.length && element.attributes.count !== undefined)
        edits.push(retagged(xml, element, { count: String(left) }));
    }
    if (!isLeft) {
      edits.splice(mark);
      edits.push({ start: element.start, end: element.end, text: '' });
    }
    return isLeft;
  };
  for (const child of elementTree(xml, 8).children) visit(child);
  return applyEdits(xml, edits);
}

/** Blocks of cells where they are now; undefined if none is left, the text itself if it is not understood. */
function movedBlocks(text: string, moves: readonly LineMove[]): string | undefined {
  const blocks = text.trim().split(/\s+/).map(parseRange);
  if (moves.length === 0 || blocks.includes(undefined)) return text;
  const left = blocks.flatMap((block) => (block && movedRange(block, moves)) ?? []);
  return left.length === 0 ? undefined : left.map(rangeName).join(' ');
}

function movePlace(
  xml: string,
  element: ElementSpan,
  name: string,
  moves: readonly LineMove[],
  edits: Edit[],
): boolean {
  const now = movedBlocks(element.attributes[name] ?? '', moves);
  if (now === undefined) return element.name === 'dimension';
  if (now !== element.attributes[name]) edits.push(retagged(xml, element, { [name]: now }));
  return true;
}

/** A page ends before the line of this number. */
function moveBreak(xml: string, element: ElementSpan, moves: readonly LineMove[], edits: Edit[]): boolean {
  const across = element.attributes.max === '16383' ? 'row' : 'column';
  const [now] = movedLines(across, Number(element.attributes.id), 1, moves) ?? [];
  if (now !== undefined) edits.push(retagged(xml, element, { id: String(now) }));
  return now !== undefined;
}

const descendants = (element: ElementSpan): readonly ElementSpan[] =>
  element.children.flatMap((child) => [child, ...descendants(child)]);

function moveRule(xml: string, element: ElementSpan, sheet: string, movesOf: MovesOf, edits: Edit[]): boolean {
  const inside = descendants(element);
  const text = (one: ElementSpan): string => unmarked(innerText(xml, one));
  const placedBy = inside.find(({ name }) => name === 'sqref');
  const range = placedBy === undefined ? (element.attributes.sqref ?? '') : text(placedBy);
  const formulas = inside.filter(({ name, children }) => isFormula(name) && children.length === 0);
  const isAlone = element.name === 'sparkline';
  const rule = { range, formulas: isAlone ? [] : formulas.map(text) };
  const now = movedRule(rule, sheet, movesOf);
  if (now === undefined) return false;
  const texts = isAlone ? formulas.map((one) => movedReferences(text(one), sheet, movesOf)) : now.formulas;
  if (now.range !== range) {
    edits.push(
      placedBy === undefined
        ? retagged(xml, element, { sqref: now.range })
        : { start: placedBy.openEnd, end: placedBy.openEnd + innerText(xml, placedBy).length, text: now.range },
    );
  }
  formulas.forEach((one, index) => {
    const is = texts[index] ?? '';
    if (is !== text(one))
      edits.push({ start: one.openEnd, end: one.openEnd + innerText(xml, one).length, text: markup(is) });
  });
  return true;
}

/** Widths and styles of columns, which are kept in runs. */
function moveColumns(xml: string, element: ElementSpan, moves: readonly LineMove[], edits: Edit[]): boolean {
  if (!moves.some(({ across }) => across === 'column')) return true;
  const columns = element.children.flatMap((run) => {
    const single = (column: number) => movedLines('column', column - 1, 1, moves)?.[0];
    const from = Number(run.attributes.min);
    const to = Number(run.attributes.max);
    // Only as far as columns move one by one; the rest of a run that goes to the last column moves as a whole.
    const ends = moves.flatMap(({ first, count, to: before = 0 }) => [first + Math.abs(count), before]);
    const far = Math.min(to, Math.max(from, ...ends) + moves.reduce((sum, { count }) => sum + Math.abs(count), 1));
    const each = Array.from({ length: far - from + 1 }, (_, index) => single(from + index)).flatMap((at) => at ?? []);
    const rest = far < to ? movedLines('column', far, to - far, moves) : undefined;
    return [
      ...each.map((at) => ({ run, min: at + 1, max: at + 1 })),
      ...(rest === undefined ? [] : [{ run, min: rest[0] + 1, max: rest[0] + rest[1] }]),
    ];
  });
  if (columns.length === 0) return false;
  const text = columns
    .sort((one, other) => one.min - other.min)
    .map(({ run, min, max }) => tagWith(xml.slice(run.start, run.end), { min: String(min), max: String(max) }))
    .join('');
  edits.push({ start: element.openEnd, end: element.openEnd + innerText(xml, element).length, text });
  return true;
}
