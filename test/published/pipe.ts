import type { PublishedRow } from './published-row';

const astm = 'astm-d1785-pvc-plastic';
const fluids = 'fluids-colebrook';

function bore(nominal: unknown, expected: number, schedule = 40): PublishedRow {
  return {
    call: ['PIPE.BORE', 'US', nominal, schedule],
    expected,
    tolerance: 1e-6,
    source: astm,
    place: `average inside diameter, ${nominal} in, schedule ${schedule}`,
    known: schedule === 40 ? 'read' : 'worked',
  };
}

/** DIN 8062 and EN ISO 1452-2 have the same walls for small pipes. */
function metricBore(nominal: string, schedule: number, wall: number): PublishedRow {
  return {
    call: ['PIPE.BORE', 'metric', nominal, schedule],
    expected: Number.parseFloat(nominal) - 2 * wall,
    tolerance: 1e-9,
    source: 'oniplast-chart-din-8062',
    place: `${nominal} for ${schedule} bar: outside diameter less two walls of ${wall} mm`,
    known: 'read',
  };
}

function loss(inches: number, gpm: number, expected: number): PublishedRow {
  return {
    call: ['PIPE.LOSS', 'US', gpm, inches, 100],
    expected,
    tolerance: 1e-3,
    source: fluids,
    place: `ft in 100 ft, bore ${inches} in, ${gpm} gpm`,
    known: 'computed',
  };
}

const velocityHead = 'Velocity head of 1 m/s, 0.050986 m';

/** K of one fitting in a 2 in pipe, seen as the loss of 1 m/s through it with no pipe: K x 0.050986 m. */
function fitting(
  words: unknown,
  k: number,
  source: PublishedRow['source'],
  tolerance: number,
  disagrees?: string,
): PublishedRow {
  const row = {
    call: ['PIPE.LOSS', 'metric', `${Math.PI * 0.25 * 0.0525018 ** 2 * 3600} m3/h`, '2.067 in', 0, words],
    expected: k * 0.0509858,
    tolerance,
    source,
    place: `${velocityHead} times ${k}`,
    known: 'read',
  } as const;
  return disagrees === undefined ? row : { ...row, disagrees };
}

