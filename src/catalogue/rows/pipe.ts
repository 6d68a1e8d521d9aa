import { pipeDuty, pipePower } from '../../formulas/pipe/pipe-duty';
import { pipeGravity, pipeLoss, pipeVelocity } from '../../formulas/pipe/pipe-flow';
import { pipeBore, pipeSize } from '../../formulas/pipe/pipe-sizes';
import { define } from '../define';
import { bore, fittings, flow, length, nominal, roughness, temperature } from '../pipe-arguments';

const friction = [
  'Darcy and Weisbach; Colebrook, Journal of the Institution of Civil Engineers 11:133 (1939)',
  'Crane Technical Paper 410, fittings',
];
const frictionNotes = [
  'Laminar below Re 2000, Colebrook above 4000, and a smooth blend between. For fresh water.',
  'Published tables of fittings differ up to threefold: these are Crane’s, by equivalent length.',
];
const bores = ['ASTM D1785, tables 1 and 2', 'EN ISO 1452-2, table 2 (from memory)'];
const electricity =
  'Pumps near water need ground-fault protection and drip loops. Switch the power off before you put hands in the water. A licensed electrician decides.';
const schedule = {
  kind: 'number',
  above: 0,
  default: 40,
  meaning: 'schedule 40 or 80; for metric pipe the pressure class 10 or 16',
} as const;

export const pipeRows = [
  define({
    name: 'PIPE.BORE',
    summary: 'Average inside diameter of a pipe of a nominal size; #N/A if none is published.',
    arguments: { nominal, schedule },
    result: { scalar: 'dimension' },
    compute: (given) => pipeBore(given.nominal, given.schedule),
    formula: 'published averages, not outside diameter - 2 × minimum wall',
    notes: ['The nominal size is in inches in every profile; text that ends in mm is a metric outside diameter.'],
    sources: bores,
    example: { formula: '=SILT.PIPE.BORE("US","1-1/2")', gives: '1.59' },
  }),
  define({
    name: 'PIPE.VELOCITY',
    summary: 'Mean velocity in a pipe.',
    arguments: { flow, bore },
    result: { scalar: 'velocity' },
    compute: (given) => pipeVelocity(given.flow, given.bore),
    formula: 'velocity = flow / (π/4 × bore²)',
    sources: ['Continuity'],
    example: { formula: '=SILT.PIPE.VELOCITY("US",20,1.59)', gives: '3.23' },
  }),
  define({
    name: 'PIPE.LOSS',
    summary: 'Head loss in a pipe with its fittings.',
    arguments: { flow, bore, length, fittings, temperature, roughness },
    result: { scalar: 'run' },
    compute: (given) => pipeLoss(given.flow, given),
    formula: 'head = (f L/D + K) v² / 2g',
    notes: frictionNotes,
    sources: friction,
    example: { formula: '=SILT.PIPE.LOSS("US",20,1.59,100)', gives: '2.71' },
  }),
  define({
    name: 'PIPE.GRAVITY',
    summary: 'Gravity flow through a full pipe for a drop in water level.',
    arguments: {
      bore,
      length,
      drop: { kind: 'run', atLeast: 0, meaning: 'drop from water surface to water surface' },
      fittings,
      temperature,
      roughness,
      ends: {
        kind: 'number',
        atLeast: 0,
        atMost: 100,
        default: 'pipe ends',
        meaning: 'K of the pipe’s entrance and exit',
      },
    },
    result: { scalar: 'flow' },
    compute: (given) => pipeGravity(given),
    formula: 'the inverse of PIPE.LOSS, with the K of the ends added',
    notes: [
      'With ends 0 only friction counts. Solids settle in slow pipes: keep pipes short, steep and easy to flush.',
    ],
    sources: friction,
    example: { formula: '=SILT.PIPE.GRAVITY("US",2.047,10,0.5)', gives: '35.4' },
  }),
  define({
    name: 'PIPE.SIZE',
    summary: 'Smallest nominal pipe size that keeps the velocity within a limit.',
    arguments: {
      flow,
      fastest: { kind: 'velocity', above: 0, meaning: 'highest velocity allowed' },
      schedule,
    },
    result: { text: true },
    compute: (given) => pipeSize(given.flow, given.fastest, given.schedule),
    formula: 'the smallest size in which flow / area is at most the limit',
    sources: ['Continuity', ...bores],
    example: { formula: '=SILT.PIPE.SIZE("US",20,3)', gives: '2 in' },
  }),
  define({
    name: 'PIPE.DUTY',
    summary: 'Flow and head where a pump’s curve meets the pipework.',
    arguments: {
      curve: {
        table: { flow: { kind: 'flow', atLeast: 0 }, head: { kind: 'run', atLeast: 0 } },
        meaning: 'rows of flow and head from the maker’s curve',
      },
      lift: { kind: 'run', atLeast: 0, meaning: 'height from water surface to water surface or open end' },
      bore,
      length,
      fittings,
      temperature,
      roughness,
    },
    result: { row: { flow: { kind: 'flow' }, head: { kind: 'run' } } },
    compute: (given) => pipeDuty(given),
    formula: 'pump head(flow) = lift + loss(flow); the curve is monotone cubic between its points',
    notes: ['The curve is not extrapolated beyond its points.', electricity],
    sources: ['Fritsch and Butland, SIAM Journal on Scientific and Statistical Computing 5:300 (1984)', ...friction],
    example: { formula: '=SILT.PIPE.DUTY("US",{0,12;10,10;20,6;30,0},4,1.59,30,"3 elbow")', gives: '21.5, 5.26' },
  }),
  define({
    name: 'PIPE.POWER',
    summary: 'Electrical power that a pump draws.',
    arguments: {
      flow,
      head: { kind: 'run', atLeast: 0, meaning: 'head that the pump must deliver' },
      efficiency: { kind: 'share', above: 0, default: 'pump efficiency', meaning: 'efficiency from wire to water' },
    },
    result: { scalar: 'power' },
    compute: (given) => pipePower(given.flow, given.head, given.efficiency),
    formula: 'power = density × g × flow × head / efficiency',
    notes: [electricity],
    sources: ['Definition of hydraulic power'],
    example: { formula: '=SILT.PIPE.POWER("US",40,8,40%)', gives: '150.6' },
  }),
];
