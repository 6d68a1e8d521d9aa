import { range } from '../../formulas/numeric/range';
import { ofTopic, practice } from './coefficient';

const metcalf = 'Metcalf and Eddy, Wastewater Engineering';

/** Pipes, pumps and air. */
export const pipeCoefficients = [
  ...ofTopic('PIPE', [
    {
      key: 'pipe roughness',
      kind: 'particle',
      ...range(1.5e-6, 1.5e-6, 7e-6),
      source: 'Binder (1973), drawn tubing; CAE Tool, plastic',
      known: 'read',
      meaning:
        'roughness of the inside of new plastic pipe, as of drawn tubing and glass; some tables give up to 7 µm for plastic, and biofilm makes pipe rougher, so flush and allow for it',
    },
    {
      key: 'pipe ends',
      kind: 'number',
      ...range(1.04, 1.5, 1.78),
      source: 'Dusling, Applied Fluid Mechanics; Idelchik (1989)',
      known: 'read',
      meaning:
        'K of entrance and exit together: entrance 0.5 if flush, 0.04 if rounded, 0.78 if it reaches into the tank; exit 1',
    },
    {
      key: 'pump efficiency',
      kind: 'share',
      ...range(0.15, 0.35, 0.6),
      ...practice,
      meaning: 'efficiency of a small pump from wire to water; its maker’s curve is better',
    },
  ]),
  ...ofTopic('AIR', [
    {
      key: 'aerator alpha',
      kind: 'number',
      ...range(0.6, 0.9, 1),
      source: metcalf,
      known: 'memory',
      meaning:
        'oxygen transfer in the farm’s water over transfer in clean water: 0.4 to 0.8 in sewage, near 1 in clean water',
    },
    {
      key: 'aerator beta',
      kind: 'number',
      ...range(0.95, 0.98, 1),
      source: metcalf,
      known: 'memory',
      meaning:
        'oxygen saturation in the farm’s water over saturation in clean water of the same salinity, 0.95 to 0.98',
    },
  ]),
];
