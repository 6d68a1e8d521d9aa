import type { Step } from './step';

/** A class's readings: the fourth cannot be, since a girth of 72 in goes with a bore of under 23 in. */
const readings = [
  ['Fern', '22 1/2 in', '4 in', '9 1/4 in'],
  ['Moss', '21 3/4 in', '4 in', '9 in'],
  ['Sedge', '570 mm', '100 mm', '235 mm'],
  ['Rush', '29 in (girth 72 in)', '4 in', '9 1/2 in'],
] as const;

const worksheet = `<h2>Class kit</h2>
<p>Hand out these readings. One of them cannot be right: find it before you type it. Then find each wall angle, and say which cones let sludge slide.</p>
<div class="wide" tabindex="0"><table><thead><tr><th>drum</th><th>bore</th><th>drain</th><th>cone height</th><th>wall angle</th></tr></thead><tbody>${readings.map((row) => `<tr>${row.map((cell, at) => (at === 0 ? `<th scope="row">${cell}</th>` : `<td>${cell}</td>`)).join('')}<td></td></tr>`).join('\n')}</tbody></table></div>
<details><summary>Answers</summary><p>Rush: a drum of 29 in would have a girth of about 91 in. The walls of the others are within a degree of 45; type them to see the decimals.</p></details>
<h2>Leak-test log</h2>
<div class="wide" tabindex="0"><table><thead><tr><th>date and hour</th><th>filled to</th><th>level below the rim</th><th>drips seen</th><th>who</th></tr></thead><tbody>${'<tr><td></td><td></td><td></td><td></td><td></td></tr>'.repeat(6)}</tbody></table></div>`;

/** From the filled bank to the first picking, and how to teach it. */
export const plantSteps: readonly Step[] = [
  {
    slug: 'how-many-fish',
    title: 'Decide how many fish',
    what: 'Start from the feed: it becomes solids, ammonia and carbon dioxide.',
    why: [
      'Compare three farms side by side in the workbook `stocking-scenarios`: its last rows say which stage reaches its limit first.',
    ],
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
      'A jar test with your own water is better than any table: let a jar stand and write down how much has settled at what time.',
    ],
    calls: [
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
    why: ['Write down how heavy a pad is, dry, before and after: your own figure is better than any table.'],
    calls: [
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
    what: 'Every day open the valve until the water runs clear, and write down the liters. Every week write down the water test.',
    why: ['The workbooks `harvest-book` and `water-book` take the rows and judge them.'],
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
      'The waiting time counts from the day the solids were worked in: 120 days where the crop touches soil, 90 where it does not.',
    ],
    calls: [
      {
        say: 'Garden area for 20 kg of dry solids at 15 g of nitrogen per m2:',
        formula: '=SILT.HARVEST.GARDEN("metric",20,15,0.04,0.5,0.02,5,"element",TRUE)',
        table: true,
      },
      {
        say: 'Solids applied on 1 May to a crop that touches soil; the first picking is on day number:',
        formula: '=SILT.HARVEST.WAIT("2026-05-01",TRUE)',
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
      'Put the folder `site` of a release on your school’s own server, in any folder; the server only has to send files. Without a server, one computer can serve the folder to the room.',
    ],
    calls: [{ say: 'A first formula for the board:', formula: '=SILT.CONE.ANGLE("US",22.5,4,9.25)', unit: 'degrees' }],
    more: worksheet,
    wrong: ['Private browser windows forget the site: open the address again on the day.'],
    cautions: [],
  },
];
