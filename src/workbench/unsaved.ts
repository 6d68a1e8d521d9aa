import { type IUndoRedoItem, IUndoRedoService, type Nullable } from '@univerjs/core';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import { debounced } from '../task-pane/debounced';
import { type Draft, type Drafts, openDrafts } from './drafts';
import { notice, part } from './page-parts';

/** Work is kept when nothing has changed for this long, in milliseconds. */
const quietMs = 400;

/** What is open: everything that a draft needs except the cells. */
export interface OpenFile extends Pick<Draft, 'name' | 'sample' | 'file'> {
  /** The workbook in the file, if a draft with changes was opened. */
  readonly base?: Draft['base'];
}

/** Knows whether the open workbook has changes that no file holds, and keeps a draft of them. */
export class Unsaved {
  private readonly spreadsheet: Spreadsheet;
  private drafts: Drafts | undefined;
  private open: OpenFile = { name: 'workbook.xlsx' };
  private changed = false;
  /** Whether the draft lacks the last change. */
  private isBehind = false;
  /** What would be undone and redone next, of each thing that has such steps. */
  private readonly latestSteps = new Map<string, readonly [Nullable<IUndoRedoItem>, Nullable<IUndoRedoItem>]>();
  private readonly keepSoon = debounced(() => void this.keep(), quietMs);

  constructor(spreadsheet: Spreadsheet) {
    this.spreadsheet = spreadsheet;
    // A change that can be undone was made by the user; new results cannot be undone.
    const steps = spreadsheet.injector.get(IUndoRedoService);
    steps.undoRedoStatus$.subscribe(() => {
      const latest = [steps.pitchTopUndoElement(), steps.pitchTopRedoElement()] as const;
      const of = latest[0]?.unitID ?? latest[1]?.unitID;
      if (of === undefined) return;
      // The same steps are reported again when another sheet is shown or another part of the grid is used.
      const before = this.latestSteps.get(of);
      this.latestSteps.set(of, latest);
      if (this.changed || before?.[0] !== latest[0] || before?.[1] !== latest[1]) this.change();
    });
    addEventListener('beforeunload', (event) => {
      if (!this.changed) return;
      event.preventDefault();
      this.keepAtOnce();
    });
    // Phones close a hidden page without warning.
    addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') this.keepAtOnce();
    });
  }

  /** Begins to keep drafts, also of what has been typed meanwhile. If the browser keeps none, a message says so once. */
  async start(): Promise<void> {
    try {
      this.drafts = await openDrafts();
      if (this.isBehind) this.keepSoon();
    } catch {
      notice('This browser keeps no drafts for this page: save your work often.');
    }
  }

  /** Drafts of closed pages. */
  async left(): Promise<readonly Draft[]> {
    return (await this.drafts?.left()) ?? [];
  }

  hasChanges(): boolean {
    return this.changed;
  }

  openedFile(): OpenFile {
    return this.open;
  }

  /** Another workbook is open; `isDraft` if it has changes that are in no file yet. */
  opened(open: OpenFile, isDraft = false): void {
    this.open = open;
    this.changed = isDraft;
    this.showTitle();
    if (!isDraft) void this.drafts?.drop();
  }

  /** Makes a left draft this page's own, so that it is never without an owner. */
  async takeOver(draft: Draft): Promise<void> {
    await this.keep();
    await this.remove(draft);
  }

  saved(): void {
    this.changed = false;
    this.showTitle();
    void this.drafts?.drop();
  }

  async remove({ id }: Draft): Promise<void> {
    await this.drafts?.remove(id);
  }

  private change(): void {
    if (!this.changed) {
      this.changed = true;
      this.showTitle();
    }
    this.isBehind = true;
    this.keepSoon();
  }

  private keepAtOnce(): void {
    if (this.isBehind) void this.keep();
  }

  private async keep(): Promise<void> {
    if (!this.changed || this.drafts === undefined) return;
    this.isBehind = false;
    try {
      const { base = this.spreadsheet.opened(), ...open } = this.open;
      await this.drafts.keep({ ...open, base, workbook: this.spreadsheet.save() });
      document.body.dataset.kept = String(Number(document.body.dataset.kept ?? 0) + 1);
    } catch {
      notice('This browser has no room for a draft of your work: save it now.');
    }
  }

  private showTitle(): void {
    const { name } = this.open;
    part('title').textContent = this.changed ? `${name}, not saved` : name;
    document.title = `${this.changed ? `${name}, not saved` : name} - Siltstead workbench`;
  }
}
