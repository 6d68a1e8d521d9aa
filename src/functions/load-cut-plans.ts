/**
 * Loads the script of the search for cut plans, beside the function script.
 */
import { isSearchLoaded } from '../formulas/cut/cut-plan';

const file = 'cut-plans.js';

/** Where the function script came from. A script knows its own address only while it is run first. */
const beside = (() => {
  if (typeof document === 'undefined') return undefined;
  const { currentScript } = document;
  return currentScript instanceof HTMLScriptElement ? currentScript.src : undefined;
})();

let loading: Promise<void> | undefined;

/** Rejects if the script cannot be loaded; the next call tries again. */
export function loadCutSearch(): Promise<void> {
  if (isSearchLoaded()) return Promise.resolve();
  loading ??= addScript().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

function addScript(): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = new URL(file, beside ?? document.baseURI).href;
    script.onload = () => resolve();
    script.onerror = () => {
      script.remove();
      reject(new Error(`${file}, which searches for cut plans, did not load; check that its site can be reached`));
    };
    document.head.append(script);
  });
}
