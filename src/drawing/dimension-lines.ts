import {
  type AngleDimension,
  type Dimension,
  type Entity,
  type LengthDimension,
  type Point,
  type Primitive,
  pointBetween,
  polar,
  quarterTurn,
  type RadiusDimension,
} from './drawing-model';
import { arc, line, text } from './shapes';
import { textWidth } from './text-width';

/** Turns dimensions into the lines, arcs and text that every writer can write; other entities stay as they are. */
export function withoutDimensions(entities: readonly Entity[], height: number): readonly Primitive[] {
  return entities.flatMap((entity) => (isDimension(entity) ? dimensionLines(entity, height) : [entity]));
}

function isDimension(entity: Entity): entity is Dimension {
  return entity.shape.endsWith('dimension');
}

function dimensionLines(dimension: Dimension, height: number): readonly Primitive[] {
  if (dimension.shape === 'length dimension') return lengthLines(dimension, height);
  if (dimension.shape === 'radius dimension') return radiusLines(dimension, height);
  return angleLines(dimension, height);
}

/** Text stays the right way up: it reads from below, or from the right if it is nearly vertical. */
function readable(direction: number): number {
  const turn = Math.atan2(Math.sin(direction), Math.cos(direction));
  const most = (105 * Math.PI) / 180;
  return turn > most || turn <= most - Math.PI ? turn + Math.PI : turn;
}

function lengthLines({ from, to, offset, text: words }: LengthDimension, height: number): readonly Primitive[] {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const side = along + quarterTurn;
  const out = Math.sign(offset);
  const a = polar(from, offset, side);
  const b = polar(to, offset, side);
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const lines = words.split('\n');
  const wide = Math.max(...lines.map((one) => textWidth(one, height)));
  const fits = wide + 0.8 * height <= long;
  const turn = readable(along);
  // Above the line; text wider than the distance goes beyond the far end.
  const middle = fits
    ? polar(pointBetween(a, b, 0.5), (0.25 + 0.85 * lines.length) * height, turn + quarterTurn)
    : polar(b, 1.1 * height + wide / 2, along);
  const extension = (foot: Point, end: Point) => [
    line(
      'text',
      'thin',
      pointBetween(foot, end, Math.min(0.9, (0.6 * height) / Math.abs(offset || 1))),
      polar(end, out * 0.6 * height, side),
    ),
  ];
  return [
    ...(offset === 0 ? [] : [...extension(from, a), ...extension(to, b)]),
    line('text', 'thin', a, b),
    ...(fits ? [] : [line('text', 'thin', b, polar(b, 0.8 * height, along))]),
    tick(a, along, height),
    tick(b, along, height),
    ...(words === '' ? [] : [text(middle, words, height, { turn })]),
  ];
}

function tick(at: Point, along: number, height: number): Primitive {
  const slope = along + Math.PI / 4;
  return line('text', 'outline', polar(at, -0.45 * height, slope), polar(at, 0.45 * height, slope));
}

/** The name is above the line and the figure below it. A tail of more than 1 reaches the arc from outside. */
function radiusLines(
  { center, radius, direction, tail, text: words }: RadiusDimension,
  height: number,
): readonly Primitive[] {
  const from = polar(center, radius * tail, direction);
  const to = polar(center, radius, direction);
  const turn = readable(direction);
  return [
    line('text', 'thin', from, to),
    ...arrow(to, tail > 1 ? direction + Math.PI : direction, height),
    text(pointBetween(from, to, tail > 1 ? 0.45 : 0.6), words, height, { turn }),
  ];
}

function angleLines(
  { center, radius, start, sweep, text: words }: AngleDimension,
  height: number,
): readonly Primitive[] {
  const middle = start + sweep / 2;
  // The arrow follows the chord of its own length, so that it looks tangent on small arcs too.
  const lean = Math.min(1, (0.9 * height) / (2 * radius));
  return [
    arc('text', 'thin', center, radius, start, sweep),
    ...arrow(polar(center, radius, start), start - quarterTurn + lean, height),
    ...arrow(polar(center, radius, start + sweep), start + sweep + quarterTurn - lean, height),
    text(polar(center, radius + (1.3 + 0.85 * (words.split('\n').length - 1)) * height, middle), words, height, {
      turn: readable(middle - quarterTurn),
    }),
  ];
}

/** An open arrowhead whose point is `at`, pointing in the direction given. */
export function arrow(at: Point, direction: number, height: number): readonly Primitive[] {
  return [0.3, -0.3].map((spread) =>
    line('text', 'outline', at, polar(at, 0.9 * height, direction + Math.PI + spread)),
  );
}
