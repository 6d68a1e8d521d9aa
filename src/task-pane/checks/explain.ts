import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import { readFormula } from '../cell-formula/read-formula';
import { scopeOf } from '../cell-formula/scope';
import { CalledError, evaluate } from '../follow/evaluate';
import { type Grid, NotFollowed } from '../follow/grid';
import type { Explain } from './find-cautions';

/** More errors than this are not looked into: they nearly always have one cause. */
const mostExplained = 60;

/** Finds out why a cell shows an error, for hosts that keep only its code, by computing its formula once more. */
export async function createExplain(host: SheetHost, functionLibrary: FunctionLibrary): Promise<Explain> {
  const names = await host.names();
  let explained = 0;
  return async ({ sheet, row, column, code, formula }) => {
    explained += 1;
    const part = explained > mostExplained ? undefined : readFormula(formula);
    if (part === undefined) return undefined;
    const home = { sheet, row, column, value: '', formula, source: undefined };
    try {
      return errorIn(await evaluate(part, scopeOf(home), { host, functionLibrary, names }), code);
    } catch (error) {
      if (error instanceof CalledError) return error.reason === '' ? undefined : error.reason;
      if (error instanceof NotFollowed) return undefined;
      throw error;
    }
  };
}

function errorIn(grid: Grid, code: string): string | undefined {
  for (const value of grid.flat()) {
    if (typeof value === 'object' && value.error.code === code && value.error.message !== '')
      return value.error.message;
  }
  return undefined;
}
