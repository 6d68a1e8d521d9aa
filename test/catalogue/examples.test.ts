import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { type Headless, openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';

/** `28.3, 58.2, 1.2` as figures, each good to its last printed digit; undefined where it is not figures. */
function printed(gives: string): readonly { figure: number; half: number }[] | undefined {
  const parts = gives.split(', ');
  if (!parts.every((part) => /^-?\d+(\.\d+)?$/.test(part))) return undefined;
  return parts.map((part) => {
    const decimals = part.split('.')[1]?.length ?? 0;
    return { figure: Number(part), half: 0.5000001 * 10 ** -decimals };
  });
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
    const figures = printed(gives);
    if (figures) {
      figures.forEach(({ figure, half }, i) => {
        expect(Math.abs(Number(rows[0]![i]) - figure), `${rows[0]![i]} printed as ${figure}`).toBeLessThanOrEqual(half);
      });
    } else if (/^a row |^rows|^a block|^sentences/.test(gives)) {
      expect(rows.length).toBeGreaterThan(1);
    } else {
      expect(rows[0]!.map(String).join(', ')).toBe(gives);
    }
  });
});
