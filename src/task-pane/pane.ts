import type { FunctionLibrary } from '../functions/function-library';
import type { Block, SheetHost } from '../hosts/sheet-host';
import { type CautionWatch, watchCautions } from './checks/caution-watch';
import { checksView } from './checks/view';
import { debounced } from './debounced';
import { make, makeButton, makeSvg, replace } from './dom';
import { drawingsView } from './drawings/view';
import { firstJobView } from './first-job/view';
import { fetchTexts } from './function-texts';
import { functionsView } from './functions-view';
import { createMessages, sentenceOf } from './messages';
import { sheetsView } from './sheets/view';
import { createTabs } from './tabs';
import { unitsView } from './units-view';
import { watchUnits } from './units-watch';
import type { PaneContext, View, ViewPart } from './view';
import { createWork } from './work';
import { unitsCaution } from './workbook-units';

/** The views in the order of their tabs. */
const everyView: readonly View[] = [unitsView, functionsView, drawingsView, sheetsView, checksView, firstJobView];

export interface PaneParts {
  /** Undefined where the page stands alone. */
  readonly host: SheetHost | undefined;
  readonly functionLibrary: FunctionLibrary;
  /** The address of a file of the site, such as `reference/index.html`; beside this page where left out. */
  readonly page?: (path: string) => string;
  /** Said under the title where there is no spreadsheet. */
  readonly standing?: string;
  readonly views?: readonly View[];
}

export interface Pane {
  readonly cautions: CautionWatch;
  readonly show: (viewId: string) => void;
  /** Clears messages, questions and findings, because another workbook was opened. */
  readonly forget: () => void;
  /** Ends what listens to the spreadsheet and empties the element. */
  readonly close: () => void;
}

const besideThisPage = (path: string): string => new URL(path, document.baseURI).href;

/** Builds the task pane inside an element, the same for Excel, the workbench and a page on its own. */
export function mountPane(root: HTMLElement, parts: PaneParts): Pane {
  const { host, functionLibrary, page = besideThisPage, views = everyView } = parts;
  const { notify, ask, dismiss, element: messages } = createMessages();
  const { work, element: workPlace } = createWork(notify);
  const units = watchUnits(host);
  const cautions = watchCautions(host, functionLibrary, units);
  const selection = shareSelection(host);
  const context: PaneContext = {
    host,
    functionLibrary,
    units,
    cautions,
    texts: once(() => fetchTexts(page('functions.json'))),
    notify,
    ask,
    work,
    onSelection: selection.listen,
    page,
  };

  const built = new Map<string, ViewPart>();
  let front: ViewPart | undefined;
  const tabs = createTabs('Views', views, (id) => {
    front?.hidden?.();
    const part = built.get(id) ?? views.find((view) => view.id === id)?.build(context);
    const panel = tabs.panels.get(id);
    if (part === undefined || panel === undefined) throw new Error(`there is no view ${id}`);
    if (!built.has(id)) replace(panel, part.element);
    built.set(id, part);
    front = part;
    part.shown?.();
  });

  const caution = make('div', { class: 'caution-place', role: 'status' });
  const showCaution = (): void => {
    const sentence = unitsCaution(units.now());
    const button = makeButton('Open Units', () => tabs.show('units'));
    replace(caution, ...(sentence ? [make('div', { class: 'caution' }, make('p', {}, sentence), button)] : []));
  };
  const profile = make('span', { class: 'profile' });
  const showUnits = (): void => {
    const { units: cell } = units.now();
    replace(profile, host === undefined ? '' : cell?.profile === undefined ? 'no units set' : cell.text);
    showCaution();
  };
  units.onChanged(showUnits);

  replace(
    root,
    make('header', { class: 'banner' }, emblem(), make('h1', {}, 'Siltstead'), profile),
    ...(parts.standing ? [make('p', { class: 'standing' }, parts.standing)] : []),
    make('nav', { 'aria-label': 'Views' }, tabs.element),
    caution,
    messages,
    workPlace,
    // Beside a spreadsheet in the same page the grid is the main thing, and the pane an aside.
    make(root.closest('aside') === null ? 'main' : 'div', { class: 'views' }, ...tabs.panels.values()),
  );
  showUnits();
  const stopTheme = followTheme(host);
  const refresh = (): void => {
    units.refresh().catch((error: unknown) => notify('fault', sentenceOf(error)));
  };
  const stopChanges = host === undefined ? undefined : whenListening(host.onCellsChanged(debounced(refresh)));
  refresh();
  const first = views[0];
  if (first !== undefined) tabs.show(first.id);

  return {
    cautions,
    show: tabs.show,
    forget: () => {
      dismiss();
      cautions.forget();
      for (const part of built.values()) part.forget?.();
    },
    close: () => {
      front?.hidden?.();
      stopTheme();
      stopChanges?.();
      selection.close();
      replace(root);
    },
  };
}

/** A drum in section: water standing over a cone of silt. */
function emblem(): SVGElement {
  return makeSvg(
    'svg',
    { viewBox: '0 0 24 24', class: 'emblem', 'aria-hidden': 'true' },
    makeSvg('path', { d: 'M4 2v12l6 7h4l6-7V2', class: 'emblem-wall' }),
    makeSvg('path', { d: 'M5.5 7.5h13', class: 'emblem-water' }),
    makeSvg('path', { d: 'M7.2 15.4h9.6L13.4 19.5h-2.8z', class: 'emblem-silt' }),
  );
}

/** One subscription to the host, shared by the views that listen at the moment. */
function shareSelection(host: SheetHost | undefined): {
  readonly listen: (listener: (selection: Block) => void) => () => void;
  readonly close: () => void;
} {
  const listeners = new Set<(selection: Block) => void>();
  const tell = (some: Iterable<(selection: Block) => void>): void => {
    // A selection that cannot be read, for example while a cell is edited, is reported at the next change.
    host?.selection().then(
      (selection) => {
        for (const listener of some) if (listeners.has(listener)) listener(selection);
      },
      () => undefined,
    );
  };
  const stop =
    host === undefined ? undefined : whenListening(host.onSelectionChanged(debounced(() => tell(listeners))));
  return {
    listen: (listener) => {
      listeners.add(listener);
      tell([listener]);
      return () => listeners.delete(listener);
    },
    close: () => {
      listeners.clear();
      stop?.();
    },
  };
}

function followTheme(host: SheetHost | undefined): () => void {
  if (host === undefined) return () => undefined;
  const follow = (): void => {
    document.documentElement.dataset.theme = host.theme().dark ? 'dark' : 'light';
  };
  follow();
  return host.onThemeChanged(follow);
}

/** Ends a subscription that may still be starting; one that failed needs no end. */
function whenListening(subscription: Promise<() => void>): () => void {
  subscription.catch(() => undefined);
  return () => void subscription.then((stop) => stop()).catch(() => undefined);
}

function once<T>(get: () => Promise<T>): () => Promise<T> {
  let got: Promise<T> | undefined;
  return () => {
    got ??= get();
    return got;
  };
}
