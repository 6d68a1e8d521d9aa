import { make } from './dom';

export interface Tab {
  readonly id: string;
  readonly label: string;
}

export interface Tabs {
  readonly element: HTMLElement;
  readonly panels: ReadonlyMap<string, HTMLElement>;
  readonly show: (id: string) => void;
}

/** A row of tabs: one stop of the Tab key; arrows, Home and End move between them and show their view. */
export function createTabs(label: string, tabs: readonly Tab[], shown: (id: string) => void): Tabs {
  const buttons = new Map<string, HTMLButtonElement>();
  const panels = new Map<string, HTMLElement>();
  for (const { id, label: word } of tabs) {
    const [tabId, panelId] = [`tab-${id}`, `view-${id}`];
    buttons.set(
      id,
      make('button', { type: 'button', role: 'tab', id: tabId, 'aria-controls': panelId, class: 'tab' }, word),
    );
    panels.set(id, make('section', { role: 'tabpanel', id: panelId, 'aria-labelledby': tabId, class: 'view' }));
  }
  const show = (wanted: string): void => {
    for (const [id, button] of buttons) {
      button.setAttribute('aria-selected', String(id === wanted));
      button.tabIndex = id === wanted ? 0 : -1;
    }
    for (const [id, panel] of panels) panel.hidden = id !== wanted;
    shown(wanted);
  };
  const ids = tabs.map(({ id }) => id);
  const element = make('div', { role: 'tablist', 'aria-label': label, class: 'tabs' }, ...buttons.values());
  element.addEventListener('click', (event) => {
    const id = ids.find((one) => buttons.get(one) === event.target);
    if (id !== undefined) show(id);
  });
  element.addEventListener('keydown', (event) => {
    const at = ids.findIndex((id) => buttons.get(id) === document.activeElement);
    const next = at < 0 ? undefined : ids[placeAfter(event.key, at, ids.length) ?? -1];
    if (next === undefined) return;
    event.preventDefault();
    show(next);
    buttons.get(next)?.focus();
  });
  return { element, panels, show };
}

function placeAfter(key: string, at: number, count: number): number | undefined {
  if (key === 'ArrowRight') return (at + 1) % count;
  if (key === 'ArrowLeft') return (at + count - 1) % count;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  return undefined;
}
