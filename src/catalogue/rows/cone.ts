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
    summary: 'Unrolls a cone: the pattern row to mark and cut, from tape-measure readings.',
    arguments: {
      top,
      bottom,
      height,
      pieces,
      lap,
      thickness,
      measured,
      clearance: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'gap all round that is left at the top' },
    },
    result: { row: patternColumns },
    compute: (given) => conePattern(given),
    formula:
      'slant s = √(h² + ((D - d)/2)²); radii D s/(D - d) and d s/(D - d); sector angle = 360° × cos(wall angle) / pieces',
    notes: [
      ...measuredNotes,
      'Equal diameters give a cylinder: radii and sector angle stay blank. The lap is a strip along the counter-clockwise edge; the blank is the smallest rectangle that holds a piece with its lap.',
      '45° gives 254.6° and 60° gives 180° whatever the diameters.',
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
    summary: 'Height that gives a cone’s wall the angle.',
    arguments: {
      top,
      bottom,
      angle: { kind: 'angle', above: 0, below: 90 * degree, meaning: 'wall angle from the horizontal' },
    },
    result: { scalar: 'dimension' },
    compute: (given) => coneHeight(given.top, given.bottom, given.angle),
    formula: 'height = tan(angle) × (top - bottom) / 2',
    notes: ['45° is the least that practice asks of fish solids, 60° that standards ask of sludge hoppers.'],
    sources: [geometry, 'Recommended Standards for Wastewater Facilities: hopper walls 1.7 to 1 = 59.5°'],
    example: { formula: '=SILT.CONE.HEIGHT("US",22.5,4,45)', gives: '9.25' },
  }),
  define({
    name: 'CONE.VOLUME',
    summary: 'Volume held by a cone.',
    arguments: { top, bottom, height },
    result: { scalar: 'volume' },
    compute: (given) => coneVolume(given.top, given.bottom, given.height),
    formula: 'volume = π/12 × height × (top² + top × bottom + bottom²)',
    sources: [geometry],
    example: { formula: '=SILT.CONE.VOLUME("US",22.5,4,9.25)', gives: '6.418' },
  }),
];
