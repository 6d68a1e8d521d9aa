import { readPattern } from '../formulas/cone/read-pattern';
import type { CutRow, PlacedPattern } from '../formulas/cut/cut-plan';
import type { Piece } from '../formulas/cut/piece';
import { Refusal } from '../formulas/refusal';
import type { Profile } from '../units/profile';
import { drawing } from './drawing';
import type { Drawing, Entity, Extent, Point, Primitive } from './drawing-model';
import { polar } from './drawing-model';
import { extentOf } from './extent';
import { wordLength } from './length-text';
import { laid, marksOf, outlineOf, type Place } from './piece-shape';
import { closedPolyline, corners, cross, line, text } from './shapes';
import { textWidth } from './text-width';
import { titled } from './titled';

export interface CutPlanDrawingInput {
  /** Pattern rows in SI, each with its place in its table where blank rows were skipped. */
  readonly patterns: readonly PlacedPattern[];
  /** Rows as `SILT.CUT.PLAN` computes them. */
  readonly plan: readonly CutRow[];
  readonly sheetLength: number;
  readonly sheetWidth: number;
  readonly profile: Profile;
  readonly name?: string;
}

/** Every sheet to buy with its pieces, one sheet below the other; a piece number is its pattern row and its piece. */
export function cutPlanDrawing(input: CutPlanDrawingInput): Drawing {
  const { patterns, plan, sheetLength, sheetWidth, profile, name } = input;
  const lengthText = (meters: number) => wordLength(profile, meters);
  const known = new Map(
    patterns.map((row, i) => {
      const place = row.row ?? i + 1;
      return [place, readPattern(row, 'patterns', place, profile.text)];
    }),
  );
  const h = Math.max(sheetLength, sheetWidth) / 44;
  const count = plan.reduce((most, { sheet }) => Math.max(most, sheet), 1);
  const step = sheetWidth + 6 * h;
  const entities: Entity[] = [];
  for (let sheet = 1; sheet <= count; sheet++) {
    const corner = { x: 0, y: (count - sheet) * step };
    const pieces = plan.filter((row) => row.sheet === sheet);
    const title = `Sheet ${sheet} of ${count}`;
    entities.push(
      text({ x: corner.x, y: corner.y + sheetWidth + 1.5 * h }, title, h, { anchor: 'start', bold: true }),
      ...sheetEntities(input, known, pieces, corner, h, lengthText),
    );
  }
  entities.push(
    {
      shape: 'length dimension',
      from: { x: 0, y: 0 },
      to: { x: sheetLength, y: 0 },
      offset: -3 * h,
      text: `sheet length ${lengthText(sheetLength)}`,
    },
    {
      shape: 'length dimension',
      from: { x: sheetLength, y: 0 },
      to: { x: sheetLength, y: sheetWidth },
      offset: -3 * h,
      text: `sheet width ${lengthText(sheetWidth)}`,
    },
  );
  // A pattern that could not be laid has no piece here.
  const laid = [...new Set(plan.map((row) => row.pattern))].sort((one, other) => one - other);
  return drawing({
    title: titled(name, 'cut plan'),
    notes: [
      `${countOf(plan.length, 'piece')} of ${countOf(laid.length, 'pattern')} on ${countOf(count, 'sheet')}. ${laid.at(-1)}.1 is the first piece of pattern row ${laid.at(-1)}.`,
      'Small crosses are arc centers. Cut along the thick outlines; scribe the dashed lines before you cut.',
      'Cut sheet is sharp: wear gloves, and clamp small pieces instead of holding them.',
    ],
    entities,
    textHeight: h,
    fullSize: false,
    units: profile.name,
    tooLarge: 'print it to fit one page, print each pattern by itself, or send the DXF to a cutting machine',
  });
}

function countOf(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

function sheetEntities(
  { sheetLength, sheetWidth }: CutPlanDrawingInput,
  known: ReadonlyMap<number, Piece>,
  pieces: readonly CutRow[],
  corner: Point,
  h: number,
  word: (meters: number) => string,
): readonly Entity[] {
  const placed = pieces.map((piece) => placedPiece(known.get(piece.pattern), piece, corner, h));
  const frame = corners(corner.x, corner.y, corner.x + sheetLength, corner.y + sheetWidth);
  const used = extentOf(placed.flatMap(({ outline }) => outline)).right;
  return [
    ...closedPolyline('text', 'thin', frame),
    ...placed.flatMap(({ outline, marks, label }) => [...outline, ...marks, label]),
    ...(pieces.length === 0
      ? []
      : offcut({ left: used, bottom: corner.y, right: corner.x + sheetLength, top: corner.y + sheetWidth }, h, word)),
  ];
}

interface Placed {
  readonly outline: readonly Primitive[];
  readonly marks: readonly Primitive[];
  readonly label: Entity;
}

function placedPiece(known: Piece | undefined, row: CutRow, corner: Point, h: number): Placed {
  if (known === undefined) {
    throw new Refusal('patterns', `the plan names pattern row ${row.pattern}, which is not among the pattern rows`);
  }
  const at: Place = { x: corner.x + row.x, y: corner.y + row.y, direction: row.direction };
  const number = `${row.pattern}.${row.piece}`;
  const outline = outlineOf(known, at);
  const marks = marksOf(known, at);
  if (known.shape === 'rectangle') {
    const middle = laid(known, at)({ x: known.length / 2, y: known.width / 2 });
    const height = fittingHeight(number, Math.min(known.length, known.width), h);
    return { outline, marks, label: text(middle, number, height, { bold: true }) };
  }
  const { innerRadius, outerRadius, angle } = known;
  const middle = (innerRadius + outerRadius) / 2;
  const height = fittingHeight(number, Math.min(outerRadius - innerRadius, middle * angle), h);
  return {
    outline,
    marks: [...marks, ...cross('mark', at, Math.min(h / 2, outerRadius / 8))],
    label: text(polar(at, middle, at.direction), number, height, { bold: true }),
  };
}

function fittingHeight(words: string, room: number, height: number): number {
  return Math.min(1.2 * height, room / 1.6, (0.8 * room) / textWidth(words, 1));
}

/** The part left in one piece after the last cut, if it is large enough to keep. */
function offcut({ left, bottom, right, top }: Extent, h: number, word: (meters: number) => string): readonly Entity[] {
  if (right - left < 2 * h) return [];
  const size = `offcut\n${word(right - left)}\nby ${word(top - bottom)}`;
  const widest = Math.max(...size.split('\n').map((words) => textWidth(words, h)));
  const wide = right - left > widest + h;
  const middle = { x: (left + right) / 2, y: (bottom + top) / 2 };
  return [
    line('text', 'dashed', { x: left, y: bottom }, { x: left, y: top }),
    wide
      ? text(middle, size, h)
      : text(middle, size.replace(/\n/g, ' '), Math.min(h, 0.5 * (right - left)), { turn: Math.PI / 2 }),
  ];
}
