import { cellName } from '../../hosts/address';
import type { SheetHost } from '../../hosts/sheet-host';
import type { Spot } from '../cell-formula/book';
import { make, makeButton, replace } from '../dom';
import { sentenceOf } from '../messages';
import type { PaneContext, View, ViewPart } from '../view';
import { unitsCaution } from '../workbook-units';
import { createExplain } from './explain';
import { type Finding, findCautions } from './find-cautions';
import { safety } from './safety';

export const checksView: View = { id: 'checks', label: 'Checks', build };

/** How many cells are named beside a sentence, and how many sentences are shown. */
const mostSpots = 3;
const mostFindings = 200;

/** Gathers the cautions of the open workbook, and says what can hurt at which work. */
function build(context: PaneContext): ViewPart {
  const { host } = context;
  const summary = make('p', { role: 'status' });
  const list = make('ul', { class: 'findings' });
  const again = makeButton('Look again', () => void look());

  const look = async (): Promise<void> => {
    if (host === undefined) return;
    const findings = await context.work('Looking through the workbook', async ({ step }) => {
      const explain = await createExplain(host, context.functionLibrary);
      return findCautions(await host.readUsed(), explain, step);
    });
    if (findings === undefined) return;
    const units = unitsCaution(context.units.now());
    const own = units === undefined ? [] : [make('li', { class: 'wrong' }, units)];
    const count = findings.length + own.length;
    replace(summary, wordCount(count));
    replace(list, ...own, ...findings.slice(0, mostFindings).map((finding) => item(finding, host, context)));
  };

  const workbook =
    host === undefined
      ? [make('p', {}, 'There is no workbook here to look through.')]
      : [summary, list, make('div', { class: 'buttons' }, again)];
  return {
    element: make(
      'div',
      { class: 'checks' },
      make('h2', {}, 'Checks'),
      ...workbook,
      make('h2', {}, 'What can hurt'),
      make(
        'dl',
        { class: 'safety' },
        ...safety.flatMap(({ task, caution }) => [make('dt', {}, task), make('dd', {}, caution)]),
      ),
    ),
    shown: () => void look(),
  };
}

function wordCount(count: number): string {
  if (count === 0) return 'The functions of this workbook give no caution.';
  const shown = count > mostFindings ? `; the first ${mostFindings} are shown` : '';
  return `${count === 1 ? 'One thing' : `${count} things`} to look at in this workbook${shown}.`;
}

function item({ tone, sentence, spots }: Finding, host: SheetHost, { notify }: PaneContext): HTMLElement {
  const buttons = spots.slice(0, mostSpots).map((spot) => {
    const place = `${spot.sheet}!${cellName(spot.row, spot.column)}`;
    return makeButton(place, () => void go(spot), { class: 'cell', 'aria-label': `Go to ${place}` });
  });
  const go = async ({ sheet, row, column }: Spot): Promise<void> => {
    try {
      await host.select({ sheet, range: { row, column, rows: 1, columns: 1 } });
    } catch (error) {
      notify('fault', sentenceOf(error));
    }
  };
  const rest = spots.length - buttons.length;
  const more = rest === 0 ? [] : [make('span', { class: 'faint' }, `and ${rest} more`)];
  return make('li', tone === 'wrong' ? { class: 'wrong' } : {}, make('p', {}, sentence), ...buttons, ...more);
}
