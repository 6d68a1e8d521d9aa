import { parseRange } from '../../hosts/address';
import type { Profile } from '../../units/profile';
import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { make, replace } from '../dom';
import { sentenceOf } from '../messages';
import { today } from '../today';
import type { ViewPart } from '../view';
import { watchCells } from '../watch-cells';
import { withMaterials } from './add-materials';
import { Attempts } from './attempts';
import type { BoundField } from './bound-field';
import type { GuideContext } from './context';
import { addressIn } from './facts';
import { FieldFiller } from './field-filler';
import { type FieldId, fields } from './fields';
import { introOf } from './intro';
import { findJob, goToStep, type Job, JobLost, sheetOf } from './job';
import { openPanel } from './open-panel';
import { readState } from './read-state';
import { lookAround, nextDrum, startJob } from './start-job';
import { showNames } from './step-names';
import type { StepPanel, StepState } from './step-panel';
import { type StepId, stepAsking, steps } from './steps';

/** The guide through a first job, beside the cells that it fills. */
export function createGuide(context: GuideContext): ViewPart {
  const guide = new Guide(context);
  return {
    element: guide.element,
    shown: () => guide.shown(),
    hidden: () => guide.hidden(),
    forget: () => guide.forget(),
  };
}

class Guide {
  readonly element = make('div', {});
  private readonly body = make('div', {});
  private readonly names = make('ol', { class: 'step-names' });
  private readonly context: GuideContext;
  private job: Job | undefined;
  private state: StepState | undefined;
  private panel: StepPanel | undefined;
  private readonly filler: FieldFiller;
  private readonly attempts: Attempts;
  private run = 0;
  private stopWatching: (() => void) | undefined;

  constructor(context: GuideContext) {
    this.context = context;
    this.filler = new FieldFiller(context.host);
    this.attempts = new Attempts(context);
    replace(this.element, make('h2', {}, 'First job'), make('nav', { 'aria-label': 'Steps' }, this.names), this.body);
  }

  shown(): void {
    const { host, notify } = this.context;
    this.stopWatching = watchCells(host, () => void this.attempts.attempt(() => this.refresh()), 120);
    this.load().catch((error: unknown) => notify('fault', sentenceOf(error)));
  }

  hidden(): void {
    this.stopWatching?.();
    this.stopWatching = undefined;
  }

  forget(): void {
    this.job = undefined;
    this.state = undefined;
    this.panel = undefined;
    this.run += 1;
    if (this.stopWatching !== undefined) void this.attempts.attempt(() => this.load());
  }

  /** Finds the job in the workbook and goes on where it was left. */
  private async load(): Promise<void> {
    const { host, units } = this.context;
    this.run += 1;
    const mine = this.run;
    await units.refresh();
    let isLost = false;
    const job = await findJob(host).catch((error: unknown) => {
      if (!(error instanceof JobLost)) throw error;
      isLost = true;
      return undefined;
    });
    if (mine !== this.run) return;
    this.job = job;
    if (job === undefined) {
      const ground = await lookAround(this.context);
      if (mine === this.run) this.showIntro(introOf(ground, (profile) => void this.start(profile), isLost));
    } else await this.refresh();
  }

  private showIntro(intro: HTMLElement): void {
    this.panel = undefined;
    this.state = undefined;
    replace(this.names);
    replace(this.body, intro);
  }

  private async start(profile: ReadyProfile): Promise<void> {
    const job = await this.attempts.working('Preparing the sheets', (progress) =>
      startJob(this.context, profile, progress),
    );
    if (job === undefined) return;
    this.job = job;
    await this.attempts.attempt(() => this.refresh());
    this.panel?.focusHeading();
  }

  /** Reads the job's cells again and shows them, at the step that they allow. */
  private async refresh(): Promise<void> {
    const { host, units } = this.context;
    if (this.job === undefined) return;
    const mine = this.run;
    // A host that is still at work calls again when it is done.
    if (await host.isCalculating?.()) return;
    const { fills } = this.filler;
    const state = await readState(host, this.job, units.now());
    if (mine !== this.run || this.job === undefined) return;
    if (fills !== this.filler.fills) return this.refresh();
    if (typeof state === 'string') {
      this.showIntro(make('p', { class: 'step-caution' }, state));
      return;
    }
    this.job = state.job;
    this.state = state;
    const { step } = state.job;
    if (this.panel?.step.id !== step) this.open(step, state.profile);
    this.panel?.show(this.state);
    showNames(this.names, this.state, (id) => void this.attempts.attempt(() => this.goTo(id)));
  }

