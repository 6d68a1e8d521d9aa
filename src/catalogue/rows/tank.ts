import { tankDrain } from '../../formulas/tank/tank-drain';
import { tankCircle, tankPorts, tankStand, tankWeight } from '../../formulas/tank/tank-ports';
import { tankDrainback, tankGirth, tankTurnover, tankVolume } from '../../formulas/tank/tank-volume';
import { define } from '../define';

const geometry = 'Geometry of the circle, the cylinder and the frustum';
const fullDrumCaution =
  'A full drum weighs about 500 lb (230 kg). Floor and stand must carry it. Keep everyone out from under it while it fills, and brace it before you move it. Local codes decide.';

const cone = {
  coneBottom: {
    kind: 'dimension',
    atLeast: 0,
    default: 0,
    meaning: 'inside diameter of the cone at the bottom; blank or 0 is a cone to a point',
  },
  coneHeight: {
    kind: 'dimension',
    atLeast: 0,
    default: 0,
    meaning: 'height of the cone; blank or 0 is a flat floor, without a cone bottom',
  },
} as const;

const forgotten =
  'A blank cone height means a flat floor. A cone bottom without a cone height is refused, because the water in the cone would be left out.';

export const tankRows = [
  define({
    name: 'TANK.GIRTH',
    summary: 'Inside diameter of a drum, from a tape around the outside.',
    arguments: {
      girth: { kind: 'dimension', above: 0, meaning: 'distance around the outside' },
      thickness: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'thickness of the wall' },
    },
    result: { scalar: 'dimension' },
    compute: ({ girth, thickness }) => tankGirth(girth, thickness),
    formula: 'inside diameter = girth / π - 2 × thickness',
    sources: [geometry],
    example: { formula: '=SILT.TANK.GIRTH("US",72,0.05)', gives: '22.82' },
  }),
  define({
    name: 'TANK.VOLUME',
    summary: 'Water that a drum holds, with or without a cone at the bottom.',
    arguments: {
      diameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of the drum' },
      depth: { kind: 'dimension', atLeast: 0, meaning: 'water depth above the cone’s top, or above a flat floor' },
      ...cone,
    },
    result: { scalar: 'volume' },
    compute: ({ diameter, depth, coneBottom, coneHeight }) => tankVolume(diameter, depth, coneBottom, coneHeight),
    formula: 'volume = π/4 × D² × depth + π/12 × h × (D² + D d + d²)',
    notes: [forgotten],
    sources: [geometry],
    example: { formula: '=SILT.TANK.VOLUME("US",22.5,20,4,9.25)', gives: '40.84' },
  }),
  define({
    name: 'TANK.PORTS',
    summary:
      'Heights of inlet and outlet: a third of the depth above the cone’s top, and a third below the water line.',
    arguments: {
      depth: { kind: 'dimension', above: 0, meaning: 'water depth above the cone’s top' },
      coneHeight: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'height of the cone' },
      stand: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'height of the stand' },
    },
    result: {
      rows: {
        port: { text: true },
        aboveCone: { kind: 'dimension', heading: 'above cone’s top' },
        aboveFloor: { kind: 'dimension', heading: 'above drum floor' },
        aboveGround: { kind: 'dimension', heading: 'above ground' },
      },
    },
    compute: ({ depth, coneHeight, stand }) => tankPorts(depth, coneHeight, stand),
    formula: 'inlet = depth / 3; outlet = 2 × depth / 3, above the cone’s top',
    notes: [
      'Seal each hole with a sealant that suits the wall and is safe for fish; most do not bond to polyethylene.',
    ],
    sources: ['Common practice, no source'],
    example: { formula: '=SILT.TANK.PORTS("US",24,9.25,18)', gives: 'one row per port' },
  }),
  define({
    name: 'TANK.STAND',
    summary: 'Height of a stand that lets the container go under the valve.',
    arguments: {
      container: { kind: 'dimension', above: 0, meaning: 'height of the pail or container' },
      drainDrop: {
        kind: 'dimension',
        atLeast: 0,
        meaning: 'distance from the stand’s top down to the valve’s lowest point',
      },
      clearance: { kind: 'dimension', atLeast: 0, default: 'stand clearance', meaning: 'room above the container' },
    },
    result: { scalar: 'dimension' },
    compute: ({ container, drainDrop, clearance }) => tankStand(container, drainDrop, clearance),
    formula: 'height = container + drain drop + clearance',
    notes: [fullDrumCaution],
    sources: [geometry],
    example: { formula: '=SILT.TANK.STAND("US",14,6,1)', gives: '21' },
  }),
  define({
    name: 'TANK.WEIGHT',
    summary: 'Mass of the water, the base mix and the whole drum, and the load per leg.',
    arguments: {
      water: { kind: 'volume', atLeast: 0, meaning: 'water in it' },
      baseMix: { kind: 'bulk', atLeast: 0, default: 0, meaning: 'base mix around the cone' },
      baseDensity: { kind: 'density', above: 0, default: 'base density', meaning: 'density of the wet mix as poured' },
      drumMass: { kind: 'mass', above: 0, default: 'drum mass', meaning: 'mass of the empty drum' },
      legs: { kind: 'count', atLeast: 1, whole: true, default: 4, meaning: 'legs that share the load' },
    },
    result: {
      row: {
        water: { kind: 'mass' },
        base: { kind: 'mass' },
        total: { kind: 'mass' },
        aLeg: { kind: 'mass', heading: 'load per leg' },
        onTwo: { kind: 'mass', heading: 'load per leg if two carry all' },
      },
    },
    compute: ({ water, baseMix, baseDensity, drumMass, legs }) =>
      tankWeight(water, baseMix, baseDensity, drumMass, legs),
    formula:
      'total = water × 1000 kg/m³ + base mix × density + drum; load per leg = total / legs, or / 2 on uneven ground',
    notes: [
      fullDrumCaution,
      'Legs share the load evenly only on firm, level ground. A stand that rocks rests on two legs: build each leg for that load.',
    ],
    sources: ['Definition of density'],
    example: { formula: '=SILT.TANK.WEIGHT("metric",150,0,,10,4)', gives: '150, 0, 160, 40, 80' },
  }),
  define({
    name: 'TANK.DRAIN',
    summary: 'Minutes to empty a drum through its drain, or to drain a given volume.',
    arguments: {
      diameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of the drum' },
      depth: { kind: 'dimension', atLeast: 0, meaning: 'water depth above the cone’s top, or above a flat floor' },
      drain: { kind: 'dimension', above: 0, meaning: 'bore of the drain' },
      coefficient: {
        kind: 'number',
        above: 0,
        atMost: 1,
        default: 'drain coefficient',
        meaning: 'discharge coefficient',
      },
      ...cone,
      volume: { kind: 'volume', above: 0, optional: true, meaning: 'drain only this much' },
    },
    result: { scalar: 'minutes' },
    compute: (given) => tankDrain(given),
    formula: 't = ∫ A(z) dz / (C a √(2 g z)) from the last level to the first',
    notes: [
      forgotten,
      'For a drain that opens freely and is at most half as wide as the drum. A long pipe after it is slower: see PIPE.GRAVITY.',
    ],
    sources: ['Torricelli’s law with a discharge coefficient'],
    example: { formula: '=SILT.TANK.DRAIN("US",22.5,24,2)', gives: '1.24' },
  }),
  define({
    name: 'TANK.CIRCLE',
    summary: 'Hole centers on a bolt circle, measured from its center.',
    arguments: {
      holes: { kind: 'count', atLeast: 1, atMost: 1000, whole: true, meaning: 'holes on the circle' },
      circle: { kind: 'dimension', above: 0, meaning: 'diameter of the circle through the hole centers' },
    },
    result: {
      rows: { hole: { kind: 'count' }, angle: { kind: 'angle' }, x: { kind: 'dimension' }, y: { kind: 'dimension' } },
    },
    compute: ({ holes, circle }) => tankCircle(holes, circle),
    formula: 'hole i at angle 360 × (i - 1) / holes, counter-clockwise from the right',
    sources: ['Geometry of the regular polygon'],
    example: { formula: '=SILT.TANK.CIRCLE("US",8,3.5,TRUE)', gives: 'one row per hole' },
  }),
  define({
    name: 'TANK.TURNOVER',
    summary: 'Minutes for the flow to pass the whole volume once.',
    arguments: {
      volume: { kind: 'volume', atLeast: 0, meaning: 'water in it' },
      flow: { kind: 'flow', above: 0, meaning: 'flow through it' },
    },
    result: { scalar: 'minutes' },
    compute: ({ volume, flow }) => tankTurnover(volume, flow),
    formula: 'time = volume / flow',
    sources: ['Definition of mean residence time'],
    example: { formula: '=SILT.TANK.TURNOVER("US",300,5)', gives: '60' },
  }),
  define({
    name: 'TANK.DRAINBACK',
    summary: 'Water that runs back to the sump when the pump stops.',
    arguments: {
      diameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of the drums' },
      drop: { kind: 'dimension', atLeast: 0, meaning: 'fall of the water level down to the overflow lip' },
      count: { kind: 'count', atLeast: 1, whole: true, default: 1, meaning: 'drums' },
      pipeBore: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'bore of the pipe that empties itself' },
      pipeLength: { kind: 'run', atLeast: 0, default: 0, meaning: 'length of that pipe' },
    },
    result: { scalar: 'volume' },
    compute: ({ diameter, drop, count, pipeBore, pipeLength }) =>
      tankDrainback(diameter, drop, count, pipeBore, pipeLength),
    formula: 'volume = count × π/4 × D² × drop + π/4 × bore² × length',
    notes: ['The sump needs this much room above its running level, or it overflows onto the floor.'],
    sources: [geometry],
    example: { formula: '=SILT.TANK.DRAINBACK("US",22.5,2,4,2,30)', gives: '18.67' },
  }),
];
