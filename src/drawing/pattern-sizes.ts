import type { Entity, Extent, Point } from './drawing-model';

export type Worded = (meters: number) => string;

/** Text height that is readable when the whole piece is in view. */
export function readableHeight({ left, bottom, right, top }: Extent): number {
  return Math.max(right - left, 0.8 * (top - bottom)) / 36;
}

/** Length below the blank, and below whatever reaches `under` its edge; width beside it. */
export function blankSize(
  { left, bottom, right, top }: Extent,
  h: number,
  under: number,
  side: 'left' | 'right',
  word: Worded,
): readonly Entity[] {
  const x = side === 'left' ? left : right;
  return [
    {
      shape: 'length dimension',
      from: { x: left, y: bottom },
      to: { x: right, y: bottom },
      offset: -3 * h - under,
      text: `blank length ${word(right - left)}`,
    },
    {
      shape: 'length dimension',
      from: { x, y: bottom },
      to: { x, y: top },
      offset: side === 'left' ? 2.2 * h : -3 * h,
      text: `blank width ${word(top - bottom)}`,
    },
  ];
}

export function lapSize(from: Point, to: Point, offset: number, lap: number, word: Worded): Entity {
  return { shape: 'length dimension', from, to, offset, text: `lap ${word(lap)}` };
}
