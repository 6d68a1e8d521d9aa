import { describe, expect, it } from 'vitest';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { generateWorkbooks } from '../../src/workbooks/generate';
import { openPackage, storedCells } from './package-parts';
import { rulesBroken } from './package-rules';

describe('a values-only copy', () => {
  it('shows the same results and holds no formula, for programs that do not know the add-in', async () => {
    const functions = await sourceFunctions();
    const wanted = (path: string): boolean => path === 'metric/harvest-book.xlsx';
    const [full] = await generateWorkbooks(functions, wanted);
    const [values] = await generateWorkbooks(functions, wanted, 'values');
    expect(rulesBroken(values!.bytes)).toEqual([]);
    const [before, after] = [openPackage(full!.bytes), openPackage(values!.bytes)];
    let numbers = 0;
    for (const { part } of before.sheets) {
      const copies = new Map(storedCells(after.xml(part)).map((cell) => [cell.address, cell]));
      for (const { address, value, type } of storedCells(before.xml(part))) {
        const copy = copies.get(address);
        expect(copy?.formula).toBeUndefined();
        if (type !== undefined || value === undefined) continue;
        expect([address, copy?.value]).toEqual([address, value]);
        numbers += 1;
      }
    }
    expect(numbers).toBeGreaterThan(200);
    expect(after.names.filter((name) => name.startsWith('xl/charts/'))).toHaveLength(2);
  });
});
