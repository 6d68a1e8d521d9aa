import type { FunctionLibrary } from '../functions/function-library';
import type { Block, SheetHost } from '../hosts/sheet-host';
import type { CautionWatch } from './checks/caution-watch';
import type { AllTexts } from './function-texts';
import type { Ask, Notify } from './messages';
import type { UnitsWatch } from './units-watch';
import type { Work } from './work';

/**
 * One view of the task pane. A view is built when it is first shown and kept after that; it builds with `make` of
 * dom.ts, so that text from cells is never markup, and reports through the context, never by itself.
 */
export interface View {
  /** Used in ids and in the address: `units`. */
  readonly id: string;
  /** The word on its tab: `Units`. */
  readonly label: string;
  readonly build: (context: PaneContext) => ViewPart;
}

export interface ViewPart {
  readonly element: HTMLElement;
  /** Each time the view comes to the front, the first time included. */
  readonly shown?: () => void;
  /** Each time another view comes to the front. */
  readonly hidden?: () => void;
  /** Called when another workbook was opened, because earlier findings no longer apply. */
  readonly forget?: () => void;
}

/** What the pane gives every view. */
export interface PaneContext {
  /** The spreadsheet beside the pane; undefined where the page was opened on its own. */
  readonly host: SheetHost | undefined;
  /** Every worksheet function, to read its contract and to compute with. */
  readonly functionLibrary: FunctionLibrary;
  /** The workbook's units profile. */
  readonly units: UnitsWatch;
  /** The errors and cautions of the workbook, kept current. */
  readonly cautions: CautionWatch;
  /** The texts about each function, once loaded; rejects if functions.json cannot be read. */
  readonly texts: () => Promise<AllTexts>;
  /** Shows one sentence in the pane's message line; a new one replaces the old. */
  readonly notify: Notify;
  /** Asks for one of a few answers inside the pane; undefined if the question was closed. */
  readonly ask: Ask;
  /**
   * Runs something that may take long or fail: shows progress with a button that stops it, and shows errors in the
   * message line. Returns undefined if it failed or was stopped.
   */
  readonly work: Work;
  /**
   * Calls back with the selection now and after each change while the view is in front; returns a function that stops
   * it.
   */
  readonly onSelection: (listener: (selection: Block) => void) => () => void;
  /** Address of a page of this site, such as `reference/cone.pattern.html`. */
  readonly page: (path: string) => string;
}
