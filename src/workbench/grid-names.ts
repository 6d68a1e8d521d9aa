/**
 * Names and roles that the embedded grid leaves out of its controls, for those who hear the page: put in from outside,
 * and again whenever the grid has drawn its controls anew.
 */
type Mend = (element: Element) => void;

function set(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

const named =
  (name: string): Mend =>
  (element) =>
    set(element, 'aria-label', name);

/** Controls of the grid by where they stand in it. */
const mends: readonly (readonly [selector: string, mend: Mend])[] = [
  ['input[type="text"][value]:not([aria-label])', named('Selected cells: name or address')],
  ['button.univer-size-4:not([aria-label])', named('Taller or shorter formula line')],
  ['[data-u-comp="sheet-bar-append-button"]', named('Add a sheet')],
  ['[aria-haspopup="menu"] > [data-u-comp="sheet-bar-append-button"]', named('All sheets')],
  // The wrapper of a button is no control itself.
  ['div[aria-haspopup="menu"][aria-expanded]', (element) => element.removeAttribute('aria-expanded')],
  ['button[data-u-command*="gridlines"]', named('Show or hide grid lines')],
  [
    'a[data-slot="popover-trigger"]',
    (element) => {
      set(element, 'role', 'button');
      named('Names of this workbook')(element);
    },
  ],
  [
    '[role="track"]',
    (track) => {
      const slider = track.parentElement;
      const [out, into] = [slider?.previousElementSibling, slider?.nextElementSibling];
      if (out instanceof HTMLButtonElement) named('Zoom out')(out);
      if (into instanceof HTMLButtonElement) named('Zoom in')(into);
      set(track, 'role', 'presentation');
    },
  ],
  [
    'button[role="handle"]',
    (element) => {
      set(element, 'role', 'button');
      named('Zoom')(element);
    },
  ],
  ['[role="presentation"] a[role="button"]:not([aria-label])', named('Zoom to 100 %')],
  // A number above 0 would send the Tab key here before everything else on the page.
  ['canvas[tabindex="1"]', (element) => set(element, 'tabindex', '0')],
];

/** Two places for messages stand in the grid under one name. */
function nameMessages(): void {
  const [, ...others] = document.querySelectorAll('section[aria-label^="Notifications"]');
  for (const [index, section] of others.entries()) set(section, 'aria-label', `Messages of the grid ${index + 1}`);
}

export function nameGridControls(grid: HTMLElement): void {
  const mendAll = (): void => {
    for (const [selector, mend] of mends) grid.querySelectorAll(selector).forEach(mend);
    nameMessages();
  };
  let isWaiting = false;
  new MutationObserver(() => {
    if (isWaiting) return;
    isWaiting = true;
    requestAnimationFrame(() => {
      isWaiting = false;
      mendAll();
    });
  }).observe(grid, { childList: true, subtree: true, attributes: true, attributeFilter: ['aria-expanded', 'role'] });
  mendAll();
}
