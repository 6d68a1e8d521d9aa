import type { SheetHost } from '../../hosts/sheet-host';
import type { Spot } from '../cell-formula/book';
import { make, makeButton, replace } from '../dom';
import { sentenceOf } from '../messages';
import type { PaneContext, ViewPart } from '../view';
import type { Cautions } from './caution-watch';
import type { Finding } from './find-cautions';
import { placeOf } from './place-words';
import { safety } from './safety';

/** The most cells named beside a sentence, and the most sentences shown. */
const mostSpots = 3;
const mostFindings = 200;

/** Shows the present cautions of the open workbook and the dangers of each kind of work. */
export function createChecks(context: PaneContext): ViewPart {
  const { host, cautions } = context;
  const summary = make('p', { role: 'status' });
  const list = make('ul', { class: 'findings' });
  const again = makeButton('Check again', () => cautions.lookAgain());

  const show = ({ isCurrent, findings, fault }: Cautions): void => {
    replace(summary, fault ?? (isCurrent ? wordCount(findings.length) : 'Checking the workbook…'));
    list.classList.toggle('outdated', !isCurrent);
    if (host === undefined) return;
    // Unchanged elements are kept, so that an edit does not move the focus.
    const items = findings.slice(0, mostFindings).map((finding) => item(finding, host, context));
    const isSame =
      items.length === list.children.length && items.every((one, at) => list.children[at]?.isEqualNode(one));
    if (!isSame) replace(list, ...items);
  };

  const workbook =
    host === undefined
      ? [make('p', {}, 'There is no workbook here to check.')]
      : [summary, list, make('div', { class: 'buttons' }, again)];
  let stop: (() => void) | undefined;
  return {
    element: make(
      'div',
      { class: 'checks' },
      make('h2', {}, 'Checks'),
      ...workbook,
      make('h2', {}, 'Work safely'),
      make(
        'dl',
        { class: 'safety' },
        ...safety.flatMap(({ task, caution }) => [make('dt', {}, task), make('dd', {}, caution)]),
      ),
    ),
    shown: () => {
      stop = cautions.follow(show);
    },
    hidden: () => stop?.(),
  };
}

function wordCount(count: number): string {
  if (count === 0) return 'No cautions in this workbook.';
  const shown = count > mostFindings ? `; the first ${mostFindings} are shown` : '';
  return `${count === 1 ? 'One thing' : `${count} things`} to look at in this workbook${shown}.`;
}

function item({ tone, about, sentence, spots, affected }: Finding, host: SheetHost, context: PaneContext): HTMLElement {
  const buttons = spots.slice(0, mostSpots).map((spot) => {
    const place = placeOf(spot);
    return makeButton(place, () => void goTo(host, context, spot), { class: 'cell', 'aria-label': `Go to ${place}` });
  });
  const rest = spots.length - buttons.length;
  const more = rest === 0 ? [] : [make('span', { class: 'faint' }, `and ${rest} more`)];
  const lead = tone !== 'wrong' && about !== '' ? [make('span', { class: 'about' }, about), ' '] : [];
  return make(
    'li',
    { class: tone === 'caution' ? undefined : tone },
    make('p', {}, ...lead, sentence),
    ...buttons,
    ...more,
    ...(affected.length === 0 ? [] : [make('p', { class: 'faint' }, affectedText(affected))]),
  );
}

/** `It affects 5 cells: Patterns!B6, Base mix!B6 and 3 more.` */
function affectedText(affected: readonly Spot[]): string {
  const [first, second] = affected.map(placeOf);
  if (affected.length === 1) return `It affects ${first}.`;
  const rest = affected.length - 2;
  return `It affects ${affected.length} cells: ${first}${rest > 0 ? `, ${second} and ${rest} more` : ` and ${second}`}.`;
}

async function goTo(host: SheetHost, { notify }: PaneContext, { sheet, row, column }: Spot): Promise<void> {
  try {
    await host.select({ sheet, range: { row, column, rows: 1, columns: 1 } });
  } catch (error) {
    notify('fault', sentenceOf(error));
  }
}
