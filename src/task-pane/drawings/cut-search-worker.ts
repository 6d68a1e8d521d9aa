/**
 * Searches for cut plans beside the page, so that the page answers meanwhile. It computes with the same scripts as the
 * cells.
 */
import type { FunctionLibraryHolder } from '../../functions/function-library';
import type { CutSearchAnswer, CutSearchOrder } from './longer-search';

declare function importScripts(...addresses: readonly string[]): void;

importScripts('functions.js', 'cut-plans.js');

addEventListener('message', ({ data }: MessageEvent<CutSearchOrder>) => postMessage(answerTo(data)));

function answerTo({ arguments: values, effort }: CutSearchOrder): CutSearchAnswer {
  const { siltstead: library } = globalThis as FunctionLibraryHolder;
  const row = library?.catalogue.find(({ name }) => name === 'CUT.SHEETS');
  if (library === undefined || row === undefined) return { effort, refused: 'The function script did not load.' };
  try {
    const [line = []] = library.adapt(row, (_code, message) => new Error(message))(...values, effort);
    const [plan] = [...library.keptPlans].slice(-1);
    return { effort, sheets: Number(line[0]), lengthUsed: Number(line[4]), ...(plan && { plan }) };
  } catch (error) {
    return { effort, refused: error instanceof Error ? error.message : String(error) };
  }
}
