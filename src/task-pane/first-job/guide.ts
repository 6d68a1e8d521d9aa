import type { Drawing } from '../../drawing/drawing-model';
import { parseRange } from '../../hosts/address';
import type { SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { debounced } from '../debounced';
import { make, makeButton, replace } from '../dom';
import { createSavePanel } from '../drawings/save-panel';
import { sentenceOf } from '../messages';
import { sentenceIn } from '../user-error';
import type { PaneContext, ViewPart } from '../view';
import type { Progress } from '../work';
import { unitsCaution } from '../workbook-units';
import { withMaterials } from './add-materials';
import type { BoundField } from './bound-field';
import { addressIn } from './facts';
import { FieldFiller } from './field-filler';
import { type FieldId, fields } from './fields';
import { finishButtons } from './finish';
import { introOf } from './intro';
import { findJob, goToStep, type Job, JobLost, sheetOf } from './job';
import { readJobCells } from './job-cells';
import { lookAround, nextDrum, startJob } from './start-job';
import { showNames } from './step-names';
import { createStepPanel, type StepPanel, type StepState } from './step-panel';
import { type StepId, stepOf, steps } from './steps';
import { verdictOf } from './stops';
import { openStep, stopsOf } from './where';

export interface GuideContext extends PaneContext {
  readonly host: SheetHost;
}

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
  private run = 0;
  private stops: (() => void)[] = [];

  constructor(context: GuideContext) {
    this.context = context;
    this.filler = new FieldFiller(context.host);
    replace(this.element, make('h2', {}, 'First job'), make('nav', { 'aria-label': 'Steps' }, this.names), this.body);
  }

  shown(): void {
    const { host, notify } = this.context;
    const changed = debounced(() => void this.attempt(() => this.refresh()), 120);
    const watching = host.onCellsChanged(changed);
    this.stops = [
      () => {
        changed.cancel();
        watching.then((stop) => stop()).catch(() => undefined);
      },
    ];
    this.load().catch((error: unknown) => notify('fault', sentenceOf(error)));
  }

  hidden(): void {
    for (const stop of this.stops) stop();
    this.stops = [];
  }

  forget(): void {
    this.job = undefined;
    this.state = undefined;
    this.panel = undefined;
    this.run += 1;
    if (this.stops.length > 0) void this.attempt(() => this.load());
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
    const job = await this.working('Preparing the sheets', (progress) => startJob(this.context, profile, progress));
    if (job === undefined) return;
    this.job = job;
    await this.attempt(() => this.refresh());
    this.panel?.focusHeading();
  }

  /** Reads the job's cells again and shows them, at the step that they allow. */
  private async refresh(): Promise<void> {
    const { host, units } = this.context;
    if (this.job === undefined) return;
    const mine = this.run;
    // A host that is still at work calls again when it is done.
    if (await host.isCalculating?.()) return;
    const cells = await readJobCells(host, this.job.sheets);
    if (mine !== this.run || this.job === undefined) return;
    const { profile } = units.now().units ?? {};
    const caution = unitsCaution(units.now());
    if (profile === undefined || caution !== undefined) {
      this.showIntro(make('p', { class: 'step-caution' }, caution ?? 'The workbook has no units; add them in Units.'));
      return;
    }
    const verdict = verdictOf(cells, this.job, profile);
    const step = openStep(cells, this.job, verdict);
    this.job = { ...this.job, step };
    this.state = {
      cells,
      job: this.job,
      profile,
      verdict,
      stops: stopsOf(step, cells, this.job, { verdict, profile }),
    };
    if (this.panel?.step.id !== step) this.open(step, profile);
    this.panel?.show(this.state);
    showNames(this.names, this.state, (id) => void this.attempt(() => this.goTo(id)));
  }

  private open(id: StepId, profile: Profile): void {
    const isMoving = this.panel !== undefined;
    const step = stepOf(id);
    const saving = createSavePanel(this.context.notify, this.context.work);
    saving.element.hidden = true;
    const canSave = (id === 'pattern' || id === 'cut') && this.context.host.downloads;
    const drawn = (drawing: Drawing | undefined): void => {
      saving.element.hidden = !canSave || drawing === undefined;
      if (drawing !== undefined) saving.offer([drawing]);
    };
    const panel = createStepPanel(
      step,
      profile,
      {
        changed: (field) => this.saveSoon(field),
        next: () => void this.next(),
        toField: (field) => void this.toField(field),
        drawn,
      },
      { below: canSave ? [saving.element] : [], above: this.buttons(id) },
    );
    this.panel = panel;
    replace(this.body, panel.element);
    if (isMoving) panel.focusHeading();
  }

  private buttons(id: StepId): HTMLElement {
    const at = steps.findIndex((step) => step.id === id);
    const [before, after] = [steps[at - 1], steps[at + 1]];
    const place = makeButton('Show the cells', () => void this.attempt(() => this.showCells()));
    const back = before === undefined ? [] : [makeButton('Back', () => void this.attempt(() => this.goTo(before.id)))];
    const next =
      after === undefined
        ? finishButtons(this.context, () => void this.attempt(() => this.another()))
        : [make('button', { type: 'submit', class: 'primary' }, `Next: ${after.title}`)];
    return make('div', { class: 'buttons' }, ...next, ...back, place);
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
    return this.attempt(() => this.filler.fill(field, job, state.profile)).then((filled) => filled ?? false);
  }

  private async next(): Promise<void> {
    await this.filler.filled();
    const { panel } = this;
    if (panel === undefined) return;
    for (const field of panel.asked()) {
      if (field.isBehind() && !(await this.save(field))) return field.focus();
      const { isNeeded, label } = fields[field.id];
      if (isNeeded && field.text().trim() === '') {
        field.complain(`Give this: ${label.toLowerCase()}.`);
        return field.focus();
      }
    }
    await this.attempt(async () => {
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
    if (after.id !== 'buy' || this.job?.sheets.bank !== undefined) await this.attempt(() => this.goTo(after.id));
  }

  private async addMaterials(): Promise<void> {
    const { job } = this;
    if (job === undefined) return;
    const next = await this.working('Adding the materials sheets', (progress) =>
      withMaterials(this.context, job, dayOf(new Date()), progress),
    );
    if (next === undefined) return;
    this.job = next;
    await this.attempt(() => this.context.host.select({ sheet: sheetOf(next, 'materials'), range: firstCell }));
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
    const step = steps.find(({ asks }) =>
      asks.some((asked) =>
        typeof asked === 'string' ? asked === id : asked.ways.some((way) => way.asks.includes(id)),
      ),
    );
    if (step === undefined) return;
    if (step.id !== this.panel?.step.id) await this.attempt(() => this.goTo(step.id));
    this.panel?.go(id);
  }

  private async showCells(): Promise<void> {
    const { job, state, panel } = this;
    if (job === undefined || state === undefined || panel === undefined) return;
    const { sheet, cell } = panel.step.place;
    const range = parseRange(addressIn(cell, state.cells, job));
    if (range !== undefined) await this.context.host.select({ sheet: sheetOf(job, sheet), range });
  }

  private working<T>(title: string, job: (progress: Progress) => Promise<T>): Promise<T | undefined> {
    return this.context.work(title, (progress) =>
      job(progress).catch((error: unknown) => {
        const sentence = sentenceIn(error);
        if (sentence === undefined) throw error;
        this.context.notify('fault', sentence);
        return undefined;
      }),
    );
  }

  /** Does something and says in the pane's line what went wrong. */
  private async attempt<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      return await work();
    } catch (error) {
      this.context.notify('fault', sentenceIn(error) ?? sentenceOf(error));
      return undefined;
    }
  }
}

const firstCell = { row: 0, column: 0, rows: 1, columns: 1 };

/** The day as a person counts it where they are: `2027-03-20`. */
function dayOf(date: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
