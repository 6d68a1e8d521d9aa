/**
 * Cut plans that this browser keeps, so that a workbook that is opened again need not search for them again, during
 * which the page would not answer.
 */
import type { CutPlan } from '../formulas/cut/cut-plan';

type Plans = readonly (readonly [name: string, plan: CutPlan])[];

/** The plans of the first sample, which the build has found, and the mark of the function script that found them. */
export interface BuiltPlans {
  readonly script: string;
  readonly plans: Plans;
}

const storedAs = 'siltstead cut plans';
/** A browser keeps five million characters for a whole site. */
const mostCharacters = 500_000;

/** Begins to load the built plans; none if the site does not have them. */
export function loadBuiltPlans(): Promise<BuiltPlans | undefined> {
  return fetch('cut-plans.json')
    .then((response) => (response.ok ? (response.json() as Promise<BuiltPlans>) : undefined))
    .catch(() => undefined);
}

/**
 * Brings back the plans of the build and those that were kept, and keeps all whenever the page is left. Plans of another
 * function script are left out, because it may find others.
 */
export function keepPlans(kept: Map<string, CutPlan>, built: BuiltPlans | undefined): void {
  if (built === undefined) return;
  for (const [name, plan] of [...storedPlans(built.script), ...built.plans]) kept.set(name, plan);
  const store = () => storePlans({ script: built.script, plans: [...kept] });
  addEventListener('pagehide', store);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') store();
  });
}

function storedPlans(script: string): Plans {
  try {
    const stored = JSON.parse(localStorage.getItem(storedAs) ?? '{}') as Partial<BuiltPlans>;
    return stored.script === script && Array.isArray(stored.plans) ? stored.plans : [];
  } catch {
    // The browser keeps nothing for this site, or what it kept cannot be read: the plans are searched for again.
    return [];
  }
}

/** The latest plans come last, and are kept first. */
function storePlans({ script, plans }: BuiltPlans): void {
  let left = mostCharacters;
  const newest = [...plans].reverse().filter((plan) => {
    left -= JSON.stringify(plan).length;
    return left > 0;
  });
  try {
    localStorage.setItem(storedAs, JSON.stringify({ script, plans: newest.reverse() }));
  } catch {
    // A full store costs a search the next time, and nothing else.
  }
}
