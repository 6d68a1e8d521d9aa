import type { SheetHost } from '../../hosts/sheet-host';
import { placeText } from '../cell-formula/book';
import { UserError } from '../user-error';
import type { PaneContext } from '../view';
import { type CutSearchAnswer, type SearchWorker, searchLonger } from './longer-search';
import type { CutSearch } from './recognition';
import { othersOfPlan } from './same-plan';

type Context = Pick<PaneContext, 'work' | 'notify' | 'page' | 'functionLibrary'> & { readonly host: SheetHost };

/**
 * Searches longer for the plan of a cell, and writes the effort that gave a shorter plan into its formula and into the
 * others of the same plan.
 */
export async function longerPlan(
  search: CutSearch,
  { host, work, notify, page, functionLibrary }: Context,
  makeWorker: (address: string) => SearchWorker = newWorker,
): Promise<void> {
  const { place, formula, formulaWith } = search;
  await work('Searching for a shorter cut plan', async (progress) => {
    const { before, best } = await searchLonger(search, () => makeWorker(page('cut-search.js')), progress);
    if (best === before) {
      notify('note', 'No shorter plan was found at up to 64 times the effort; the cell stays as it is.');
      return;
    }
    progress.finishing();
    const gain =
      best.sheets < before.sheets
        ? `${best.sheets} sheets in place of ${before.sheets}`
        : `${((1 - best.lengthUsed / before.lengthUsed) * 100).toFixed(1)} % less of the last sheet`;
    const next = formulaWith(best.effort);
    if (next === undefined) {
      notify(
        'done',
        `Effort ${best.effort} gives ${gain}; type it where the formula of the plan takes its effort from.`,
      );
      return;
    }
    // The cell would search for it again, and the page would not answer meanwhile.
    if (best.plan !== undefined) functionLibrary.keptPlans.set(...best.plan);
    const others = await othersOfPlan(search, best.effort, { host, functionLibrary, names: await host.names() });
    const changes = [{ place, formula, next }, ...others.filter((other) => other.next !== undefined)];
    const write = (text: 'formula' | 'next') =>
      host.write(changes.map((change) => ({ ...change.place, cells: [[change[text]]] })));
    await write('next');
    const left = others.filter((other) => other.next === undefined).map((other) => placeText(other.place));
    const rest = left.length > 0 ? `; type it too where ${left.join(', ')} takes its effort from` : '';
    notify('done', `Effort ${best.effort} gives ${gain}${rest}.`, {
      label: 'Undo',
      press: () => void work('Putting the effort back', () => write('formula')),
    });
  });
}

function newWorker(address: string): SearchWorker {
  const worker = new Worker(address);
  return {
    search: (order) =>
      new Promise((resolve, reject) => {
        worker.onmessage = ({ data }: MessageEvent<CutSearchAnswer>) => resolve(data);
        worker.onerror = (event) => {
          event.preventDefault();
          reject(new UserError('The search cannot run here; reload the page and try again.'));
        };
        worker.postMessage(order);
      }),
    end: () => worker.terminate(),
  };
}
