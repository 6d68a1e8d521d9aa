import { coneBackfill } from '../../formulas/cone/cone-backfill';
import { coneCheck } from '../../formulas/cone/cone-check';
import { coneMarks } from '../../formulas/cone/cone-marks';
import { coneMix } from '../../formulas/cone/cone-mix';
import { coneRivets } from '../../formulas/cone/cone-rivets';
import { Refusal } from '../../formulas/refusal';
import type { Profile } from '../../units/profile';
import {
  bottom,
  cementBag,
  degree,
  dust,
  geometry,
  height,
  lap,
  measured,
  measuredNotes,
  mixParts,
  pieces,
  plastic,
  thickness,
  top,
} from '../cone-arguments';
import { define } from '../define';
import { patterns, pieceOf } from '../pattern-argument';

/** From the pattern to the cone in its drum: base mix, marks, rivets, cautions. */
export const coneBuildRows = [
  define({
    name: 'CONE.BACKFILL',
    summary: 'Base mix that fills the space between drum and cone.',
    arguments: {
      drum: { kind: 'dimension', above: 0, meaning: 'inside diameter of the drum' },
      top,
      bottom,
      height,
      thickness,
      measured,
      rise: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'height of the cone’s bottom above the drum floor' },
    },
    result: { scalar: 'bulk' },
    compute: (given) => coneBackfill(given),
    formula: 'volume = π/4 × drum² × (rise + height) - π/12 × height × (E² + E e + e²), E and e outside diameters',
    notes: [
      ...measuredNotes,
      'The space below the drain counts as mix; a drain pipe there takes up less than you spill.',
      dust,
    ],
    sources: [geometry],
    example: { formula: '=SILT.CONE.BACKFILL("US",22.5,22.5,4,9.25)', gives: '1.27' },
  }),
  define({
    name: 'CONE.MIX',
    summary: 'What to buy for a light base mix: aggregate, cement and bags.',
    arguments: {
      baseMix: { kind: 'bulk', atLeast: 0, meaning: 'base mix in place' },
      parts: { ...mixParts, default: 'mix parts' },
      waste: { kind: 'share', atMost: 10, default: 'mix waste', meaning: 'extra share for spilling' },
      bag: {
        kind: 'mass',
        above: 0,
        default: (_: unknown, profile: Profile) => cementBag(profile),
        defaultReads: '94 lb (US), 25 kg (metric)',
        meaning: 'cement in a bag',
      },
    },
    result: { row: { aggregate: { kind: 'bulk' }, cement: { kind: 'mass' }, bags: { kind: 'count' } } },
    compute: ({ baseMix, parts, waste, bag }) => coneMix(baseMix, parts, waste, bag),
    formula: 'aggregate = base mix × (1 + waste); cement = aggregate / parts × 94 lb/ft³; bags rounded up',
    notes: ['The mix has the volume of its aggregate: cement and water fill the gaps between the grains.', dust],
    sources: ['Perlite Institute, perlite concrete: a 94 lb sack yields 4, 5, 6, 8 ft³ at 1:4, 1:5, 1:6, 1:8'],
    example: { formula: '=SILT.CONE.MIX("US",6,6,"0 %")', gives: '6, 94, 1' },
  }),
  define({
    name: 'CONE.MARKS',
    summary: 'Points to mark, measured from the lower-left corner of the blank, so that no large compass is needed.',
    arguments: {
      pattern: { ...patterns, meaning: 'one row of ten columns from CONE.PATTERN' },
      step: { kind: 'angle', above: 0, default: 15 * degree, meaning: 'degrees between marks' },
    },
    result: {
      rows: {
        mark: { text: true },
        angle: { kind: 'angle', blank: true },
        outerX: { kind: 'dimension', blank: true, heading: 'outer arc x' },
        outerY: { kind: 'dimension', blank: true, heading: 'outer arc y' },
        innerX: { kind: 'dimension', blank: true, heading: 'inner arc x' },
        innerY: { kind: 'dimension', blank: true, heading: 'inner arc y' },
        distance: { kind: 'dimension', blank: true, heading: 'check distance' },
      },
    },
    compute: ({ pattern, step }, profile) => {
      const [row, ...others] = pattern;
      if (row === undefined || others.length > 0)
        throw new Refusal('pattern', `${pattern.length} rows are not allowed; give one`);
      return coneMarks(pieceOf('pattern', row, profile), step);
    },
    formula: 'x and y of points at equal angles on both arcs, then distances between corners',
    notes: [
      'x runs along the length of the blank. Bend a thin batten through the marks and check the distances with a tape.',
    ],
    sources: ['Polar coordinates'],
    example: {
      formula: '=SILT.CONE.MARKS("US",SILT.CONE.PATTERN("US",22.5,4,9.25),30,TRUE)',
      gives: 'one row per mark',
    },
  }),
  define({
    name: 'CONE.RIVETS',
    summary: 'Rivets along one seam.',
    arguments: {
      slant: { kind: 'dimension', above: 0, meaning: 'length of the seam' },
      spacing: { kind: 'dimension', above: 0, meaning: 'largest distance between rivets' },
      edge: {
        kind: 'dimension',
        atLeast: 0,
        default: ({ slant, spacing }: { readonly slant: number; readonly spacing: number }) =>
          Math.min(spacing, slant) / 2,
        defaultReads: 'half the spacing',
        meaning: 'distance from the seam’s ends',
      },
    },
    result: { scalar: 'count' },
    compute: ({ slant, spacing, edge }) => coneRivets(slant, spacing, edge),
    formula: 'rivets = 1 + (slant - 2 × edge) / spacing, rounded up',
    sources: ['Division of a length into equal spaces'],
    example: { formula: '=SILT.CONE.RIVETS("US",13.08,1.5)', gives: '9' },
  }),
  define({
    name: 'CONE.CHECK',
    summary: 'Cautions about a cone before you cut it, and what CONE.PATTERN would refuse.',
    arguments: {
      top,
      bottom,
      height,
      pieces,
      lap,
      thickness,
      drum: { kind: 'dimension', above: 0, optional: true, meaning: 'inside diameter of the drum' },
      sheetLength: { kind: 'dimension', above: 0, optional: true, meaning: 'length of a sheet' },
      sheetWidth: { kind: 'dimension', above: 0, optional: true, meaning: 'width of a sheet' },
    },
    result: { lines: true },
    compute: (given) => coneCheck(given),
    notes: [dust, plastic],
    sources: [
      '45° for fish solids: common practice, no source',
      'Recommended Standards for Wastewater Facilities: hopper walls 1.7 to 1 = 59.5°',
    ],
    example: { formula: '=SILT.CONE.CHECK("US",22.5,4,9.25,1,0.5,0,22.5,36,24)', gives: 'sentences, one per row' },
    unpublished: 'Sentences about figures that other functions check.',
  }),
];
