import { drawing } from './drawing';
import type { Drawing, Entity } from './drawing-model';
import { corners, line, text } from './shapes';

/** A result with its band; every figure is already formatted. */
export interface Band {
  readonly name: string;
  readonly low: number;
  readonly plan: number;
  readonly high: number;
  readonly words: { readonly low: string; readonly plan: string; readonly high: string };
}

/** What one uncertain input explains of a result, 0 to 1. */
export interface Bar {
  readonly name: string;
  readonly share: number;
}

interface Asked {
  readonly title: string;
  readonly units: 'metric' | 'US';
  readonly notes: readonly string[];
}

/** A diagram has no scale: text is 1 high, and that height is the unit of everything else. */
const rowHeight = 3;
const width = 30;
const thickness = 0.55;
/** Bands are drawn as multiples of the plan; a band that goes beyond stays open at the edge. */
const mostTimes = 3;

/** One band per result, all on one scale where the plan is 1: how far each result can be below or above the plan. */
export function bandsDrawing({ bands, title, units, notes }: Asked & { readonly bands: readonly Band[] }): Drawing {
  const at = (times: number): number => (Math.min(Math.max(times, 0), mostTimes) / mostTimes) * width;
  const planned = at(1);
  const entities = bands.flatMap(({ name, low, plan, high, words }, i): readonly Entity[] => {
    const y = -i * rowHeight;
    const [from, to] = [at(low / plan), at(high / plan)];
    return [
      text({ x: -1, y: y + 0.6 }, name, 0.95, { anchor: 'end', bold: true }),
      text({ x: -1, y: y - 0.75 }, `plan ${words.plan}`, 0.75, { anchor: 'end' }),
      ...tone(from, to, y),
      line('mark', 'outline', { x: from, y: y - thickness }, { x: from, y: y + thickness }),
      ...(high > mostTimes * plan
        ? []
        : [line('mark', 'outline', { x: to, y: y - thickness }, { x: to, y: y + thickness })]),
      line('mark', 'thin', { x: from, y }, { x: to, y }),
      text({ x: width + 1, y }, `${words.low} to ${words.high}`, 0.85, { anchor: 'start' }),
    ];
  });
  const bottom = -(bands.length - 1) * rowHeight - 1.6;
  const axis = [
    line('mark', 'dashed', { x: planned, y: 1.8 }, { x: planned, y: bottom }),
    text({ x: planned, y: 2.7 }, 'as planned', 0.8),
    ...[0, 2, 3].map((times) => text({ x: at(times), y: 2.7 }, times === 0 ? '0' : `${times} times`, 0.8)),
  ];
  return drawing({ title, notes, entities: [...axis, ...entities], textHeight: 1, fullSize: false, units });
}

/** Bars ranked by what each uncertain input explains; the first is what to measure first. */
export function driversDrawing({ bars, title, units, notes }: Asked & { readonly bars: readonly Bar[] }): Drawing {
  const entities = bars.flatMap(({ name, share }, i): readonly Entity[] => {
    const y = -i * rowHeight;
    const to = Math.min(Math.max(share, 0), 1) * width;
    return [
      text({ x: -1, y }, name, 0.95, i === 0 ? { anchor: 'end', bold: true } : { anchor: 'end' }),
      ...tone(0, to, y),
      ...frame(to, y),
      text({ x: to + 0.8, y }, `${Math.round(100 * share)} %`, 0.85, { anchor: 'start' }),
    ];
  });
  const foot = line('mark', 'thin', { x: 0, y: 1.5 }, { x: 0, y: -(bars.length - 1) * rowHeight - 1.5 });
  return drawing({ title, notes, entities: [foot, ...entities], textHeight: 1, fullSize: false, units });
}

function tone(from: number, to: number, y: number): readonly Entity[] {
  if (to - from < 1e-9) return [];
  return [{ shape: 'area', layer: 'mark', boundary: corners(from, y - thickness, to, y + thickness), tone: 0.18 }];
}

function frame(to: number, y: number): readonly Entity[] {
  return [
    line('mark', 'outline', { x: 0, y: y + thickness }, { x: to, y: y + thickness }),
    line('mark', 'outline', { x: to, y: y + thickness }, { x: to, y: y - thickness }),
    line('mark', 'outline', { x: to, y: y - thickness }, { x: 0, y: y - thickness }),
  ];
}
