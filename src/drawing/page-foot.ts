import type { Primitive } from './drawing-model';
import { line, text } from './shapes';
import { textWidth, wrapped } from './text-width';
import { margin } from './tiling';

/** All in millimeters of paper. */
const left = margin * 1000;

/** Bars of exactly 100 mm and 4 in, to measure before cutting: a printer that fits the page shrinks both. */
export function checkBars(): readonly Primitive[] {
  return [
    ...bar(left + 12, 100, [0, 50, 100], '100 mm'),
    ...bar(left + 4, 101.6, [0, 25.4, 50.8, 76.2, 101.6], '4 in'),
  ];
}

function bar(y: number, long: number, ticks: readonly number[], words: string): readonly Primitive[] {
  return [
    line('mark', 'outline', { x: left, y }, { x: left + long, y }),
    ...ticks.map((at, i) => {
      const tall = i === 0 || i === ticks.length - 1 ? 2 : 1.2;
      return line('mark', 'thin', { x: left + at, y: y - tall }, { x: left + at, y: y + tall });
    }),
    text({ x: left + long / 2 + (ticks.length % 2) * 12, y: y + 2.2 }, words, 2.2),
  ];
}

/** The drawing, the place of the page in it, and what to do before cutting, to the right of the bars. */
export function pageFoot(title: string, where: string, pageWidth: number): readonly Primitive[] {
  const x = left + 108;
  const room = pageWidth * 1000 - left - x;
  const line1 = shortened(title, 2.2, room);
  const advice = wrapped('Print at 100 %. Measure both bars before you cut.', 1.9, room);
  const lines = [where, ...advice];
  return [
    text({ x, y: left + 14 }, line1, 2.2, { anchor: 'start', bold: true }),
    ...lines.map((words, i) => text({ x, y: left + 10.2 - 3.4 * i }, words, 1.9, { anchor: 'start' })),
  ];
}

/** The beginning of a bold line of text that is too long for its room. */
export function shortened(words: string, height: number, room: number): string {
  if (textWidth(words, height) * 1.06 <= room) return words;
  let kept = words;
  while (kept !== '' && textWidth(`${kept}...`, height) * 1.06 > room) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}...`;
}
