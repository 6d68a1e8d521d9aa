import { make } from '../task-pane/dom';
import { readProfile } from '../units/profile';
import { type Entry, rowsToPaste } from './entries';
import { alert, type Offer, plain, type Sentence } from './said';
import { keepCopied, keptCopied } from './store';

type Say = (sentences: readonly Sentence[], offer?: Offer) => void;

const names = { pull: ['pull', 'pulls'], test: ['test', 'tests'] } as const;

/**
 * Copies the entries of a kind that were not copied before, because a book counts a row twice that is pasted twice. All of
 * them are offered too, for a copy that was not pasted or for a new book.
 */
export async function copyEntries(
  entries: readonly Entry[],
  kind: Entry['kind'],
  units: string,
  say: Say,
  everything = false,
): Promise<void> {
  const all = entries.filter((entry) => entry.kind === kind);
  const copied = keptCopied();
  const wanted = everything ? all : all.filter(({ id }) => !copied.has(id));
  const [singular, plural] = names[kind];
  const again: Offer = {
    label: `Copy all ${all.length} ${plural}`,
    press: () => void copyEntries(entries, kind, units, say, true),
  };
  showRows('');
  if (all.length === 0) return say([plain(`There are no ${plural} to copy yet.`)]);
  if (wanted.length === 0) return say([plain(`All ${plural} were copied before; nothing is new.`)], again);
  const count = `${wanted.length} ${wanted.length === 1 ? singular : plural}`;
  const old = all.length - wanted.length;
  const others = old === 0 ? '' : ` The ${old} copied before ${old === 1 ? 'is' : 'are'} left out.`;
  const rows = rowsToPaste(wanted, kind, units);
  const offer = old === 0 ? undefined : again;
  try {
    await navigator.clipboard.writeText(rows);
    say([plain(`Copied ${count}.${others} Select ${placeFor(kind, units)} and paste.`)], offer);
  } catch {
    showRows(rows);
    say([alert(`Copy the ${count} below by hand.${others} Then select ${placeFor(kind, units)} and paste.`)], offer);
  }
  keepCopied([...copied, ...wanted.map(({ id }) => id)]);
}

function placeFor(kind: Entry['kind'], units: string): string {
  if (kind === 'pull') return 'the first free row of the sheet Pulls';
  return `the first free row of the sheet Tests, in a book with ${readProfile(units).units.temperature.symbol}`;
}

/** Rows that the browser does not copy by itself. */
function showRows(rows: string): void {
  const place = document.getElementById('rows');
  if (place === null) return;
  place.textContent = rows;
  place.hidden = rows === '';
}

/** The button of an offer. */
export function offerButton({ label, press }: Offer): HTMLElement {
  const button = make('button', { type: 'button' }, label);
  button.addEventListener('click', press);
  return button;
}
