import type { FunctionLibrary } from '../functions/function-library';
import type { Block, SheetHost } from '../hosts/sheet-host';
import type { CautionWatch } from './checks/caution-watch';
import type { AllTexts } from './function-texts';
import type { Ask, Notify } from './messages';
import type { UnitsWatch } from './units-watch';
import type { Work } from './work';

/**
 * One view of the task pane. A view is built when it is first shown and kept after that; it builds with `make` of
 * dom.ts, so that text from cells is never markup, and speaks through the context, never on its own.
 */
export interface View {
  /** Ends up in ids and in the address: `units`. */
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
  /** When another workbook has come: whatever was found or done in the last one does not hold for it. */
  readonly forget?: () => void;
}

/** What the frame gives every view. */
export interface PaneContext {
  /** The spreadsheet beside the pane; undefined where the page was opened on its own. */
  readonly host: SheetHost | undefined;
  /** Every worksheet function, to read its contract and to compute with. */
  readonly functionLibrary: FunctionLibrary;
  /** The workbook's units profile. */
  readonly units: UnitsWatch;
  /** What is wrong or to be minded in the workbook, kept current. */
  readonly cautions: CautionWatch;
  /** What people read about each function, once it has arrived; rejects where functions.json cannot be read. */
  readonly texts: () => Promise<AllTexts>;
  /** Says one sentence in the pane's message line; a new one takes the place of the old. */
  readonly notify: Notify;
  /** Asks for one of a few answers inside the pane; undefined where it was put aside. */
  readonly ask: Ask;
  /**
   * Runs something that may take long or fail: shows progress with a button that stops it, and says in the message line
   * whatever went wrong. Gives undefined where it failed or was stopped.
   */
  readonly work: Work;
  /** The selection now and each time it changes while the view is in front; gives what ends it. */
  readonly onSelection: (listener: (selection: Block) => void) => () => void;
  /** Address of a page of this site, such as `reference/cone.pattern.html`. */
  readonly page: (path: string) => string;
}
