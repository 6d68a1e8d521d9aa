import { arrow } from './dimension-lines';
import { drawing } from './drawing';
import type { Drawing, Entity } from './drawing-model';
import { closedPolyline, corners, line, polyline, text } from './shapes';
import { lineStep, textWidth, wrapped } from './text-width';

/** One stage of a farm's water; every figure is already formatted with its unit. */
export interface TrainStage {
  readonly name: string;
  /** The text in the box below the name: `3 drums, 22.5 in`, `carries 140 fish`. */
  readonly words?: readonly string[];
  /** What leaves the stage for the next one: the flow, and what is in it. */
  readonly flow?: string;
  readonly solids?: string;
  readonly ammonia?: string;
  readonly nitrate?: string;
  /** What this stage removes from the water: `solids pulled 0.4 lb/d`. */
  readonly taken?: string;
  /** Whether this stage is the first limit. */
  readonly limiting?: boolean;
}

export interface TrainDrawingInput {
  readonly stages: readonly TrainStage[];
  readonly units: 'metric' | 'US';
  readonly title?: string;
  /** Words on the way back from the last stage to the first; without it no way back is drawn. */
  readonly returning?: string;
  readonly notes?: readonly string[];
}

/** A diagram has no scale: text is 1 high, and that height is the unit of everything else. */
const boxWidth = 24;
const boxMiddle = 0;
const gap = 9;

/** The stages of a farm's water down the page, what passes from each to the next, and the first limit. */
export function trainDrawing({ stages, units, title, returning, notes = [] }: TrainDrawingInput): Drawing {
  const entities: Entity[] = [];
  let y = 0;
  let first = 0;
  stages.forEach((stage, i) => {
    const lines = (stage.words ?? []).flatMap((words) => wrapped(words, 0.9, boxWidth - 2));
    const height = 3 + (stage.limiting ? 1.9 : 0) + lines.length * lineStep * 0.9;
    const bottom = y - height;
    if (i === 0) first = y - height / 2;
    entities.push(...box(stage, lines, y, bottom), ...takenOut(stage, (y + bottom) / 2));
    const last = i === stages.length - 1;
    if (!last) entities.push(...passage(stage, bottom));
    if (last && returning !== undefined && stages.length > 1)
      entities.push(...wayBack(returning, first, y - height / 2));
    y = bottom - gap;
  });
  const limiting = stages.find((stage) => stage.limiting);
  return drawing({
    title: title ?? 'Treatment train',
    notes: [...(limiting ? [`First limit: ${limiting.name} (double frame).`] : []), ...notes],
    entities,
    textHeight: 1,
    fullSize: false,
    units,
  });
}

function box({ name, limiting }: TrainStage, lines: readonly string[], top: number, bottom: number): readonly Entity[] {
  const half = boxWidth / 2;
  const frame = (inset: number) =>
    closedPolyline('mark', 'outline', corners(-half + inset, bottom + inset, half - inset, top - inset));
  const nameHeight = Math.min(1.15, (boxWidth - 2) / textWidth(name, 1.06));
  const start = top - 1.5;
  return [
    ...frame(0),
    ...(limiting ? frame(0.35) : []),
    text({ x: boxMiddle, y: start }, name, nameHeight, { bold: true }),
    ...lines.map((words, i) => text({ x: boxMiddle, y: start - (i + 1) * lineStep * 0.9 - 0.2 }, words, 0.9)),
    ...(limiting ? [text({ x: boxMiddle, y: bottom + 1.4 }, 'first limit', 0.9, { bold: true })] : []),
  ];
}

function passage({ flow, solids, ammonia, nitrate }: TrainStage, bottom: number): readonly Entity[] {
  const words = [
    flow === undefined ? '' : `flow ${flow}`,
    solids === undefined ? '' : `solids ${solids}`,
    ammonia === undefined ? '' : `ammonia as N ${ammonia}`,
    nitrate === undefined ? '' : `nitrate as N ${nitrate}`,
  ].filter((one) => one !== '');
  return [
    line('mark', 'outline', { x: boxMiddle, y: bottom }, { x: boxMiddle, y: bottom - gap }),
    ...arrow({ x: boxMiddle, y: bottom - gap }, -Math.PI / 2, 1.2),
    ...words.map((one, i) =>
      text({ x: boxMiddle + 1.2, y: bottom - gap / 2 + ((words.length - 1) / 2 - i) * lineStep }, one, 0.9, {
        anchor: 'start',
      }),
    ),
  ];
}

function takenOut({ taken }: TrainStage, y: number): readonly Entity[] {
  if (taken === undefined) return [];
  const from = boxWidth / 2;
  const lines = wrapped(taken, 0.9, 11);
  return [
    line('mark', 'thin', { x: from, y }, { x: from + 3, y }),
    ...arrow({ x: from + 3, y }, 0, 1),
    text({ x: from + 3.8, y }, lines.join('\n'), 0.9, { anchor: 'start' }),
  ];
}

function wayBack(words: string, to: number, from: number): readonly Entity[] {
  const edge = -boxWidth / 2;
  const aside = edge - 4;
  return [
    ...polyline('mark', 'outline', [
      { x: edge, y: from },
      { x: aside, y: from },
      { x: aside, y: to },
      { x: edge, y: to },
    ]),
    ...arrow({ x: edge, y: to }, 0, 1.2),
    text({ x: aside - 1.2, y: (from + to) / 2 }, words, 0.9, { turn: Math.PI / 2 }),
  ];
}
