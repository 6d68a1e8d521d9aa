import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { functionLibrary } from '../../src/functions/function-library';
import { dataReader } from '../../src/hosts/data-reader';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { valuesOnlyCopy } from '../../src/task-pane/values-only';
import { convertWithOffice } from '../../src/tools/office/find-libreoffice';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { valuesOnlyFile } from '../../src/workbooks/saving/values-only';
import { readyMade } from '../../src/workbooks/sheets/ready-made';
import { openPackage, storedCells } from './package-parts';
import { rulesBroken } from './package-rules';

const folder = mkdtempSync(join(tmpdir(), 'values-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The samples, which sample-workbooks.test.ts holds to what is generated, byte for byte. */
const sampleBytes = (path: string): Uint8Array => new Uint8Array(readFileSync(join('sample-workbooks', path)));

const copyOf = async (bytes: Uint8Array): Promise<Uint8Array> =>
  valuesOnlyCopy(bytes, dataReader(await readWorkbook(bytes)), functionLibrary);

/** Three patterns and their plan; four scenarios, the range and the drivers of one. */
const drawn: Readonly<Record<string, number>> = { 'US/cone-cut-plan.xlsx': 4, 'US/stocking-scenarios.xlsx': 6 };

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

  it('shows every result, every drawing and no #NAME? in LibreOffice, which does not know the add-in', async () => {
    const made = readdirSync('sample-workbooks/US')
      .filter((name) => name.endsWith('.xlsx'))
      .map((name) => ({ path: `US/${name}`, bytes: sampleBytes(`US/${name}`) }));
    expect(made.length).toBe(readyMade.length);
    const paths = await Promise.all(
      made.map(async ({ path, bytes }) => {
        const file = join(folder, path.replace('/', '-'));
        writeFileSync(file, await copyOf(bytes));
        return file;
      }),
    );
    const output = join(folder, 'opened');
    mkdirSync(output);
    convertWithOffice(paths, 'xlsx', output).forEach((path, index) => {
      const [wanted, opened] = [openPackage(made[index]!.bytes), openPackage(new Uint8Array(readFileSync(path)))];
      const errors = opened.sheets.flatMap(({ name, part }) =>
        storedCells(opened.xml(part))
          .filter(({ type }) => type === 'e')
          .map(({ address, value }) => [name, address, value]),
      );
      expect(errors).toEqual([]);
      // LibreOffice writes only the pictures that it could read.
      const pictures = opened.names.filter((name) => /media\/image\d+\.png$/.test(name)).length;
      expect([made[index]!.path, pictures]).toEqual([made[index]!.path, drawn[made[index]!.path] ?? 0]);
      for (const { name, part } of wanted.sheets) {
        const shown = new Map(
          storedCells(opened.xml(opened.sheets.find((sheet) => sheet.name === name)!.part)).map((cell) => [
            cell.address,
            cell,
          ]),
        );
        for (const { address, value, type, formula } of storedCells(wanted.xml(part)))
          if (formula !== undefined && type === undefined && value !== undefined)
            expect(Number(shown.get(address)?.value)).toBeCloseTo(Number(value), 9);
      }
    });
  });
});
