/** The part of the page where the chores' intervals are set: from a plan, or by hand. */
import { make, replace } from '../task-pane/dom';
import { type ChoreId, choresOf, longest, type Schedule } from './chores';
import { type Plan, plansIn } from './from-plan';
import { alert, plain, type Sentence } from './said';
import { keepSchedule, keptSchedule } from './store';

export interface Intervals {
  readonly schedule: () => Schedule;
}

interface Parts {
  readonly rows: HTMLTextAreaElement;
  readonly plans: HTMLSelectElement;
  readonly every: HTMLElement;
}

/** Fills the part in; `changed` gets a sentence about what has been taken over. */
export function startIntervals({ rows, plans, every }: Parts, changed: (sentence?: Sentence) => void): Intervals {
  let schedule = keptSchedule();
  let found: readonly Plan[] = [];

  const set = (next: Schedule): void => {
    schedule = next;
    keepSchedule(next);
  };
  const show = (): void => {
    replace(
      every,
      ...choresOf(schedule).map(({ id, name, every: days }) => {
        const input = make('input', {
          type: 'number',
          min: '1',
          max: String(longest),
          value: String(days),
          id: `every-${id}`,
        });
        input.addEventListener('change', () => setDays(id, input));
        return make('label', {}, `${name}, days`, input);
      }),
    );
  };
  const setDays = (id: ChoreId, input: HTMLInputElement): void => {
    const days = Number(input.value);
    if (!Number.isInteger(days) || days < 1 || days > longest) {
      changed(alert(`${input.value || 'Nothing'} is not an interval; give 1 to ${longest} whole days.`));
      show();
      return;
    }
    set({ ...schedule, every: { ...schedule.every, [id]: days } });
    changed();
  };
  const applyPlan = (): void => {
    const plan = found[plans.selectedIndex];
    if (plan === undefined) return;
    set({ every: { ...schedule.every, ...plan.schedule.every }, notes: plan.schedule.notes });
    show();
    changed(plain(`The intervals of ${plan.title || 'the plan'} are used.`));
  };

  rows.addEventListener('input', () => {
    if (rows.value.trim() === '') return;
    try {
      found = plansIn(rows.value);
    } catch (error) {
      changed(alert(error instanceof Error ? error.message : String(error)));
      return;
    }
    plans.replaceChildren(...found.map(({ title }, i) => new Option(title || `Column ${i + 1}`)));
    if (plans.parentElement) plans.parentElement.hidden = found.length < 2;
    rows.value = '';
    applyPlan();
  });
  plans.addEventListener('change', applyPlan);
  show();
  return { schedule: () => schedule };
}
