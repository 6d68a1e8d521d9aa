import { drawing } from '../drawing';
import type { Drawing, Entity } from '../drawing-model';
import { callouts } from '../level-callouts';
import { circle, closedPolyline, corners, line, polyline } from '../shapes';

const h = 0.062;

/** What a drum is built from, one part above the other in the order in which they go together. */
export function buyingDrawing(units: Drawing['units']): Drawing {
  const parts: readonly {
    readonly name: string;
    readonly words: string;
    readonly at: number;
    readonly shape: readonly Entity[];
  }[] = [
    {
      name: 'sheet',
      words: 'for the cone',
      at: 1.62,
      shape: closedPolyline('mark', 'outline', [
        { x: -0.3, y: 1.56 },
        { x: 0.2, y: 1.56 },
        { x: 0.3, y: 1.7 },
        { x: -0.2, y: 1.7 },
      ]),
    },
    { name: 'cone', words: 'rivets in its seam', at: 1.36, shape: cone(1.26) },
    { name: 'drum', words: 'inlet and outlet seals', at: 0.98, shape: drum(0.78) },
    { name: 'base mix', words: 'aggregate and cement', at: 0.62, shape: bags(0.54) },
    { name: 'drain', words: 'seat, fitting, plug', at: 0.43, shape: fitting(0.4) },
    { name: 'stand', words: 'posts and a top', at: 0.26, shape: stand(0.1) },
    { name: 'valve, pail', words: 'pipe, elbows, unions', at: 0.04, shape: pail(-0.08) },
  ];
  return drawing({
    title: 'What the drum is built from',
    notes: [],
    entities: [
      line('mark', 'center', { x: 0, y: 1.5 }, { x: 0, y: 0.02 }),
      ...parts.flatMap(({ shape }) => shape),
      ...callouts(
        parts.map(({ name, words, at }) => ({ from: { x: 0.32, y: at }, name, lines: [words] })),
        0.32 + 3.4 * h,
        h,
      ),
    ],
    textHeight: h,
    fullSize: false,
    units,
  });
}

function cone(foot: number): readonly Entity[] {
  const seam = [0.25, 0.5, 0.75].map((share) =>
    circle('mark', 'thin', { x: 0.07 + 0.17 * share, y: foot + 0.18 * share - 0.012 }, 0.008),
  );
  return [
    ...closedPolyline('mark', 'outline', [
      { x: -0.06, y: foot },
      { x: 0.06, y: foot },
      { x: 0.28, y: foot + 0.2 },
      { x: -0.28, y: foot + 0.2 },
    ]),
    ...seam,
  ];
}

function drum(floor: number): readonly Entity[] {
  const rib = (y: number): Entity => line('mark', 'thin', { x: -0.3, y }, { x: 0.3, y });
  return [
    ...closedPolyline('mark', 'outline', corners(-0.3, floor, 0.3, floor + 0.4)),
    rib(floor + 0.13),
    rib(floor + 0.27),
    circle('mark', 'outline', { x: -0.18, y: floor + 0.2 }, 0.03),
    circle('mark', 'outline', { x: 0.18, y: floor + 0.32 }, 0.03),
  ];
}

function bags(floor: number): readonly Entity[] {
  return [-0.17, 0.05].flatMap((x) => [
    ...closedPolyline('mark', 'outline', [
      { x, y: floor },
      { x: x + 0.14, y: floor },
      { x: x + 0.15, y: floor + 0.14 },
      { x: x - 0.01, y: floor + 0.14 },
    ]),
    line('mark', 'thin', { x: x - 0.01, y: floor + 0.115 }, { x: x + 0.15, y: floor + 0.115 }),
  ]);
}

function fitting(low: number): readonly Entity[] {
  return [
    ...closedPolyline('mark', 'outline', corners(-0.1, low + 0.03, 0.1, low + 0.055)),
    ...closedPolyline('mark', 'outline', corners(-0.04, low - 0.03, 0.04, low + 0.03)),
  ];
}

function stand(low: number): readonly Entity[] {
  return [
    ...closedPolyline('mark', 'outline', corners(-0.3, low + 0.18, 0.3, low + 0.215)),
    ...closedPolyline('mark', 'outline', corners(-0.29, low, -0.24, low + 0.18)),
    ...closedPolyline('mark', 'outline', corners(0.24, low, 0.29, low + 0.18)),
  ];
}

function pail(floor: number): readonly Entity[] {
  const valve = floor + 0.25;
  return [
    ...closedPolyline('mark', 'outline', [
      { x: -0.05, y: valve + 0.03 },
      { x: 0.05, y: valve - 0.03 },
      { x: 0.05, y: valve + 0.03 },
      { x: -0.05, y: valve - 0.03 },
    ]),
    ...polyline('mark', 'outline', [
      { x: -0.11, y: floor + 0.17 },
      { x: -0.09, y: floor },
      { x: 0.09, y: floor },
      { x: 0.11, y: floor + 0.17 },
    ]),
    line('mark', 'thin', { x: -0.11, y: floor + 0.17 }, { x: 0.11, y: floor + 0.17 }),
  ];
}
