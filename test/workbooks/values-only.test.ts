import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { valuesOnlyFile } from '../../src/workbooks/saving/values-only';
import { openPackage, storedCells } from './package-parts';
import { rulesBroken } from './package-rules';

/** The samples, which sample-workbooks.test.ts holds to what is generated, byte for byte. */
const sampleBytes = (path: string): Uint8Array => new Uint8Array(readFileSync(join('sample-workbooks', path)));

describe('a values-only copy', () => {
  it('shows the same results and holds no formula, for programs that do not know the add-in', () => {
    const full = sampleBytes('metric/harvest-book.xlsx');
    const values = valuesOnlyFile(full);
    expect(rulesBroken(values)).toEqual([]);
    const [before, after] = [openPackage(full), openPackage(values)];
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

  it('keeps everything else of a file from another program', async () => {
    const bytes = new Uint8Array(readFileSync('test/workbooks/files/drum-store.xlsx'));
    const computed = (await recalculateFile(await sourceFunctions(), bytes)).bytes;
    const [before, after] = [unzipSync(computed), unzipSync(valuesOnlyFile(computed))];
    const changed = Object.keys(before).filter(
      (name) => Buffer.compare(Buffer.from(before[name]!), Buffer.from(after[name] ?? [])) !== 0,
    );
    expect(changed).toEqual(['xl/worksheets/sheet1.xml', 'xl/worksheets/sheet2.xml']);
  });
});
