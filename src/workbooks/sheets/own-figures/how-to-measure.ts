import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { styles } from '../styles';

/** Figure, what you need, the steps, how often, and the sheet to type it on. */
const measurements: readonly (readonly [string, string, string, string, string])[] = [
  [
    'Growth coefficient',
    'net, pail, scale, thermometer',
    'Weigh a pail of tank water. Crowd the fish, net some, let the net drip, put them in the pail and weigh again. Count them as they go back. Do this five times before feeding; STOCK.SAMPLE gives the mean. Write down the mean water temperature since the last weighing.',
    'every two weeks, five times or more',
    'Fish',
  ],
  [
    'Feed conversion',
    'the feed bags and the weighings',
    'Weigh every bag that you open. Biomass is count × mean mass of one fish, at the start and at the end. Write down the mass of fish that you took out and of fish that died.',
    'once a season',
    'Fish',
  ],
  [
    'Solids share',
    'marked pail, cup, oven, kitchen scale',
    'Pull until the water runs clear and read the pail. Stir, fill a weighed cup and dry it at 105 °C (221 °F) until its weight stops falling. Dry mass divided by wet mass is the solids share. Write down the feed of the same week.',
    'a cup a week, six weeks or more',
    'Solids',
  ],
  [
    'Filter removal and areal rate',
    'one ammonia kit, a watch, a pail for the flow',
    'A few hours after feeding, take one sample before the filter and one after it, within a minute. For the flow, time how long the outlet takes to fill a pail. Use the same kit every time.',
    'on five days or more',
    'Filter',
  ],
  [
    'Air supply',
    'oxygen meter, watch, sodium sulfite',
    'Move the fish to well-aerated water. Remove the oxygen with sulfite: 8 mg/L for each mg/L of oxygen, plus 10 %. Start the aerator and read the meter until oxygen stops rising. Throw that water away; do not put it into the system.',
    'once for each aerator and depth',
    'Air',
  ],
];

/** What to measure, where, how often and with which tools. */
export function howSheet(profile: ReadyProfile): SheetData {
  const widths = [18, 20, 56, 18, 9];
  const draft = framed({
    name: 'How to measure',
    title: 'How to measure, in the fewest steps',
    step: 'First measure the figures that change the plan most: PLAN.DRIVERS ranks them for your scenario.',
    caution: cautions.water,
    widths,
  });
  draft.across('A4', ['Figure', 'What you need', 'Steps', 'How often', 'Sheet'], 'heading');
  measurements.forEach((line, index) => {
    draft.across(`A${5 + index}`, line, { ...styles.tall, wrap: true }).height(5 + index, 80);
  });
  const last = 4 + measurements.length;
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F4E5F',
    print: print(profile, `A1:E${last}`, { fitToHeight: 1 }),
  });
}
