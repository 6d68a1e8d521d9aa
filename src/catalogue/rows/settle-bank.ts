import { pipeVelocity } from '../../formulas/pipe/pipe-flow';
import { type Mixing, settleCapture } from '../../formulas/settle/settle-capture';
import { settleCheck } from '../../formulas/settle/settle-check';
import { settleDrums, settleOverflow } from '../../formulas/settle/settle-drums';
import { settleJar } from '../../formulas/settle/settle-jar';
import { wordText } from '../../units/text';
import { Unreadable } from '../../units/unreadable';
import type { ReaderArgument } from '../argument';
import { coefficient } from '../coefficients/all';
import { define } from '../define';

const davidson = 'Davidson and Summerfelt, Aquacultural Engineering 33:47 (2005)';
const continuity = 'Continuity: velocity = flow / area';
const flow = { kind: 'flow', atLeast: 0, meaning: 'flow through the bank' } as const;
const diameter = { kind: 'dimension', above: 0, meaning: 'inside diameter of a drum' } as const;
const drumCount = { kind: 'count', atLeast: 1, whole: true, meaning: 'drums side by side' } as const;
const overflow = { kind: 'loading', above: 0, meaning: 'surface overflow rate' } as const;

/** `mixed`, `ideal`, or the number of equal well-mixed cells that share the area; one cell is mixed. */
const mixing: ReaderArgument<Mixing> = {
  meaning: 'mixed, ideal, or a number of equal mixed cells sharing the area',
  accepts: 'mixed, ideal, or a whole number of cells',
  default: 1,
  defaultReads: 'mixed',
  reader: (value) => {
    const typed = String(value).trim().toLowerCase();
    if (typed === 'mixed') return 1;
    if (typed === 'ideal') return 'ideal';
    const cells = typeof value === 'boolean' ? Number.NaN : Number(typed);
    if (Number.isInteger(cells) && cells >= 1 && cells <= 1000) return cells;
    throw new Unreadable(
      `${value === 0 ? '0 or blank' : wordText(typed)} is not allowed; give mixed, ideal, or a whole number of cells from 1 to 1000`,
    );
  },
};

