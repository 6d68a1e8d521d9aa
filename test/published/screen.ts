import type { PublishedRow } from './published-row';

/** What a pad holds is measured on the farm; what can be checked from outside is that units and balance hold. */
const units = 'gnu-units-2-22';

export const screenPublished: readonly PublishedRow[] = [
  {
    call: ['SCREEN.HOLDING', 'metric', '1 oz', '2 oz', '1 ft2'],
    expected: 305.15173,
    tolerance: 1e-7,
    source: units,
    place: "units -t 'oz/ft^2' 'g/m^2'",
    known: 'computed',
  },
  {
    call: ['SCREEN.DAYS', 'metric', '1 lb/d', '2 m2', '0.5 oz/ft2'],
    expected: 0.672744401,
    tolerance: 1e-8,
    source: units,
    place: "units -t '2 m^2 * 0.5 oz/ft^2 / (lb/day)' day",
    known: 'computed',
  },
  {
    call: ['SCREEN.PADS', 'metric', '1 lb/d', '1 ft2', '1 oz/ft2', 2],
    expected: 32,
    source: units,
    place: "units -t '2 day * lb/day / (ft^2 * oz/ft^2)'",
    known: 'computed',
  },
];
