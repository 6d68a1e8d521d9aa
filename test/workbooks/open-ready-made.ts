import { afterEach } from 'vitest';
import { parseRange } from '../../src/hosts/address';
import { type Headless, openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellResult, CellScalar } from '../../src/hosts/workbook-model';
import { type ReadyProfile, readyMade } from '../../src/workbooks/sheets/ready-made';

export interface OpenReadyMade {
  readonly book: Headless;
  /** Types into cells, by sheet and address, and recalculates. */
  readonly type: (entries: Readonly<Record<string, CellScalar>>) => Promise<void>;
  readonly value: (sheet: string, address: string) => CellResult;
  /** The values of a range, one line a row. */
  readonly values: (sheet: string, range: string) => readonly (readonly CellResult[])[];
}

function rangeOf(address: string) {
  const range = parseRange(address);
  if (range === undefined) throw new Error(`${address} is no range`);
  return range;
}

/** A ready-made workbook as it is built now, open in the engine; `dispose` of its book ends it. */
export async function openReadyMade(id: string, profile: ReadyProfile): Promise<OpenReadyMade> {
  const made = readyMade.find((one) => one.id === id);
  if (made === undefined) throw new Error(`no workbook ${id}`);
  const book = await openHeadless(await sourceFunctions(), made.build(profile));
  const values = (sheet: string, range: string) =>
    book.read(sheet, rangeOf(range)).map((line) => line.map(({ value }) => value));
  return {
    book,
    values,
    value: (sheet, address) => values(sheet, address)[0]?.[0] ?? '',
    type: async (entries) => {
      for (const [place, entry] of Object.entries(entries)) {
        const [sheet = '', address = ''] = place.split('!');
        const { row, column } = rangeOf(address);
        book.setCells(sheet, row, column, [[entry]]);
      }
      await book.recalculate();
    },
  };
}

/** Opens ready-made workbooks, one in each test of the file that calls it, and ends the engine after the test. */
export function opensForEachTest(): typeof openReadyMade {
  let open: OpenReadyMade | undefined;
  afterEach(() => {
    open?.book.dispose();
    open = undefined;
  });
  return async (...of) => {
    open = await openReadyMade(...of);
    return open;
  };
}

export const isError = (value: unknown): boolean => typeof value === 'object';
