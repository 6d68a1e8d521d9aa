import { tankPorts } from '../formulas/tank/tank-ports';
import type { Profile } from '../units/profile';
import { drawing } from './drawing';
import type { Drawing, Entity } from './drawing-model';
import { type DrumFigures, drumBody, drumLevels, pipeEnd } from './drum-body';
import { tapeLength, wordLength } from './length-text';
import { callouts, type Level } from './level-callouts';
import { textWidth } from './text-width';
import { titled } from './titled';

export interface DrumSectionInput {
  readonly profile: Profile;
  /** Inside diameter of the drum. */
  readonly drumDiameter: number;
  /** Water above the cone's top, as in `SILT.TANK.PORTS`. */
  readonly depth: number;
  /** 0 for a flat floor. */
  readonly coneHeight?: number;
  /** The default is the width of the drum. */
  readonly coneTop?: number;
  readonly coneBottom?: number;
  /** Height of the cone's bottom above the drum floor. */
  readonly rise?: number;
  readonly stand?: number;
  /** Floor to rim; the default leaves a sixth of the depth above the water. */
  readonly drumHeight?: number;
  /** Height of the pail under the valve; without it no pail is drawn. */
  readonly container?: number;
  /** How far the outlet of the valve is below the top of the stand. */
  readonly drainDrop?: number;
  readonly name?: string;
  /** For a picture a hand wide: larger letters, and of each height only the one above the drum floor. */
  readonly isSmall?: boolean;
}

/** A settling drum cut down its middle, with its cone, base, ports, stand and water line, and the height of each. */
export function drumSectionDrawing(input: DrumSectionInput): Drawing {
  const { profile, name, isSmall = false } = input;
  const figures = figuresOf(input);
  const { rim } = drumLevels(figures);
  const h = isSmall ? Math.max(figures.drumDiameter / 8.2, rim / 26) : Math.max(2.2 * figures.drumDiameter, rim) / 46;
  const lengthText = (meters: number) => (isSmall ? tapeLength : wordLength)(profile, meters);
  const heights = isSmall ? heightOverFloor : everyHeight;
  return drawing({
    title: titled(name, 'settling drum in section'),
    notes: notesFor(figures, profile),
    entities: [
      ...drumBody(figures, h, lengthText),
      ...sizes(figures, h, lengthText, (isSmall ? 5.4 : 7) * h),
      ...callouts(levelList(figures, h, heights(figures, lengthText)), figures.drumDiameter / 2 + 7 * h, h),
    ],
    textHeight: h,
    fullSize: false,
    units: profile.name,
  });
}

function figuresOf(input: DrumSectionInput): DrumFigures {
  const { drumDiameter, depth, coneHeight = 0, rise = 0, stand = 0 } = input;
  return {
    drumDiameter,
    depth,
    coneHeight,
    coneTop: input.coneTop ?? drumDiameter,
    coneBottom: input.coneBottom ?? 0,
    rise: coneHeight > 0 ? rise : 0,
    stand,
    drumHeight: Math.max(
      input.drumHeight ?? 0,
      rise + coneHeight + depth + (input.drumHeight === undefined ? depth / 6 : 0),
    ),
    container: input.container,
    drainDrop: input.drainDrop,
    ports: tankPorts(depth, coneHeight + rise, stand),
  };
}

function notesFor({ coneHeight, coneTop, coneBottom, stand }: DrumFigures, profile: Profile): readonly string[] {
  const angle = Math.atan2(coneHeight, (coneTop - coneBottom) / 2);
  const fullDrum = profile.name === 'US' ? '500 lb' : '230 kg';
  return [
    ...(coneHeight > 0
      ? [`Cone wall about ${Math.round((angle * 180) / Math.PI)}° from horizontal. Hatched: base mix behind the cone.`]
      : []),
    stand > 0
      ? `A full drum weighs about ${fullDrum}: never be under it while it fills, and shore it before you move it.`
      : `A full drum weighs about ${fullDrum}: make sure that the floor carries it.`,
    'Keep electrical connections off the drum; use ground-fault protection and drip loops.',
  ];
}

type Worded = (meters: number) => string;

interface Height {
  readonly name: string;
  readonly bottom: number;
  readonly top: number;
}

/** Inside diameter above the rim, and a chain of heights on the left with its text beside it, where there is always room. */
function sizes(figures: DrumFigures, h: number, word: Worded, aside: number): readonly Entity[] {
  const radius = figures.drumDiameter / 2;
  const { floor, coneFoot, coneHead, water, rim } = drumLevels(figures);
  const heights: readonly Height[] = [
    { name: 'depth', bottom: coneHead, top: water },
    { name: 'cone', bottom: coneFoot, top: coneHead },
    { name: 'rise', bottom: floor, top: coneFoot },
    { name: 'stand', bottom: 0, top: floor },
  ].filter(({ bottom, top }) => top > bottom);
  const size = word(figures.drumDiameter);
  // Beside a small drum there is no room for words, and its picture stands among them.
  const across = figures.drumDiameter < 10 * h ? size : `inside diameter ${size}`;
  const named = heights.map(({ name, bottom, top }) => ({
    from: { x: -radius - aside, y: (bottom + top) / 2 },
    name,
    lines: [word(top - bottom)],
  }));
  return [
    {
      shape: 'length dimension',
      from: { x: -radius, y: rim },
      to: { x: radius, y: rim },
      offset: 2.5 * h,
      text: textWidth(across, h) + h > figures.drumDiameter ? across.replace('diameter ', 'diameter\n') : across,
    },
    ...heights.map(
      ({ bottom, top }): Entity => ({
        shape: 'length dimension',
        from: { x: -radius, y: bottom },
        to: { x: -radius, y: top },
        offset: aside,
        text: '',
      }),
    ),
    ...callouts(named, -radius - aside - 2.8 * h, h, -1),
  ];
}

type HeightLines = (height: number) => readonly string[];

function everyHeight(figures: DrumFigures, word: Worded): HeightLines {
  const { floor, coneHead } = drumLevels(figures);
  return (height) => [
    ...(figures.coneHeight > 0 && height > coneHead ? [`${word(height - coneHead)} above cone top`] : []),
    ...(height > floor ? [`${word(height - floor)} above drum floor`] : []),
    ...(figures.stand > 0 && height > 0 ? [`${word(height)} above ground`] : []),
  ];
}

function heightOverFloor({ stand }: DrumFigures, word: Worded): HeightLines {
  return (height) => {
    if (height > stand) return [word(height - stand), 'above floor'];
    return stand > 0 ? [word(stand), 'above ground'] : [];
  };
}

function levelList(figures: DrumFigures, h: number, linesAt: HeightLines): readonly Level[] {
  const { ports, drumDiameter, coneHeight } = figures;
  const { floor, coneHead, water } = drumLevels(figures);
  const wall = drumDiameter / 2;
  const level = (name: string, y: number, x = wall): Level => ({ from: { x, y }, name, lines: linesAt(y) });
  return [
    level('water line', water),
    ...ports.map(({ port, aboveFloor }, i) => level(port, floor + aboveFloor, pipeEnd(wall, i === 0 ? -1 : 1, h))),
    ...(coneHeight > 0 ? [level('cone top', coneHead)] : []),
    level('drum floor', floor),
  ];
}
