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
  'Laminar below Re 2000, Colebrook above 4000, blended between without a jump. Fresh water.',
  'Tables of fittings differ as much as three times: these are Crane’s, by equivalent length.',
];
const bores = ['ASTM D1785, tables 1 and 2', 'EN ISO 1452-2, table 2 (from memory)'];
const electricity =
  'Pumps near water: ground-fault protection, drip loops, power off before hands go in. A licensed electrician decides.';
const schedule = {
  kind: 'number',
  above: 0,
  default: 40,
  meaning: 'schedule 40 or 80; for metric pipe the pressure class 10 or 16',
} as const;

export const pipeRows = [
  define({
    name: 'PIPE.BORE',
    summary: 'Average inside diameter of a pipe by its nominal size; #N/A where none is published.',
    arguments: { nominal, schedule },
    result: { scalar: 'dimension' },
    compute: (given) => pipeBore(given.nominal, given.schedule),
    formula: 'published averages, not the outside diameter less two least walls',
    notes: [
      'The nominal size is an inch name whatever the profile; text that ends in mm is a metric outside diameter.',
    ],
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
    summary: 'Head lost in a pipe with its fittings.',
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
    summary: 'Flow that a drop in level drives through a full pipe.',
    arguments: {
      bore,
      length,
      drop: { kind: 'run', atLeast: 0, meaning: 'drop from water surface to water surface' },
      fittings,
      temperature,
      roughness,
      ends: { kind: 'number', atLeast: 0, atMost: 100, default: 'pipe ends', meaning: 'K of entrance and exit' },
    },
    result: { scalar: 'flow' },
    compute: (given) => pipeGravity(given),
    formula: 'the inverse of PIPE.LOSS, with the K of the ends added',
    notes: ['Ends 0 is friction alone. Solids settle in slow pipes: keep them short, steep and easy to flush.'],
    sources: friction,
    example: { formula: '=SILT.PIPE.GRAVITY("US",2.047,10,0.5)', gives: '35.4' },
  }),
  define({
    name: 'PIPE.SIZE',
    summary: 'Smallest nominal size in which water is not faster than a velocity.',
    arguments: {
      flow,
      fastest: { kind: 'velocity', above: 0, meaning: 'fastest velocity wanted' },
      schedule,
    },
    result: { text: true },
    compute: (given) => pipeSize(given.flow, given.fastest, given.schedule),
    formula: 'the first size whose bore carries the flow no faster',
    sources: ['Continuity', ...bores],
    example: { formula: '=SILT.PIPE.SIZE("US",20,3)', gives: '2 in' },
  }),
  define({
    name: 'PIPE.DUTY',
    summary: 'Flow and head where a pump’s curve meets the pipework.',
    arguments: {
      curve: {
        table: { flow: { kind: 'flow', atLeast: 0 }, head: { kind: 'run', atLeast: 0 } },
        meaning: 'rows of flow, head from the maker’s curve',
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
    formula: 'pump head(flow) = lift + loss(flow), the curve monotone cubic between its points',
    notes: ['The curve is never carried beyond its points.', electricity],
    sources: ['Fritsch and Butland, SIAM Journal on Scientific and Statistical Computing 5:300 (1984)', ...friction],
    example: { formula: '=SILT.PIPE.DUTY("US",{0,12;10,10;20,6;30,0},4,1.59,30,"3 elbow")', gives: '21.5, 5.26' },
  }),
  define({
    name: 'PIPE.POWER',
    summary: 'Electrical power that a pump draws.',
    arguments: {
      flow,
      head: { kind: 'run', atLeast: 0, meaning: 'head that the pump works against' },
      efficiency: { kind: 'share', above: 0, default: 'pump efficiency', meaning: 'from wire to water' },
    },
    result: { scalar: 'power' },
    compute: (given) => pipePower(given.flow, given.head, given.efficiency),
    formula: 'power = density × g × flow × head / efficiency',
    notes: [electricity],
    sources: ['Definition of hydraulic power'],
    example: { formula: '=SILT.PIPE.POWER("US",40,8,40%)', gives: '150.6' },
  }),
];
