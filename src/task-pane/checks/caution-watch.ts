import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import { debounced } from '../debounced';
import { sentenceOf } from '../messages';
import { nextTurn } from '../next-turn';
import { stillCalculating } from '../still-calculating';
import type { UnitsWatch } from '../units-watch';
import { unitsCaution } from '../workbook-units';
import { type Finding, findCautions, type WorkbookCells } from './find-cautions';
import type { FindMeasuring } from './worth-measuring';

/** The workbook's cautions. While `isCurrent` is false, a new search is running. */
export interface Cautions {
  readonly isCurrent: boolean;
  readonly findings: readonly Finding[];
  /** Why the search failed, or has not begun. */
  readonly fault?: string;
}

/** The cautions of the open workbook, searched again after every change while somebody listens. */
export interface CautionWatch {
  readonly now: () => Cautions;
  /** Calls back now and after each change; returns a function that stops it. */
  readonly follow: (listener: (cautions: Cautions) => void) => () => void;
  readonly lookAgain: () => void;
  /** Another workbook was opened, so earlier findings no longer apply. */
  readonly forget: () => void;
}

/** The page responds at least this often, in milliseconds. */
const sliceMs = 40;
/** The search reads every used cell, so it waits until cells have not changed for this long… */
const quietMs = 250;
/** …and for this many times as long as the last search took: a large workbook is searched less often. */
const restPerSearch = 3;

const nothing: Cautions = { isCurrent: false, findings: [] };

class Superseded extends Error {}

export function watchCautions(
  host: SheetHost | undefined,
  functionLibrary: FunctionLibrary,
  units: UnitsWatch,
): CautionWatch {
  const listeners = new Set<(cautions: Cautions) => void>();
  let now = nothing;
  let run = 0;
  let lastSearchMs = 0;
  let stopChanges: Promise<() => void> | undefined;

  const publish = (next: Cautions): void => {
    now = next;
    for (const listener of listeners) listener(now);
  };

  let measuring: FindMeasuring | undefined;
  const toMeasure = async (cells: WorkbookCells): Promise<readonly Finding[]> => {
    const isPlan = cells.blocks.some(({ formulas }) => formulas.some((line) => line.some(comparesFarms)));
    if (!isPlan) return [];
    measuring ??= await loadMeasuring();
    return measuring === undefined ? [] : measuring(cells, nextTurn);
  };

  const recheck = async (mine: number): Promise<void> => {
    if (host === undefined) return;
    const began = performance.now();
    let last = began;
    const step = async (): Promise<void> => {
      if (performance.now() - last > sliceMs) {
        await nextTurn();
        last = performance.now();
      }
      if (mine !== run) throw new Superseded();
    };
    try {
      const calculating = await stillCalculating(host, 'the checks follow when it is done');
      if (calculating !== undefined) {
        // The host calls again when it has calculated.
        if (mine === run) publish({ isCurrent: false, findings: now.findings, fault: calculating });
        return;
      }
      const [blocks, names] = await Promise.all([host.readUsed(), host.names(), units.refresh()]);
      await step();
      const cells = { blocks, names, functionLibrary };
      const found = await findCautions(cells, step);
      await step();
      const measured = await toMeasure(cells);
      if (mine !== run) return;
      lastSearchMs = performance.now() - began;
      publish({ isCurrent: true, findings: [...unitsFinding(units), ...found, ...measured] });
    } catch (error) {
      if (mine === run && !(error instanceof Superseded)) {
        publish({ isCurrent: true, findings: [], fault: sentenceOf(error) });
      }
    }
  };

  const lookAgain = (): void => {
    if (listeners.size === 0) return;
    run += 1;
    void recheck(run);
  };
  const afterChange = debounced(lookAgain, () => Math.max(quietMs, restPerSearch * lastSearchMs));
  const changed = (): void => {
    if (now.isCurrent) publish({ isCurrent: false, findings: now.findings });
    afterChange();
  };

  return {
    now: () => now,
    follow: (listener) => {
      listeners.add(listener);
      listener(now);
      stopChanges ??= host?.onCellsChanged(changed);
      stopChanges?.catch(() => undefined);
      lookAgain();
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        run += 1;
        now = nothing;
        void stopChanges?.then((stop) => stop()).catch(() => undefined);
        stopChanges = undefined;
      };
    },
    lookAgain,
    forget: () => {
      run += 1;
      lastSearchMs = 0;
      publish(nothing);
      afterChange();
    },
  };
}

/**
 * What to measure is searched in workbooks with a plan only, so its script loads with the first of them. Undefined
 * without a network; the next search tries again.
 */
async function loadMeasuring(): Promise<FindMeasuring | undefined> {
  try {
    const { createMeasuring } = await import(/* webpackChunkName: "worth-measuring" */ './worth-measuring');
    return createMeasuring();
  } catch {
    return undefined;
  }
}

function comparesFarms(formula: string | undefined): boolean {
  return formula !== undefined && /SILT[._]PLAN[._]COMPARE/i.test(formula);
}

/** If numbers are read in other units than they were typed in, nothing else can be trusted. */
function unitsFinding(units: UnitsWatch): readonly Finding[] {
  const sentence = unitsCaution(units.now());
  if (sentence === undefined) return [];
  const place = units.now().units?.place;
  const spots = place === undefined ? [] : [{ sheet: place.sheet, row: place.range.row, column: place.range.column }];
  return [{ tone: 'wrong', rank: 4, about: '', sentence, spots, affected: [] }];
}
