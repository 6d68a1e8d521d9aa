import { Refusal } from '../../formulas/refusal';
import {
  settlingGrain,
  settlingReynoldsNumber,
  settlingStokes,
  settlingVelocity,
} from '../../formulas/settle/settling-velocity';
import { define } from '../define';
import { salinity, temperature } from '../water-arguments';

const particle = {
  size: { kind: 'particle', above: 0, meaning: 'diameter of the grain' },
  density: { kind: 'density', above: 0, meaning: 'of the grain, such as SG 1.05' },
  temperature,
  salinity,
} as const;

export const settleRows = [
  define({
    name: 'SETTLE.STOKES',
    summary: 'Stokes settling velocity of a small grain; #N/A if the grain is too fast for Stokes’ law.',
    arguments: particle,
    result: { scalar: 'settling' },
    compute: ({ size, density, temperature: t, salinity: s }) => settlingStokes(size, density, t, s),
    formula: 'v = g d² (grain density - water density) / (18 × viscosity)',
    notes: [
      'Valid up to a particle Reynolds number of 1; above that use SETTLE.VELOCITY.',
      'A grain lighter than water rises: its velocity is negative.',
    ],
    sources: ['Stokes (1851)', 'Davis, Water and Wastewater Engineering (2010), example 10-1'],
    example: { formula: '=SILT.SETTLE.STOKES("metric",0.1,1190,25)', gives: '1.18' },
  }),
  define({
    name: 'SETTLE.VELOCITY',
    summary: 'Terminal settling velocity of a grain of any size, by a drag law.',
    arguments: particle,
    result: { scalar: 'settling' },
    compute: ({ size, density, temperature: t, salinity: s }) => settlingVelocity(size, density, t, s),
    formula: 'weight in water = drag, with Cd = 24/Re (1 + 0.27 Re)^0.43 + 0.47 (1 - exp(-0.04 Re^0.38))',
    notes: [
      'For spheres; #N/A above a Reynolds number of 200,000. Flakes and strings settle more slowly: time your own in a jar.',
      'A grain lighter than water rises: its velocity is negative.',
    ],
    sources: ['Cheng, Powder Technology 189:395 (2009)'],
    example: { formula: '=SILT.SETTLE.VELOCITY("metric",1,2650,20)', gives: '155.9' },
  }),
  define({
    name: 'SETTLE.REYNOLDS',
    summary: 'Particle Reynolds number at the terminal velocity.',
    arguments: particle,
    result: { scalar: 'number' },
    compute: ({ size, density, temperature: t, salinity: s }) => settlingReynoldsNumber(size, density, t, s),
    formula: 'Re = water density × velocity × size / viscosity',
    sources: ['Cheng, Powder Technology 189:395 (2009)'],
    example: { formula: '=SILT.SETTLE.REYNOLDS("metric",1,2650,20)', gives: '155.4' },
  }),
  define({
    name: 'SETTLE.GRAIN',
    summary: 'Grain that just settles at a velocity.',
    arguments: {
      velocity: { kind: 'settling', meaning: 'settling velocity; negative for a grain that rises' },
      density: particle.density,
      temperature,
      salinity,
    },
    result: { scalar: 'particle' },
    compute: ({ velocity, density, temperature: t, salinity: s }) => {
      if (velocity === 0) throw new Refusal('velocity', 'give a velocity above 0, or below 0 for a grain that rises');
      return settlingGrain(velocity, density, t, s);
    },
    formula: 'the inverse of SETTLE.VELOCITY',
    sources: ['Cheng, Powder Technology 189:395 (2009)'],
    example: { formula: '=SILT.SETTLE.GRAIN("metric",3.1,1100,20)', gives: '0.246' },
  }),
];
