import { type Entity, type Point, polar, quarterTurn } from '../drawing-model';
import { circle, closedPolyline, corners, line, text } from '../shapes';

/** A measuring tape laid from one point to another: its hook, its blade with marks, and its case at the far end. */
export function tape(from: Point, to: Point, h: number): readonly Entity[] {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const at = (far: number, aside: number): Point => polar(polar(from, far, along), aside, along + quarterTurn);
  const half = 0.3 * h;
  const blade = [at(0, -half), at(long, -half), at(long, half), at(0, half)];
  const marks = Array.from({ length: Math.floor(long / (0.7 * h)) }, (_, i) => {
    const far = (i + 1) * 0.7 * h;
    return line('mark', 'thin', at(far, half), at(far, i % 2 === 0 ? 0.1 * h : -0.1 * h));
  });
  return [
    { shape: 'area', layer: 'mark', boundary: blade, tone: 0.22 },
    ...closedPolyline('mark', 'outline', blade),
    ...marks,
    line('mark', 'outline', at(0, -1.6 * half), at(0, 1.6 * half)),
    line('mark', 'outline', at(long, -1.6 * half), at(long, 1.6 * half)),
  ];
}

/** A letter in a circle, which a field of the guide repeats, with words beside it. */
export function letter(at: Point, sign: string, words: string, h: number): readonly Entity[] {
  return [
    circle('text', 'outline', at, 0.95 * h),
    text(at, sign, h, { bold: true }),
    ...(words === '' ? [] : [text({ x: at.x + 1.6 * h, y: at.y }, words, h, { anchor: 'start' })]),
  ];
}

/** A drum cut down its middle: wall and floor as a band, with the hole of the drain left open. */
export function drumWall(radius: number, height: number, bore: number, wall: number): readonly Entity[] {
  return [-1, 1].flatMap((side) => [
    ...closedPolyline('mark', 'outline', [
      { x: side * (bore / 2), y: 0 },
      { x: side * radius, y: 0 },
      { x: side * radius, y: height },
      { x: side * (radius + wall), y: height },
      { x: side * (radius + wall), y: -wall },
      { x: side * (bore / 2), y: -wall },
    ]),
    {
      shape: 'area',
      layer: 'mark',
      boundary: corners(side * radius, -wall, side * (radius + wall), height),
      tone: 0.1,
    },
    { shape: 'area', layer: 'mark', boundary: corners(side * (bore / 2), -wall, side * radius, 0), tone: 0.1 },
  ]);
}

/** A water line with its sign. */
export function waterLine(radius: number, level: number, h: number): readonly Entity[] {
  const x = -0.55 * radius;
  return [
    line('mark', 'thin', { x: -radius, y: level }, { x: radius, y: level }),
    ...closedPolyline('mark', 'thin', [
      { x, y: level },
      { x: x - 0.5 * h, y: level + 0.9 * h },
      { x: x + 0.5 * h, y: level + 0.9 * h },
    ]),
    ...[1, 2].map((i) =>
      line(
        'mark',
        'thin',
        { x: x - (1.2 - 0.4 * i) * h, y: level - 0.45 * i * h },
        { x: x + (1.2 - 0.4 * i) * h, y: level - 0.45 * i * h },
      ),
    ),
  ];
}