/** Pipes, fittings and pumps. */
export const pipeRows: readonly PublishedRow[] = [
  bore('1/2 in', 0.602),
  bore(0.75, 0.804),
  bore(1, 1.029),
  bore('1-1/4', 1.36),
  bore('1-1/2 in', 1.59),
  bore(2, 2.047),
  bore('2-1/2', 2.445),
  bore(3, 3.042),
  bore('4 in', 3.998),
  bore(6, 6.031),
  bore(1, 0.936, 80),
  bore(2, 1.913, 80),
  bore(4, 3.786, 80),
  {
    call: ['PIPE.BORE', 'metric', 0.5],
    expected: 15.799,
    tolerance: 0.04,
    source: 'trade-tables-schedule-40',
    place: '1/2 in, outside diameter less two least walls',
    known: 'read',
    disagrees: 'walls are made thicker than the least: the average bore of 1/2 in PVC is 0.602 in, 3 % smaller',
  },
  metricBore('40 mm', 10, 1.9),
  metricBore('40 mm', 16, 3),
  metricBore('50 mm', 10, 2.4),
  metricBore('50 mm', 16, 3.7),
  metricBore('63 mm', 10, 3),
  metricBore('63mm', 16, 4.7),
  metricBore('75 mm', 10, 3.6),
  metricBore('75 mm', 16, 5.6),
  metricBore('90 mm', 10, 4.3),
  metricBore('90 mm', 16, 6.7),
  {
    ...metricBore('110 mm', 16, 8.2),
    tolerance: 0.035,
    disagrees: 'EN ISO 1452-2, which ours follows, has thinner walls from 110 mm up: the bore is 96.8, here 93.6 mm.',
  },
  {
    call: ['PIPE.VELOCITY', 'US', 20, '2.067 in'],
    expected: 1.91,
    tolerance: 2e-3,
    source: 'ludwig-applied-process-design',
    place: 'table 2-10: 20 gpm in 2 in schedule 40 steel',
    known: 'read',
  },
  {
    call: ['PIPE.VELOCITY', 'metric', '25 gpm', '2.469 in'],
    expected: 1.68 * 0.3048,
    tolerance: 3e-3,
    source: 'ludwig-applied-process-design',
    place: 'table 2-10: 25 gpm in 2-1/2 in schedule 40 steel, 1.68 ft/s',
    known: 'read',
  },
  loss(0.804, 8, 13.898),
  loss(1.59, 20, 2.711),
  loss(2.047, 40, 2.78),
  loss(3.998, 100, 0.578),
  {
    call: ['PIPE.LOSS', 'metric', '10 m3/h', 57, 50],
    expected: 1.06214,
    tolerance: 2e-4,
    source: fluids,
    place: '63 mm PN 10 pipe, 10 m3/h, 50 m',
    known: 'computed',
  },
  {
    call: ['PIPE.LOSS', 'metric', 0.6, 20, 10],
    expected: 2.60551e-3,
    tolerance: 1e-4,
    source: 'hagen-poiseuille-128-mu',
    place: 'Re 634, 20 °C',
    known: 'computed',
  },
  {
    call: ['PIPE.LOSS', 'US', '2.66 ft3/s', 10, 100, 0, 65, '0.005 in'],
    expected: 0.8,
    tolerance: 0.03,
    source: 'hydraulics-examination-cast-iron',
    place: '10 in, roughness 0.0005 of it, 65 °F: 2.66 ft3/s lose 0.008 ft a foot (read off a chart)',
    known: 'read',
  },
  {
    call: ['PIPE.LOSS', 'US', 40, 2.047, 100],
    expected: 2.773,
    tolerance: 0.01,
    source: 'hazen-williams-with-c',
    place: '10.44 L Q^1.85 / (C^1.85 d^4.8655)',
    known: 'computed',
  },
  fitting('1 elbow', 0.57, 'crane-technical-paper-410', 0.02),
  fitting('1 tee', 1.14, 'crane-technical-paper-410', 0.02),
  fitting('ball valve', 0.06, 'crane-technical-paper-410', 0.06),
  fitting('globe valve', 6.5, 'crane-technical-paper-410', 0.02),
  fitting('entrance, exit', 1.5, 'crane-technical-paper-410-square', 1e-4),
  fitting(
    '1 elbow',
    1,
    'hydraulic-institute-engineering-data',
    0.45,
    'tables of K differ widely: a 2 in elbow is 0.57 by Crane, whom ours follows, 1.00 by Hydraulic Institute, 1.5 in general tables',
  ),
  {
    call: ['PIPE.GRAVITY', 'US', 2.047, 10, 0.5],
    expected: 35.35572,
    tolerance: 2e-4,
    source: 'fluids-colebrook-brentq',
    place: '6 in of drop through 10 ft of 2 in pipe, ends 1.5',
    known: 'computed',
  },
  {
    call: ['PIPE.GRAVITY', 'metric', '3.042 in', '20 ft', '3 in', 1],
    expected: 44.416933 * 3.785411784,
    tolerance: 2e-4,
    source: 'fluids-colebrook-brentq',
    place: '3 in of drop through 20 ft of 3 in pipe, K 1 and ends 1.5',
    known: 'computed',
  },
  {
    call: ['PIPE.GRAVITY', 'US', 10, 100, 0.8, 0, 65, '0.005 in', 'none'],
    expected: 2.66 * 448.831,
    tolerance: 0.02,
    source: 'hydraulics-examination-cast-iron',
    place: '0.008 ft a foot in 10 in, roughness 0.0005 of it, 65 °F: 2.66 ft3/s',
    known: 'read',
  },
  {
    call: ['PIPE.SIZE', 'metric', '40 gpm', '5 ft/s'],
    expected: '2 in',
    source: astm,
    place: 'average inside diameters 2.047 and 1.590 in: 40 gpm run at 3.90 and 6.46 ft/s, of which 5 allows the first',
    known: 'worked',
  },
  {
    call: ['PIPE.SIZE', 'US', '10 m3/h', '1.1 m/s', 10],
    expected: '63 mm',
    source: 'oniplast-chart-din-8062',
    place: '63 mm for 10 bar, walls of 3.0 mm: 10 m3/h run at 1.089 m/s in 57.0 mm; at 1.71 in the 45.2 of 50 mm',
    known: 'worked',
  },
  {
    call: [
      'PIPE.DUTY',
      'US',
      [
        [0, 12],
        [10, 10],
        [20, 6],
        [30, 0],
      ],
      4,
      1.59,
      30,
      2,
    ],
    expected: 21.419549,
    tolerance: 2e-4,
    source: 'fluids-colebrook-pchip',
    place: 'four-point curve, lift 4 ft, 30 ft of 1-1/2 in, K 2',
    known: 'computed',
  },
  {
    call: [
      'PIPE.DUTY',
      'US, flow L/min, run m',
      [
        ['0 gpm', '22 ft'],
        ['20 gpm', '20 ft'],
        ['40 gpm', '15 ft'],
        ['60 gpm', '6 ft'],
      ],
      '8 ft',
      '2.047 in',
      '60 ft',
      5,
    ],
    cell: [0, 1],
    expected: 11.9992164 * 0.3048,
    tolerance: 2e-4,
    source: 'fluids-colebrook-pchip',
    place: 'four-point curve, lift 8 ft, 60 ft of 2 in, K 5',
    known: 'computed',
  },
  {
    call: ['PIPE.POWER', 'US', 100, 50, 1],
    expected: 1.26 * 745.7,
    tolerance: 4e-3,
    source: 'engineering-toolbox-pumping-water',
    place: 'table at 60 °F without losses: 100 gpm lifted 50 ft take 1.26 hp',
    known: 'read',
  },
  {
    call: ['PIPE.POWER', 'metric', '130 m3/h', '85 m', '60 %'],
    expected: (67.3 / 1.341) * 1000,
    tolerance: 3e-3,
    source: 'hydraulic-pump-power-problem',
    place: '130 m3/h, 85 m, efficiency 60 %: 67.3 hp, of which 1.341 are a kW',
    known: 'read',
  },
];
