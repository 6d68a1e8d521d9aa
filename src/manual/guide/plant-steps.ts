import { classKit, noHost } from './class-kit';
import type { Step } from './step';

/** From the filled bank to the first picking, and how to teach it. */
export const plantSteps: readonly Step[] = [
  {
    slug: 'how-many-fish',
    title: 'Decide how many fish',
    what: 'Start from the feed: it becomes solids, ammonia and carbon dioxide.',
    why: [
      'Every stage after the tank is sized by one of them, so the stage with the least room decides how many fish the farm carries.',
      'No plan is exact. Published figures of the share of feed that becomes solids run from {=SILT.REF.VALUE("metric","solids share","low")} to {=SILT.REF.VALUE("metric","solids share","high")}, and how fast fine solids decay, what gravel beds remove and how much nitrogen is lost as gas are hardly better known. The sheet How sure shows how far each result can be from the plan, and which figure to measure first. It does not show what the model leaves out: nitrite, the peak of ammonia after a feeding, and filters that fill.',
    ],
    picture: 'PLAN.LIMIT',
    sheet:
      'Open the workbook `stocking-scenarios` and type a farm in each column of its sheet Scenarios. The last rows of the sheet Compare say which stage reaches its limit first.',
    calls: [
      { say: 'Dry solids from 1 kg of feed a day:', formula: '=SILT.LOAD.SOLIDS("metric",1)', unit: 'kg/d' },
      {
        say: 'Ammonia nitrogen from 1 kg of feed a day with 32 % protein:',
        formula: '=SILT.LOAD.AMMONIA("metric",1,0.32)',
        unit: 'kg/d',
      },
      { say: 'Every waste with its published range:', formula: '=SILT.LOAD.TABLE("metric",1,0.32,TRUE)', table: true },
    ],
    wrong: ['Counting fish at stocking and forgetting that they grow: use the mass that they will have at harvest.'],
    cautions: [],
  },
  {
    slug: 'run-the-settler',
    title: 'Run the settling drums',
    what: 'Water enters a third of the depth above the cone and leaves a third below the surface, as slowly as you can arrange.',
    why: [
      'A jar test with your own water is better than any table: fill one jar for each time, let them stand, and write down what share of the solids has settled at what time.',
    ],
    picture: 'TANK.PORTS',
    sheet:
      'No workbook has a sheet for the jar test: type its rows in any free cells and let `SETTLE.JAR` read them. Its three results go into the sheet Scenarios of `stocking-scenarios` as the inputs `median settling`, `settling spread` and `settleable share`, with `mixed` as the settler.',
    calls: [
      {
        say: 'What a jar test gives, from the depth of the water in mm and rows of minutes and share settled:',
        formula: '=SILT.SETTLE.JAR("metric",300,{0.25,0.3;0.5,0.42;1,0.52;2,0.58;5,0.62;20,0.64},TRUE)',
        table: true,
      },
      {
        say: 'Share of solids held back at 2 m/h, for a median of 1 mm/s with a spread of 3:',
        formula: '=SILT.SETTLE.CAPTURE("metric",2,1,3)',
      },
      {
        say: 'Inlet velocity of 20 L/min through a bore of 40 mm:',
        formula: '=SILT.SETTLE.INLET("metric",20,40)',
        unit: 'm/s',
      },
    ],
    wrong: [
      'An inlet that points down stirs up what has settled.',
      'Solids that stay longer than a day in the cone dissolve, and the drum then adds ammonia.',
    ],
    cautions: [],
  },
  {
    slug: 'pads-and-filter',
    title: 'Change pads, feed the biofilter',
    what: 'Pads catch the solids that leave the drums; bacteria on media turn ammonia into nitrate and use up oxygen and alkalinity.',
    why: [
      'Weigh a pad dry, once clean and once full, and write both down: your own figure is better than any table.',
      'The plan says in how many days the pads are full and the beds need cleaning. The daily page takes these intervals from the sheet Compare and lists what is due.',
    ],
    sheet:
      'What `SCREEN.HOLDING` makes of the two weights goes into the sheet Scenarios of `stocking-scenarios` as the input `pad holding`. Its sheet Compare has the pad change interval.',
    calls: [
      {
        say: 'Solids that a pad of 0.3 m2 holds, if it weighs 210 g clean and 285 g full, both dry:',
        formula: '=SILT.SCREEN.HOLDING("metric",210,285,0.3)',
        unit: 'g/m2',
      },
      {
        say: 'Media surface for 1 kg of feed a day with 32 % protein at 0.5 g of nitrogen per m2 and day:',
        formula: '=SILT.FILTER.AREA("metric",1,0.32,0.5)',
        unit: 'm2',
      },
      {
        say: 'Alkalinity used by 29 g of ammonia nitrogen a day, as CaCO3:',
        formula: '=SILT.FILTER.ALKALINITY("metric",0.029)',
        unit: 'kg/d',
      },
    ],
    wrong: ['Changing all pads on one day leaves the biofilter unprotected. Change them in turn.'],
    cautions: ['Dissolve caustics first, and add them slowly.'],
  },
  {
    slug: 'daily-pull',
    title: 'Pull solids and test the water',
    what: 'Open the valve every day until the water runs clear, and write down how much you pulled. Write down the water test every week.',
    why: [
      'The daily page, on a phone at the tank, takes both and says at once what is wrong. It works without a network and keeps the entries on the phone.',
    ],
    sheet:
      'The workbooks `harvest-book` and `water-book` take the rows of the daily page: copy them there and paste them into the first free row of Pulls or Tests.',
    calls: [
      {
        say: 'Un-ionized ammonia in 1 mg/L of total ammonia nitrogen at pH 8 and 25 °C:',
        formula: '=SILT.WATER.AMMONIA("metric",1,8,25)',
        unit: 'mg/L',
      },
      {
        say: 'Slurry to pull for 0.2 kg of dry solids at 2 % solids:',
        formula: '=SILT.HARVEST.SLURRY("metric",0.2,0.02)',
        unit: 'L',
      },
    ],
    wrong: ['An ammonia reading means little without pH and temperature: write down all three.'],
    cautions: ['Raw fish solids carry germs: gloves, and wash hands. Stored wet solids give off hydrogen sulfide.'],
  },
  {
    slug: 'pump-stops',
    title: 'Be ready for the day the pump stops',
    what: 'Know how many minutes the fish have, and have backup air that starts within half of them.',
    why: ['Practice it once in daylight: switch off, start the backup and time it.'],
    sheet:
      'The sheet Compare of `stocking-scenarios` has the oxygen time of your farm; the sheet Scenarios takes what it depends on.',
    calls: [
      {
        say: 'Minutes from 7 to 3 mg/L in 1000 L with a demand of 0.3 kg a day:',
        formula: '=SILT.WATER.OXYGENTIME("metric",1000,7,3,0.3)',
        unit: 'minutes',
      },
    ],
    wrong: ['A siphon can empty a tank: drill a hole in the pipe at the lowest water level that you can accept.'],
    cautions: ['Lack of oxygen kills within the hour. Electricity and water: switch off before hands go in.'],
  },
  {
    slug: 'first-picking',
    title: 'Feed the garden and pick',
    what: 'Solids are a slow fertilizer. Know how much garden they feed, and when the harvest may be eaten.',
    why: [
      'The waiting time counts from the day the solids were worked in: {=SILT.REF.VALUE("metric","wait, touching soil")} days if the crop touches soil, {=SILT.REF.VALUE("metric","wait, clear of soil")} if it does not.',
    ],
    sheet:
      'The workbook `harvest-book` adds up the pulls and says what they are worth, how much garden they feed, and from what day you may pick.',
    calls: [
      {
        say: 'Garden area for 20 kg of dry solids at 15 g of nitrogen per m2:',
        formula: '=SILT.HARVEST.GARDEN("metric",20,15,0.04,0.5,0.02,5,"element",TRUE)',
        table: true,
      },
      {
        say: 'Solids worked in on 1 May, a crop that touches soil: the first day of picking:',
        formula: '=SILT.HARVEST.WAIT("2026-05-01",TRUE)',
        unit: 'date',
      },
    ],
    wrong: ['Twice the dose does not give twice the crop; phosphate builds up for years.'],
    cautions: ['The waiting time is a rule, not a test of safety. Wash what you pick.'],
  },
  {
    slug: 'teach',
    title: 'Teach it to a class',
    what: 'Every pupil opens the same address; nothing is installed, and after the first visit no network is needed.',
    why: [
      'Let each group measure one drum and type its own row; then compare the cut plans and see how many sheets they save together.',
    ],
    sheet:
      'The workbook `cone-cut-plan` has room for the drums of the whole class. Save the job packet, and each group has its shop sheet.',
    calls: [{ say: 'A first formula for the board:', formula: '=SILT.CONE.ANGLE("US",22.5,4,9.25)', unit: 'degrees' }],
    more: () => `${noHost}\n${classKit()}`,
    wrong: ['Private browser windows forget the site: open the address again on the day.'],
    cautions: [],
  },
];
