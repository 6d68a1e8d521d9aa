import { cellName } from '../../hosts/address';
import type { Spot } from '../cell-formula/book';
import { placeText } from '../cell-formula/book';
import type { CellChange } from '../convert-typed/convert';
import type { Conversion, Findings } from '../convert-typed/findings';
import { freshId, make, makeButton } from '../dom';

/** Rows beyond this number share one row with one tick at the end. */
const mostRows = 400;

export interface ConversionList {
  readonly element: HTMLElement;
  /** The changes that are ticked. */
  readonly ticked: () => readonly CellChange[];
}

/** The typed numbers that a change of units would convert, each with a tick. */
export function conversionList(findings: Findings, show: (spot: Spot) => void, changed: () => void): ConversionList {
  const { plain, apart, byHand } = findings;
  const rows = [...group(plain, true, show, changed), ...group(apart, false, show, changed)];
  const plainRows = rows.slice(0, Math.min(plain.length, mostRows + 1)).map(({ element }) => element);
  const apartRows = rows.slice(plainRows.length).map(({ element }) => element);
  return {
    element: make(
      'div',
      {},
      ...(plain.length > 0 ? [table('Typed numbers', plainRows)] : []),
      ...(apart.length > 0
        ? [
            make('h3', {}, 'Not converted unless ticked'),
            make(
              'p',
              { class: 'faint' },
              'These are used in more than one way; tick one only if the new value is right for every use.',
            ),
            table('Numbers with more than one use', apartRows),
          ]
        : []),
      ...(byHand.length > 0 ? byHandPart(byHand, show) : []),
    ),
    ticked: () => rows.flatMap(({ changes }) => changes()),
  };
}

interface Row {
  readonly element: HTMLElement;
  readonly changes: () => readonly CellChange[];
}

function group(
  conversions: readonly Conversion[],
  isTicked: boolean,
  show: (spot: Spot) => void,
  changed: () => void,
): readonly Row[] {
  const rows = conversions.slice(0, mostRows).map((one) => row(one, isTicked, show, changed));
  const rest = conversions.slice(mostRows);
  if (rest.length > 0) rows.push(restRow(rest, isTicked, changed));
  return rows;
}

function row(conversion: Conversion, isTicked: boolean, show: (spot: Spot) => void, changed: () => void): Row {
  const { spot, shown, choices, apart } = conversion;
  const place = placeText(spot);
  const tick = make('input', { type: 'checkbox', checked: isTicked, 'aria-label': `Convert ${place}` });
  tick.addEventListener('change', changed);
  let chosen = 0;
  const next =
    choices.length === 1
      ? make('span', {}, choices[0]?.shown ?? '')
      : make('select', { id: freshId('as'), 'aria-label': `Convert ${place} as` });
  if (next instanceof HTMLSelectElement) {
    choices.forEach((choice, at) => {
      next.append(make('option', { value: String(at) }, choice.shown));
    });
    next.addEventListener('change', () => {
      chosen = Number(next.value);
    });
  }
  const cell = makeButton(cellName(spot.row, spot.column), () => show(spot), {
    class: 'cell-link',
    'aria-label': `Show ${place}`,
    title: place,
  });
  const element = make(
    'tr',
    {},
    make('td', {}, tick),
    make('td', {}, cell, make('span', { class: 'sheet-name' }, spot.sheet)),
    make('td', {}, shown),
    make('td', {}, next, ...(apart ? [make('span', { class: 'why' }, apart)] : [])),
  );
  return {
    element,
    changes: () => (tick.checked ? [changeOf(conversion, chosen)] : []),
  };
}

function restRow(rest: readonly Conversion[], isTicked: boolean, changed: () => void): Row {
  const words = `and ${rest.length} more`;
  const tick = make('input', { type: 'checkbox', checked: isTicked, 'aria-label': `Convert ${words}` });
  tick.addEventListener('change', changed);
  return {
    element: make('tr', {}, make('td', {}, tick), make('td', { colspan: '3' }, words)),
    changes: () => (tick.checked ? rest.map((one) => changeOf(one, 0)) : []),
  };
}

function changeOf({ spot, content, choices }: Conversion, chosen: number): CellChange {
  const choice = choices[chosen];
  if (choice === undefined) throw new RangeError(`choice ${chosen} of ${choices.length}`);
  return { spot, before: content, after: choice.content };
}

function table(label: string, rows: readonly HTMLElement[]): HTMLElement {
  const head = ['', 'cell', 'now', 'becomes'].map((word) =>
    make('th', { scope: 'col' }, word === '' ? make('span', { class: 'sr-only' }, 'convert') : word),
  );
  return make(
    'div',
    { class: 'scroll', role: 'group', 'aria-label': label },
    make('table', { class: 'conversions' }, make('thead', {}, make('tr', {}, ...head)), make('tbody', {}, ...rows)),
  );
}

function byHandPart(byHand: Findings['byHand'], show: (spot: Spot) => void): readonly HTMLElement[] {
  const items = byHand.slice(0, mostRows).map(({ spot, why }) => {
    const place = placeText(spot);
    return make(
      'li',
      {},
      makeButton(place, () => show(spot), { class: 'cell-link', 'aria-label': `Show ${place}` }),
      ` ${why}`,
    );
  });
  return [
    make('h3', {}, 'Check these by hand'),
    make('p', { class: 'faint' }, 'Siltstead cannot tell what these cells hold, so they are not changed.'),
    make('ul', { class: 'result-lines' }, ...items),
  ];
}
