import { type FittingLoss, noFittings, readFittings } from '../formulas/fittings';
import type { NominalSize } from '../formulas/pipe-sizes';
import { Refusal } from '../formulas/refusal';
import { numberAtHead } from '../units/number-text';
import { tidyText } from '../units/text';
import { Unreadable } from '../units/unreadable';
import type { CellValue, ReaderArgument } from './argument';

const sizeText = 'a size such as 2.5, 2-1/2 in or 63 mm';

/** The name of a pipe: an inch size whatever the profile, or an outside diameter in millimetres. */
export function nominalSize(meaning: string): ReaderArgument<NominalSize> {
  return { meaning, accepts: sizeText, reader: readNominalSize };
}

export function readNominalSize(value: CellValue): NominalSize {
  if (typeof value === 'number') return inches(value, String(value));
  const text = tidyText(String(value)).toLowerCase();
  const head = numberAtHead(text);
  if (!head || 'readings' in head) throw new Unreadable(`"${text.slice(0, 40)}" is no pipe size; give ${sizeText}`);
  if (/^(|in|inch|inches|"|″)$/.test(head.rest)) return inches(head.value, text);
  if (/^(mm|millimet(er|re)s?)$/.test(head.rest)) return { series: 'metric', size: head.value };
  throw new Unreadable(`"${text.slice(0, 40)}" is no pipe size; give ${sizeText}`);
}

/** A fraction typed bare becomes a date in a spreadsheet, a serial number far above any pipe. */
function inches(size: number, given: string): NominalSize {
  if (size >= 36526)
    throw new Unreadable(`${given} is a date to a spreadsheet; for a fraction type 0 1/2, 0.5 or 1/2 in`);
  if (!(size > 0)) throw new Unreadable(`${given} is no pipe size; give ${sizeText}`);
  return { series: 'inch', size };
}

const fittingText = 'a K such as 2.5, or fittings such as 2 elbow, 1 tee';

/** Fittings as a K or in words; none by default. */
export function fittings(meaning: string): ReaderArgument<FittingLoss> & { readonly default: FittingLoss } {
  return { meaning, accepts: fittingText, reader: readFittingLoss, default: noFittings, defaultReads: '0' };
}

export function readFittingLoss(value: CellValue): FittingLoss {
  const k = typeof value === 'number' ? value : Number(String(value).trim());
  if (Number.isFinite(k)) {
    if (k < 0 || k > 10_000) throw new Unreadable(`${k} is not allowed; give ${fittingText}`);
    return { coefficient: k, bores: 0 };
  }
  try {
    return readFittings(String(value));
  } catch (error) {
    if (error instanceof Refusal) throw new Unreadable(error.advice);
    throw error;
  }
}
