import { coneAngle, coneHeight, coneVolume } from '../../formulas/cone/cone';
import { conePattern } from '../../formulas/cone/cone-pattern';
import {
  bottom,
  degree,
  geometry,
  height,
  lap,
  measured,
  measuredNotes,
  pieces,
  plastic,
  thickness,
  top,
} from '../cone-arguments';
import { define } from '../define';
import { patternColumns } from '../pattern-columns';

export const coneRows = [
  define({
    name: 'CONE.PATTERN',
    summary: 'Unrolls a cone: the pattern to mark and cut, from tape-measure readings.',
    arguments: {
      top,
      bottom,
      height,
      pieces,
      lap,
      thickness,
      measured,
      clearance: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'gap to leave all round at the top' },
    },
    result: { row: patternColumns },
    compute: (given) => conePattern(given),
    formula:
      'slant s = √(h² + ((D - d)/2)²); radii D s/(D - d) and d s/(D - d); sector angle = 360° × cos(wall angle) / pieces',
    notes: [
      ...measuredNotes,
      'Equal diameters give a cylinder: radii and sector angle stay blank. The lap is a strip along the counter-clockwise edge; the blank is the smallest rectangle that holds a piece with its lap.',
      'A 45° wall gives a sector of 254.6° and a 60° wall one of 180°, for any diameters.',
      plastic,
    ],
    sources: [geometry],
    example: {
      formula: '=SILT.CONE.PATTERN("US",22.5,4,9.25)',
      gives: '45.0, 13.08, 2.828, 15.91, 254.6, 31.82, 25.55, 3.78, 1, 0',
    },
  }),
  define({
    name: 'CONE.ANGLE',
    summary: 'Wall angle of a cone from the horizontal.',
    arguments: { top, bottom, height },
    result: { scalar: 'angle' },
    compute: (given) => coneAngle(given.top, given.bottom, given.height),
    formula: 'angle = atan(2 × height / (top - bottom))',
    sources: [geometry],
    example: { formula: '=SILT.CONE.ANGLE("US",22.5,4,9.25)', gives: '45' },
  }),
  define({
    name: 'CONE.HEIGHT',
    summary: 'Height of a cone whose wall has a given angle.',
    arguments: {
      top,
      bottom,
      angle: { kind: 'angle', above: 0, below: 90 * degree, meaning: 'wall angle from the horizontal' },
    },
    result: { scalar: 'dimension' },
    compute: (given) => coneHeight(given.top, given.bottom, given.angle),
    formula: 'height = tan(angle) × (top - bottom) / 2',
    notes: ['Common practice is at least 45° for fish solids; standards ask for 60° in sludge hoppers.'],
    sources: [geometry, 'Recommended Standards for Wastewater Facilities: hopper walls 1.7 to 1 = 59.5°'],
    example: { formula: '=SILT.CONE.HEIGHT("US",22.5,4,45)', gives: '9.25' },
  }),
  define({
    name: 'CONE.VOLUME',
    summary: 'Volume that a cone holds.',
    arguments: { top, bottom, height },
    result: { scalar: 'volume' },
    compute: (given) => coneVolume(given.top, given.bottom, given.height),
    formula: 'volume = π/12 × height × (top² + top × bottom + bottom²)',
    sources: [geometry],
    example: { formula: '=SILT.CONE.VOLUME("US",22.5,4,9.25)', gives: '6.418' },
  }),
];
