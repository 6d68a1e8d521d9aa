import type { WorkbookData } from '../../workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { forScenarioSheet } from './for-a-scenario';
import { careSheet, verdictSheet } from './judging';
import { testsSheet } from './tests';

/** Weekly water tests, judged; how long the fish have; alkali to add. */
export function waterBook(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Water book',
    subject: 'Weekly water tests, un-ionized ammonia, verdicts, oxygen time, alkali to add',
    activeSheet: 'Tests',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Water book',
        setting:
          'Twelve weeks in the fish tank of Ottermere Glasshouse, an invented community greenhouse, while its young filter learns to keep up and too much alkali is added once. All figures are invented: clear the rows of Tests and begin with your own.',
        lines: [
          'Tests: one row a test; leave a reading that was not taken empty. Read how much of the ammonia is un-ionized, which is what harms.',
          'Verdict: the species and the day of a test; read each reading judged in words.',
          'Oxygen and alkali: the water, the feed, oxygen now and at its least; read how long the fish have.',
          'Oxygen and alkali, below: the alkali and the alkalinity you want; read what to add, day by day. For a scenario: no input needed.',
          'Silt units: US or metric.',
        ],
        cautions: [cautions.water, cautions.electricity],
      }),
      testsSheet(profile),
      verdictSheet(profile),
      careSheet(profile),
      forScenarioSheet(profile),
      unitsSheet(profile),
    ],
  };
}
