import type { SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { styles } from '../styles';

/** Figure, what is needed, the steps, how often, and the sheet that takes it. */
const measurements: readonly (readonly [string, string, string, string, string])[] = [
  [
    'Growth coefficient',
    'net, pail, scale, thermometer',
    'Weigh a pail of tank water. Net a dip from a crowded tank, let it drip, weigh again, count the fish back. Five dips before feeding; STOCK.SAMPLE gives the mean. Note the mean water temperature since the last time.',
    'every two weeks, five times or more',
    'Fish',
  ],
  [
    'Feed conversion',
    'the feed bags and the weighings',
    'Weigh every bag that is opened. Biomass is count × mean mass of one, at the start and at the end. Write down fish taken out, and the mass of dead ones.',
    'once a season',
    'Fish',
  ],
  [
    'Solids share',
    'marked pail, cup, oven, kitchen scale',
    'Pull until the water runs clear and read the pail. Stir, fill a weighed cup, dry it at 105 °C until it loses no more: dry over wet is the solids share. Note the feed of the same week.',
    'a cup a week, six weeks or more',
    'Solids',
  ],
  [
    'Filter removal and areal rate',
    'one ammonia kit, a watch, a pail for the flow',
    'Dip in front of the filter and behind it within a minute, a few hours after feeding. Time a pail at the outlet for the flow. Take the same kit every time.',
    'on five days or more',
    'Filter',
  ],
  [
    'Air supply',
    'oxygen meter, watch, sodium sulfite',
    'Move the fish to well-aerated water. Take the oxygen out with sulfite, 8 mg/L for each mg/L of oxygen and a tenth more, start the aerator, and read until it stops rising. Throw that water away, not into the system.',
    'once for each aerator and depth',
    'Air',
  ],
];

/** What to take, where, how often and with what. */
export function howSheet(profile: ReadyProfile): SheetData {
  const widths = [18, 20, 56, 18, 9];
  const draft = framed({
    name: 'How to measure',
    title: 'How to measure, in the fewest steps',
    step: 'Measure first what the plan hangs on: PLAN.DRIVERS ranks it for your scenario.',
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
