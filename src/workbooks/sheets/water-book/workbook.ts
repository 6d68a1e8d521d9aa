import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { forScenarioSheet } from './for-a-scenario';
import { careSheet, verdictSheet } from './judging';
import { testsSheet } from './tests';

/** Weekly water tests with verdicts, how long the fish have, and the alkali to add. */
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
          'Twelve weeks in the fish tank of Ottermere Glasshouse, an invented community greenhouse, while its new filter matures and too much alkali is added once. All figures are invented: clear the rows of Tests and type your own.',
        lines: [
          'Tests: type one row per test; leave the cell empty if you did not take a reading. Read how much of the ammonia is un-ionized, the form that harms fish.',
          'Verdict: choose the species and the day of a test; read a verdict on each reading.',
          'Oxygen and alkali: type the water, the feed and the oxygen at power failure; read how long the fish have.',
          'Oxygen and alkali, below: choose the alkali and type the alkalinity you want; read what to add each day. For a scenario: no input needed.',
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