  private open(id: StepId, profile: Profile): void {
    const isMoving = this.panel !== undefined;
    const panel = openPanel(this.context, id, profile, {
      changed: (field) => this.saveSoon(field),
      next: () => void this.next(),
      toField: (field) => void this.toField(field),
      goTo: (step) => void this.attempts.attempt(() => this.goTo(step)),
      another: () => void this.attempts.attempt(() => this.another()),
      showCells: () => void this.attempts.attempt(() => this.showCells()),
    });
    this.panel = panel;
    replace(this.body, panel.element);
    if (isMoving) panel.focusHeading();
  }

  /** A cell is written after the focus has moved on: the grid may take the focus while it is written to. */
  private saveSoon(field: BoundField): void {
    setTimeout(() => {
      if (field.isBehind()) void this.save(field);
    }, 0);
  }

  private save(field: BoundField): Promise<boolean> {
    const { job, state } = this;
    if (job === undefined || state === undefined) return Promise.resolve(false);
    return this.attempts.attempt(() => this.filler.fill(field, job, state.profile)).then((filled) => filled ?? false);
  }

  private async next(): Promise<void> {
    await this.filler.filled();
    const { panel } = this;
    if (panel === undefined) return;
    if (!(await this.allFilled(panel))) return;
    await this.attempts.attempt(async () => {
      await this.filler.settled();
      await this.refresh();
    });
    const { state, job } = this;
    const after = steps[steps.indexOf(panel.step) + 1];
    if (state === undefined || job === undefined || after === undefined || this.panel !== panel) return;
    if (state.stops.length > 0) return panel.focusStops();
    if (panel.step.id === 'check' && !state.verdict.isDone) {
      return this.context.notify('note', 'The sheet has no answer yet; press Next again when it has calculated.');
    }
    if (after.id === 'buy') await this.addMaterials();
    if (after.id !== 'buy' || this.job?.sheets.bank !== undefined)
      await this.attempts.attempt(() => this.goTo(after.id));
  }

  /** Fills what was typed and not left yet; goes to the first field that is missing or cannot be read. */
  private async allFilled(panel: StepPanel): Promise<boolean> {
    for (const field of panel.asked()) {
      const { isNeeded, label } = fields[field.id];
      const isMissing = isNeeded === true && field.text().trim() === '';
      if (isMissing) field.complain(`Give this: ${label.toLowerCase()}.`);
      if (!isMissing && (!field.isBehind() || (await this.save(field)))) continue;
      field.focus();
      return false;
    }
    return true;
  }

  private async addMaterials(): Promise<void> {
    const { job } = this;
    if (job === undefined) return;
    const next = await this.attempts.working('Adding the materials sheets', (progress) =>
      withMaterials(this.context, job, today(), progress),
    );
    if (next === undefined) return;
    this.job = next;
    await this.attempts.attempt(() =>
      this.context.host.select({ sheet: sheetOf(next, 'materials'), range: firstCell }),
    );
  }

  private async goTo(step: StepId): Promise<void> {
    if (this.job === undefined) return;
    this.job = await goToStep(this.context.host, this.job, step);
    await this.refresh();
  }

  private async another(): Promise<void> {
    if (this.job === undefined) return;
    const next = await nextDrum(this.context, this.job);
    if (next === undefined) {
      this.context.notify('note', 'The sheet has no free row for another drum; open a new workbook for it.');
      return;
    }
    this.job = next;
    await this.refresh();
  }

  private async toField(id: FieldId): Promise<void> {
    const step = stepAsking(id);
    if (step === undefined) return;
    if (step.id !== this.panel?.step.id) await this.attempts.attempt(() => this.goTo(step.id));
    this.panel?.go(id);
  }

  private async showCells(): Promise<void> {
    const { job, state, panel } = this;
    if (job === undefined || state === undefined || panel === undefined) return;
    const { sheet, cell } = panel.step.place;
    const range = parseRange(addressIn(cell, state.cells, job));
    if (range !== undefined) await this.context.host.select({ sheet: sheetOf(job, sheet), range });
  }
}

const firstCell = { row: 0, column: 0, rows: 1, columns: 1 };
