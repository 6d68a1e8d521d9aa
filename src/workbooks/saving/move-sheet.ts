import { parseRange, rangeName } from '../../hosts/address';
import { type MovesOf, movedReferences } from '../../hosts/moved-formula';
import { isLineMove, type Move, movedLines, movedRange } from '../../hosts/moved-lines';
import { movedRules } from '../../hosts/moved-rule';
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

/** Those of them that also go with cells that are cut and pasted. */
const cutWithCells = new Set(['hyperlink', 'ignoredError', 'cellWatch']);

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
  const cells = moves.some(isLineMove) ? movedCells(xml, moves, stored) : xml.slice(data.start, data.end);
  return beside.replace(tag, () => cells);
}

function moveBeside(xml: string, sheet: string, movesOf: MovesOf): string {
  const moves = movesOf(sheet);
  const edits: Edit[] = [];
  /** The edits of what is in an element; how many elements are left of it. */
  const visit = (element: ElementSpan): number => {
    const { name } = element;
    if (name === 'cols') return moveColumns(xml, element, moves, edits) ? 1 : 0;
    if (rules.has(name)) return moveRule(xml, element, sheet, movesOf, edits);
    const mark = edits.length;
    let isLeft = true;
    if (placed[name] !== undefined) isLeft = movePlace(xml, element, placed[name], sheet, movesOf, edits);
    else if (name === 'brk') isLeft = moveBreak(xml, element, moves, edits);
    if (isLeft) {
      const left = element.children.reduce((sum, child) => sum + visit(child), 0);
      if (lists.has(name) && left === 0) isLeft = false;
      else if (left !== element.children.length && element.attributes.count !== undefined)
        edits.push(retagged(xml, element, { count: String(left) }));
    }
    if (!isLeft) {
      edits.splice(mark);
      edits.push({ start: element.start, end: element.end, text: '' });
    }
    return isLeft ? 1 : 0;
  };
  for (const child of elementTree(xml, 8).children) visit(child);
  return applyEdits(xml, edits);
}

/** Blocks of cells where they are now; undefined if none is left, the text itself if it is not understood. */
function movedBlocks(text: string, moves: readonly Move[]): string | undefined {
  const blocks = text.trim().split(/\s+/).map(parseRange);
  if (moves.length === 0 || blocks.includes(undefined)) return text;
  const left = blocks.flatMap((block) => (block && movedRange(block, moves)) ?? []);
  return left.length === 0 ? undefined : left.map(rangeName).join(' ');
}

function movePlace(
  xml: string,
  element: ElementSpan,
  name: string,
  sheet: string,
  movesOf: MovesOf,
  edits: Edit[],
): boolean {
  const before = element.attributes[name] ?? '';
  const cut = cutWithCells.has(element.name) ? movedRules({ range: before, formulas: [] }, sheet, movesOf) : undefined;
  // A link of which a part was cut has no room for a second range, and stays.
  const isTorn = name !== 'sqref' && cut?.[0]?.range.includes(' ');
  const now = cut === undefined || isTorn ? movedBlocks(before, movesOf(sheet)) : cut[0]?.range;
  if (now === undefined) return element.name === 'dimension';
  if (now !== before) edits.push(retagged(xml, element, { [name]: now }));
  return true;
}

/** A page ends before the line of this number. */
function moveBreak(xml: string, element: ElementSpan, moves: readonly Move[], edits: Edit[]): boolean {
  const across = element.attributes.max === '16383' ? 'row' : 'column';
  const [now] = movedLines(across, Number(element.attributes.id), 1, moves) ?? [];
  if (now !== undefined) edits.push(retagged(xml, element, { id: String(now) }));
  return now !== undefined;
}

const descendants = (element: ElementSpan): readonly ElementSpan[] =>
  element.children.flatMap((child) => [child, ...descendants(child)]);

/** How many rules are made of one: cells that were cut and pasted may need their own. */
function moveRule(xml: string, element: ElementSpan, sheet: string, movesOf: MovesOf, edits: Edit[]): number {
  const inside = descendants(element);
  const text = (one: ElementSpan): string => unmarked(innerText(xml, one));
  const placedBy = inside.find(({ name }) => name === 'sqref');
  const range = placedBy === undefined ? (element.attributes.sqref ?? '') : text(placedBy);
  const formulas = inside.filter(({ name, children }) => isFormula(name) && children.length === 0);
  const isAlone = element.name === 'sparkline';
  const now = movedRules({ range, formulas: isAlone ? [] : formulas.map(text) }, sheet, movesOf);
  const copies = now.map((rule) => {
    const own: Edit[] = [];
    const texts = isAlone ? formulas.map((one) => movedReferences(text(one), sheet, movesOf)) : rule.formulas;
    if (rule.range !== range) {
      own.push(
        placedBy === undefined
          ? retagged(xml, element, { sqref: rule.range })
          : { start: placedBy.openEnd, end: placedBy.openEnd + innerText(xml, placedBy).length, text: rule.range },
      );
    }
    formulas.forEach((one, index) => {
      const is = texts[index] ?? '';
      if (is !== text(one))
        own.push({ start: one.openEnd, end: one.openEnd + innerText(xml, one).length, text: markup(is) });
    });
    return own;
  });
  const [only, another] = copies;
  if (only !== undefined && another === undefined) edits.push(...only);
  else {
    const inPlace = (one: Edit): Edit => ({ ...one, start: one.start - element.start, end: one.end - element.start });
    const whole = xml.slice(element.start, element.end);
    const texts = copies.map((own) => applyEdits(whole, own.map(inPlace)));
    edits.push({ start: element.start, end: element.end, text: texts.join('') });
  }
  return copies.length;
}

/** Widths and styles of columns, which are kept in runs. */
function moveColumns(xml: string, element: ElementSpan, moves: readonly Move[], edits: Edit[]): boolean {
  const lineMoves = moves.filter(isLineMove);
  if (!lineMoves.some(({ across }) => across === 'column')) return true;
  const columns = element.children.flatMap((run) => {
    const single = (column: number) => movedLines('column', column - 1, 1, moves)?.[0];
    const from = Number(run.attributes.min);
    const to = Number(run.attributes.max);
    // Only as far as columns move one by one; the rest of a run that goes to the last column moves as a whole.
    const ends = lineMoves.flatMap(({ first, count, to: before = 0 }) => [first + Math.abs(count), before]);
    const far = Math.min(to, Math.max(from, ...ends) + lineMoves.reduce((sum, { count }) => sum + Math.abs(count), 1));
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