/** Drums in a bank: how fast water rises in them, how many are needed, and what they capture. */
export const settleBankRows = [
  define({
    name: 'SETTLE.OVERFLOW',
    summary: 'Surface overflow rate of drums side by side.',
    arguments: { flow, diameter, count: { ...drumCount, default: 1 } },
    result: { scalar: 'loading' },
    compute: (given) => settleOverflow(given.flow, given.diameter, given.count),
    formula: 'overflow rate = flow / (count × π/4 × diameter²)',
    notes: ['In an ideal drum, only solids that settle faster than this are captured in full.'],
    sources: ['Hazen, Transactions of the American Society of Civil Engineers 53:45 (1904)'],
    example: { formula: '=SILT.SETTLE.OVERFLOW("US",12.7,22.5)', gives: '4.6' },
  }),
  define({
    name: 'SETTLE.DRUMS',
    summary: 'Whole number of drums needed side by side for an overflow rate.',
    arguments: { flow, diameter, overflow },
    result: { scalar: 'count' },
    compute: (given) => settleDrums(given.flow, given.diameter, given.overflow),
    formula: 'drums = flow / (π/4 × diameter² × overflow rate), rounded up',
    notes: [
      'Swirl and radial-flow settlers were measured at 11.2 m/h (4.6 gpm/ft²). Municipal practice, 1.7 m/h, makes them 6.6 times too large.',
    ],
    sources: [davidson],
    example: { formula: '=SILT.SETTLE.DRUMS("US",40,22.5,4.6)', gives: '4' },
  }),
  define({
    name: 'SETTLE.CAPTURE',
    summary: 'Share of solids captured, over the spread of their settling velocities.',
    arguments: {
      overflow,
      median: { kind: 'settling', above: 0, meaning: 'median settling velocity of what settles' },
      spread: { kind: 'number', atLeast: 1, atMost: 100, meaning: 'geometric standard deviation' },
      mixing,
      settleable: { kind: 'share', default: 1, meaning: 'share of the solids that settles at all' },
      inLine: { kind: 'count', atLeast: 1, atMost: 100, whole: true, default: 1, meaning: 'drums one after another' },
    },
    result: { scalar: 'share' },
    compute: (given) => settleCapture(given),
    formula: 'mean over log-normal v of 1 - (1 + v/(n v0))^(-n k) in n mixed cells, or of min(1, v/v0) if ideal',
    notes: [
      'For drums one after another, each velocity is compounded by itself: what passes the first drum settles more slowly.',
      'With more and more cells capture tends to 1 - exp(-v/v0), not to ideal. In recirculated water much of the solids never settles.',
    ],
    sources: [
      'Hazen (1904); Levenspiel, Chemical Reaction Engineering: tanks in series',
      'Veerapen, Lowry and Couturier, Aquacultural Engineering 33:21 (2005): a swirl separator is well mixed',
    ],
    example: { formula: '=SILT.SETTLE.CAPTURE("metric",11.2,17,2.5,"mixed",0.45)', gives: '0.365' },
  }),
  define({
    name: 'SETTLE.JAR',
    summary: 'Median, spread and settleable share from your own jar test, for SETTLE.CAPTURE.',
    arguments: {
      fall: { kind: 'dimension', above: 0, meaning: 'depth of the water in the jar' },
      readings: {
        table: { time: { kind: 'minutes', above: 0 }, share: { kind: 'share' } },
        meaning: 'rows of minutes and share settled by that time',
      },
    },
    result: {
      row: { median: { kind: 'settling' }, spread: { kind: 'number' }, settleable: { kind: 'share' } },
    },
    compute: ({ fall, readings }) => settleJar(fall, readings),
    formula: 'least squares of settleable × mean of min(1, v t / fall) over log-normal v',
    notes: [
      'How to measure: fill one tall jar of tank water for each time, stir and let them stand. At each time draw off what has settled in one jar, dry it, and divide by the dry mass of all the solids in a jar.',
    ],
    sources: ['Hazen (1904) for a jar that is well mixed at the start'],
    example: {
      formula: '=SILT.SETTLE.JAR("metric",300,{0.25,0.30;0.5,0.42;1,0.52;2,0.58;5,0.62;20,0.64})',
      gives: '7.38, 3.52, 0.637',
    },
  }),
  define({
    name: 'SETTLE.INLET',
    summary: 'Velocity in the inlet pipe.',
    arguments: {
      flow: { ...flow, meaning: 'flow through one inlet: that of the bank over its inlets' },
      bore: { kind: 'dimension', above: 0, meaning: 'inside diameter of the inlet' },
    },
    result: { scalar: 'velocity' },
    compute: (given) => pipeVelocity(given.flow, given.bore),
    formula: 'velocity = flow / (π/4 × bore²)',
    sources: [continuity],
    example: { formula: '=SILT.SETTLE.INLET("US",10,2.047)', gives: '0.97' },
  }),
  define({
    name: 'SETTLE.CHECK',
    summary: 'Cautions about overflow rate and inlet velocity.',
    arguments: {
      flow,
      diameter,
      count: drumCount,
      bore: { kind: 'dimension', above: 0, meaning: 'inside diameter of each inlet' },
      overflowLimit: {
        kind: 'loading',
        above: 0,
        default: 'overflow limit',
        meaning: 'highest overflow rate at which the capture is known',
      },
    },
    result: { lines: true },
    compute: (given) =>
      settleCheck({
        ...given,
        slowestInlet: coefficient('slowest inlet').typical,
        fastestInlet: coefficient('fastest inlet').typical,
      }),
    sources: [davidson, 'Inlet velocities: common practice, no source'],
    example: { formula: '=SILT.SETTLE.CHECK("US",40,22.5,1,2.047,4.6)', gives: 'sentences, one per row' },
    unpublished: 'Sentences about figures that other functions check.',
  }),
];
