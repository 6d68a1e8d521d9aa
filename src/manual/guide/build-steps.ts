import { fullDrum } from '../../formulas/plan/plan-bank';
import { readProfile } from '../../units/profile';
import { wordQuantity } from '../../units/wording';
import { miscutSection } from './miscut';
import type { Step } from './step';

const fullDrumIn = (units: string): string => wordQuantity(readProfile(units), 'mass', fullDrum.value, fullDrum.digits);

/** From the drums to a bank that holds water. */
export const buildSteps: readonly Step[] = [
  {
    slug: 'choose-drums',
    title: 'Choose the drums',
    what: 'Find two or three drums of about the same size that held food, and write down what each held.',
    why: [
      'The area of a settling drum decides what it holds back: a wider drum lets the water rise more slowly and keeps finer solids. Height only gives room for the cone and the sludge.',
      'The drums do not have to match. Each gets its own cone; the rest of this guide shows how.',
    ],
    sheet: 'Open the workbook `cone-cut-plan` and type one row per drum on its sheet Drums.',
    calls: [
      {
        say: 'Two drums of 22 1/2 in side by side at 5 gallons a minute: how fast does the water rise?',
        formula: '=SILT.SETTLE.OVERFLOW("US",5,22.5,2)',
        unit: 'gpm/ft2',
      },
      {
        say: 'How many drums does a flow of 10 gallons a minute need at no more than 1 gpm/ft2?',
        formula: '=SILT.SETTLE.DRUMS("US",10,22.5,1)',
        unit: 'drums',
      },
    ],
    wrong: [
      'A drum that held oil, solvent, pesticide or cleaner: washing cannot make it fit for fish or food. Do not use it.',
      'A drum that is out of round: measure it twice, the second time at right angles to the first, or measure the girth; the sheet accepts it too.',
    ],
    cautions: [
      'Never heat or cut a closed drum, or one that held anything that burns.',
      'Hot plastic burns skin and gives off fumes; cut outside, with gloves and eye protection.',
    ],
  },
  {
    slug: 'measure',
    title: 'Measure each drum',
    what: 'A cone needs three measurements: the bore that the rim fits into, the bore of the drain, and the height between them.',
    why: [
      'Measure the bore inside, at the height where the rim of the cone will sit, in two directions. If the tape can only go round the outside, measure the girth and the wall thickness.',
      'Type what the tape shows: `22 1/2 in`, `572 mm`. Text with a unit always means what it says.',
    ],
    picture: 'CONE.ANGLE',
    sheet:
      'On the sheet Drums of `cone-cut-plan`, type the inside diameter, or the girth and the wall; then the drain and the height of the cone.',
    calls: [
      {
        say: 'A tape round the outside reads 72 in, and the wall is 1/8 in thick. The inside diameter is:',
        formula: '=SILT.TANK.GIRTH("US",72,0.125)',
        unit: 'in',
      },
      {
        say: 'How high must the cone be for a wall at 45 degrees from a bore of 22 1/2 in to a drain of 4 in?',
        formula: '=SILT.CONE.HEIGHT("US",22.5,4,45)',
        unit: 'in',
      },
    ],
    wrong: [
      'Measuring over the rolled rim: it is wider than the bore by twice its own thickness.',
      'A tape with a bent or loose hook reads inside measures wrong. Measure a known box first.',
    ],
    cautions: [],
  },
  {
    slug: 'check',
    title: 'Check the cone',
    what: 'Before anything is cut, see whether the wall is steep enough to let solids slide, and whether the blank fits your sheet.',
    why: [
      'Fish sludge slides off a smooth wall only if it is steep enough. A steeper wall works better but needs more height. The check knows both limits.',
      'The check reports everything it finds. Change one measure and look again.',
    ],
    sheet:
      'The column What to check of the sheet Drums names a size that cannot be right. The sheet Patterns lists what to check first for the drum that you choose.',
    calls: [
      { say: 'The wall of the measured drum:', formula: '=SILT.CONE.ANGLE("US",22.5,4,9.25)', unit: 'degrees' },
      {
        say: 'Everything that the check finds:',
        formula: '=SILT.CONE.CHECK("US",22.5,4,9.25,1,0.75,0.0625,22.5,96,48,TRUE)',
        table: true,
      },
    ],
    wrong: [
      'A height typed in the wrong unit gives a cone as flat as a plate: look at the angle first.',
      'If top and bottom are swapped, the function refuses them and says what is allowed.',
    ],
    cautions: [],
  },
  {
    slug: 'pattern',
    title: 'Unroll the cone',
    what: 'An unrolled cone is a sector of a ring: two arcs about one center, an angle, and a lap along one edge.',
    why: [
      'The pattern is for the middle of the sheet’s thickness. With `fit`, the top is the bore that the rim must fit into and the bottom is the bore of the drain; the function allows for the sheet’s thickness.',
      'You do not need a giant compass: the marking-out table gives points from the lower left corner of the blank, and a distance to check each point with the tape.',
    ],
    picture: 'CONE.RIVETS',
    sheet:
      'The sheet Patterns has one row per drum. Select a row, and the pane draws it and prints it full size. The sheet Marking out has the points.',
    calls: [
      {
        say: 'The pattern row of this drum:',
        formula: '=SILT.CONE.PATTERN("US",22.5,4,9.25,1,0.75,0,"fit",0,TRUE)',
        table: true,
      },
    ],
    wrong: [
      'A printed pattern that is not full size: measure both bars on each page before you cut.',
      'A lap on the wrong side only turns the seam over; a lap that is left out leaves a gap.',
    ],
    cautions: ['Cut edges of sheet are knives: gloves, eye protection, deburr before you roll.'],
  },
  {
    slug: 'cut',
    title: 'Lay the pieces on sheets',
    what: 'The cut plan lays the pieces of all drums on the sheets that you can buy, in any direction, with a gap for the saw.',
    why: ['Sheets are the dearest part of a cone. A sector in two pieces often takes less sheet than one whole.'],
    picture: 'CUT.PLAN',
    sheet:
      'The sheet Cut plan says how many sheets to buy and where each piece goes. Select the plan, and the pane draws it.',
    calls: [
      {
        say: 'How many sheets of 8 by 4 ft for this cone?',
        formula: '=SILT.CUT.SHEETS("US",SILT.CONE.PATTERN("US",22.5,4,9.25,1,0.75),96,48,0.25,1,TRUE)',
        table: true,
      },
    ],
    wrong: [
      'A sheet that is sold by a round size may be a little smaller or larger: type the size that you measure.',
      'A cone that was cut wrong is not lost: see above what it still fits.',
    ],
    more: miscutSection,
    cautions: ['Support both sides of a cut, keep hands behind the blade, and wear goggles and gloves.'],
  },
  {
    slug: 'buy',
    title: 'Buy what you need',
    what: 'Count bags, sheets, rivets and fittings from the same measurements, and compare the total with the price of a bought settler.',
    why: ['Prices differ from shop to shop, so the list takes yours and counts whole packs.'],
    sheet:
      'The workbook `materials-sheet` makes the list for a bank of equal drums. For drums that differ, insert its sheets beside your cone cut plan: the job packet then has the list with its total.',
    calls: [
      {
        say: 'Rivets along a seam of 13 in, no more than 2 in apart:',
        formula: '=SILT.CONE.RIVETS("US",13,2)',
        unit: 'rivets',
      },
      {
        say: 'Light aggregate, cement and bags for 1.2 cubic feet of base mix:',
        formula: '=SILT.CONE.MIX("US",1.2,6,0.1,94,TRUE)',
        table: true,
      },
    ],
    wrong: ['Galvanized rivets and brass valves: zinc and copper harm fish. Use stainless steel or plastic.'],
    cautions: [],
  },
  {
    slug: 'pour-and-cure',
    title: 'Pour the base and let it cure',
    what: 'Base mix fills the space between cone, drum wall and drum floor, so that it supports the cone under the weight of the water.',
    why: ['Pour in layers. Wet mix lifts a cone that is not held down, just as water lifts a boat.'],
    picture: 'TANK.PORTS',
    sheet:
      'The sheet Base mix says how much each drum takes, and the bags to buy. The sheet Calendar of `materials-sheet` gives the dates.',
    calls: [
      {
        say: 'Base mix under this cone:',
        formula: '=SILT.CONE.BACKFILL("US",22.5,22.5,4,9.25)',
        unit: 'ft3',
      },
      {
        say: 'The days of the build, from a start on 1 May:',
        formula: '=SILT.PLAN.DATES("2026-05-01",3,3,7,7,TRUE)',
        table: true,
      },
    ],
    wrong: ['Filling the drum before the base has cured: the base cracks at the drain.'],
    cautions: [
      'Dust of cement and light aggregate harms lungs: wear a respirator made for it. Wet cement burns skin.',
      'Fresh cement raises pH: leach it out and test the water before fish go in.',
    ],
  },
  {
    slug: 'stand-and-leak-test',
    title: 'Set it on its stand and test for leaks',
    what: `A full drum weighs about ${fullDrumIn('US')} (${fullDrumIn('metric')}). The stand must carry it and leave room for a pail under the valve.`,
    why: [
      'Fill it where it will stand, a third at a time, and wait a day before you connect it. Write down the level and the date.',
    ],
    picture: 'TANK.STAND',
    sheet:
      'The sheet Stand and ports has the height of the stand, the load per leg and the two ports. The shop sheet of the job packet has boxes for the leak tests.',
    calls: [
      {
        say: 'Load on each of four legs with 40 gallons of water and 1.2 cubic feet of base mix:',
        formula: '=SILT.TANK.WEIGHT("US",40,1.2,40,22,4,TRUE)',
        table: true,
      },
    ],
    wrong: ['A level that falls on the first day only: dry base mix soaks up water. Mark it again on the second day.'],
    cautions: [
      'Never be under a drum while it fills. Shore it before anything is moved.',
      'Use ground-fault protection and drip loops; switch off before hands go into water.',
    ],
  },
];
