import type { PublishedRow } from './published-row';

/** Bags of concrete for a cubic yard, from the yield that makers print on the bag. */
const bags = (pounds: number, cubicFeet: number, count: number): PublishedRow => ({
  call: ['COST.LINES', [['concrete', 27, 'ft3']], [['Concrete', cubicFeet, 6, 'ft3']]],
  cell: [0, 2],
  expected: count,
  source: 'makers-yield-tables-bagged',
  place: `${pounds} lb bag yields ${cubicFeet} ft3: 27 over that is ${count} bags a cubic yard`,
  known: 'worked',
});

export const costPublished: readonly PublishedRow[] = [
  bags(80, 0.6, 45),
  bags(60, 0.45, 60),
  bags(40, 0.3, 90),
  {
    call: ['COST.RUNNING', 'US', 1200, 4.8, 1],
    expected: 2100,
    tolerance: 2e-3,
    source: 'utility-energy-primer-determining',
    place: 'a refrigerator of 1200 W that runs a fifth of the time: about 2100 kWh a year',
    known: 'read',
  },
  {
    call: ['COST.RUNNING', 'metric', '270 W', 4, 0.085],
    expected: 33.51,
    tolerance: 2e-4,
    source: 'us-department-energy-estimating',
    place: 'computer and monitor, 120 + 150 W, 4 h a day, 8.5 cents a kWh',
    known: 'read',
  },
  {
    call: ['COST.RUNNING', 'US', '0.23 kW', 24, 0.12],
    expected: 262.8,
    tolerance: 0.09,
    source: 'pond-pump-running-cost',
    place: '115 V, 2 A, 12 cents a kWh, all day, all year',
    known: 'read',
    disagrees: 'Ours is 241.78: the column rounds 2.76 cents an hour up to 3 before it multiplies.',
  },
];
