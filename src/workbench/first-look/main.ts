/**
 * Runs before the workbench's own script, which a slow computer reads for seconds: loads the functions, computes the cells
 * of the first look with them, and then lets the workbench begin.
 */
import {
  type CustomFunctionsStandIn,
  createCustomFunctions,
  installCustomFunctions,
} from '../../hosts/univer/custom-functions';
import { associatedCalls } from './associated-calls';
import { computeLook, type LookPlan } from './look-plan';
import { shownText } from './shown-text';

function showComputed(table: HTMLTableElement, functions: CustomFunctionsStandIn): void {
  const plan = JSON.parse(table.dataset.plan ?? '') as LookPlan;
  for (const { row, column, value, decimals } of computeLook(plan, associatedCalls(functions))) {
    const cell = table.querySelector(`[data-row="${row}"] > [data-column="${column}"]`);
    const text = shownText(value, decimals);
    if (cell !== null && cell.textContent !== text) cell.textContent = text;
  }
  table.dataset.computed = 'true';
}

function addScript(address: string): HTMLScriptElement {
  const script = document.createElement('script');
  script.src = address;
  document.head.append(script);
  return script;
}

/** Asks for the workbench's script, which is not run before it is needed. */
function askFor(address: string): void {
  const link = document.createElement('link');
  Object.assign(link, { rel: 'preload', as: 'script', href: address });
  document.head.append(link);
}

/** Runs work once the page has shown what has been put into it; a hidden page shows nothing. */
function afterFrame(work: () => void): void {
  if (document.visibilityState === 'hidden') work();
  else requestAnimationFrame(() => setTimeout(work, 0));
}

function start(): void {
  const workbench = 'workbench.js';
  // The functions associate themselves with what stands there; the workbench takes them from it.
  const standIn = createCustomFunctions();
  installCustomFunctions(standIn);
  const functions = addScript('functions.js');
  functions.onload = () => {
    askFor(workbench);
    try {
      const table = document.querySelector<HTMLTableElement>('#first-look table');
      if (table !== null && standIn.associated.size > 0) showComputed(table, standIn);
    } finally {
      afterFrame(() => {
        performance.mark('first look computed');
        addScript(workbench);
      });
    }
  };
  // The workbench says what is missing.
  functions.onerror = () => addScript(workbench);
}

start();
