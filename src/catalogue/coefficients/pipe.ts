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
      source: 'Moody (1944), drawn tubing',
      known: 'memory',
      meaning:
        'inside wall of new plastic pipe, as of drawn tubing and glass; some tables give plastic up to 7 µm, and biofilm makes it rougher, so flush and allow for it',
    },
    {
      key: 'pipe ends',
      kind: 'number',
      ...range(1.04, 1.5, 1.78),
      source: 'Crane Technical Paper 410',
      known: 'memory',
      meaning: 'K of entrance and exit: flush 0.5, rounded 0.04 or reaching in 0.78, and exit 1',
    },
    {
      key: 'pump efficiency',
      kind: 'share',
      ...range(0.15, 0.35, 0.6),
      ...practice,
      meaning: 'from wire to water, of a small pump; its maker’s curve is better',
    },
  ]),
  ...ofTopic('AIR', [
    {
      key: 'aerator alpha',
      kind: 'number',
      ...range(0.6, 0.9, 1),
      source: metcalf,
      known: 'memory',
      meaning: 'transfer in this water over that in clean water: 0.4 to 0.8 in sewage, near 1 in clean water',
    },
    {
      key: 'aerator beta',
      kind: 'number',
      ...range(0.95, 0.98, 1),
      source: metcalf,
      known: 'memory',
      meaning: 'saturation in this water over that in clean water of the same salinity, 0.95 to 0.98',
    },
  ]),
];
