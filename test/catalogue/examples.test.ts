import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { type Headless, openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';

/** One part of `14.5, 119.3, phosphate`: a figure good to its last printed digit, or a word as it is. */
function matches(cell: unknown, part: string): boolean {
  if (!/^-?\d+(\.\d+)?$/.test(part)) return String(cell) === part;
  const decimals = part.split('.')[1]?.length ?? 0;
  return Math.abs(Number(cell) - Number(part)) <= 0.5000001 * 10 ** -decimals;
}

let spreadsheet: Headless;
beforeAll(async () => {
  spreadsheet = await openHeadless(await sourceFunctions());
});
afterAll(() => spreadsheet.dispose());

describe('every example on a reference page, typed into the spreadsheet', () => {
  it.each(catalogue.map((row) => ({ name: row.name, ...row.example })))('$formula', async ({ formula, gives }) => {
    const [result] = await spreadsheet.evaluate([formula]);
    const rows = Array.isArray(result) ? (result as readonly (readonly unknown[])[]) : [[result]];
    const bad = rows.flat().find((cell) => typeof cell === 'object' && cell !== null);
    expect(bad, JSON.stringify(bad)).toBeUndefined();
    if (/^one row per |^a block|^sentences/.test(gives)) {
      expect(rows.length).toBeGreaterThan(1);
      return;
    }
    const parts = gives.split(', ');
    const wrong = parts.filter((part, i) => !matches(rows[0]![i], part));
    expect(wrong, `gave ${rows[0]!.join(', ')}`).toEqual([]);
  });
});
