import type { Kind } from '../../units/kinds';
import type { Field } from './field';

const read = (kind: Kind, entry: string): string => `SILT.UNIT.READ(SiltUnits,"${kind}",${entry})`;
const entry = String.raw`("(?:[^"]|"")*"|[-+.\deE]+)`;

/** What is measured on the drum, and what is known of its cone; the letters are those of the picture. */
export const measureFields = {
  name: {
    label: 'A name for the drum',
    hint: 'any word, to tell it from the next one',
    sheet: 'drums',
    cell: 'A#',
    isNeeded: true,
  },
  held: {
    label: 'What it held before',
    hint: 'use a drum that held food only',
    sheet: 'drums',
    cell: 'B#',
    isNeeded: true,
  },
  diameter: {
    label: 'Inside diameter',
    hint: 'straight across the inside, where the rim of the cone will sit; measure twice, crosswise',
    letter: 'A',
    sheet: 'drums',
    cell: 'C#',
    kind: 'dimension',
    bounds: { above: 0 },
    isNeeded: true,
  },
  girth: {
    label: 'Girth',
    hint: 'around the outside, level, between two ribs',
    letter: 'A',
    sheet: 'drums',
    cell: 'D#',
    kind: 'dimension',
    bounds: { above: 0 },
    isNeeded: true,
  },
  wall: {
    label: 'Wall of the drum',
    hint: 'its thickness; left out, it is 0',
    sheet: 'drums',
    cell: 'E#',
    kind: 'dimension',
    bounds: { atLeast: 0 },
  },
  drain: {
    label: 'Drain bore',
    hint: 'across the hole that the solids leave through',
    letter: 'B',
    sheet: 'drums',
    cell: 'F#',
    kind: 'dimension',
    bounds: { atLeast: 0 },
    isNeeded: true,
  },
  angle: {
    label: 'Wall of the cone from level',
    hint: '45 degrees or steeper, so that solids slide; 60 is better where there is height',
    letter: 'C',
    sheet: 'drums',
    cell: 'G#',
    kind: 'angle',
    bounds: { above: 0 },
    isNeeded: true,
    worked: {
      formula: (typed, row) => `=IF(K${row}="","",SILT.CONE.HEIGHT(SiltUnits,K${row},F${row},${typed}))`,
      entry: new RegExp(String.raw`SILT\.CONE\.HEIGHT\(SiltUnits,\$?K\$?\d+,\$?F\$?\d+,${entry}\)`, 'i'),
    },
  },
  height: {
    label: 'Height of the cone',
    hint: 'straight up, from the drain to the rim',
    letter: 'C',
    sheet: 'drums',
    cell: 'G#',
    kind: 'dimension',
    bounds: { above: 0 },
    isNeeded: true,
  },
  slant: {
    label: 'Slant of the cone',
    hint: 'along the wall, from the edge of the drain to the rim',
    letter: 'C',
    sheet: 'drums',
    cell: 'G#',
    kind: 'dimension',
    bounds: { above: 0 },
    isNeeded: true,
    worked: {
      formula: (typed, row) => `=SQRT(${read('dimension', typed)}^2-((K${row}-${read('dimension', `F${row}`)})/2)^2)`,
      entry: new RegExp(String.raw`^=SQRT\(SILT\.UNIT\.READ\(SiltUnits,"dimension",${entry}\)\^2-`, 'i'),
    },
  },
  depth: {
    label: 'Water above the cone',
    hint: 'from the rim of the cone up to the water line',
    letter: 'D',
    sheet: 'drums',
    cell: 'J#',
    kind: 'dimension',
    bounds: { above: 0 },
    isNeeded: true,
  },
} as const satisfies Readonly<Record<string, Field>>;
