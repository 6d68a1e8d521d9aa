import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { generateWorkbooks } from '../../src/workbooks/generate';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { readyMade, readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { cellsOf, deepestChain } from './chain-depth';
import { all, openPackage, storedCells } from './package-parts';
import { rulesBroken } from './package-rules';

const paths = readyProfiles.flatMap((profile) => readyMade.map(({ id }) => `${profile}/${id}.xlsx`));
const bytesOf = (path: string): Uint8Array => new Uint8Array(readFileSync(`sample-workbooks/${path}`));

/** Every cached result of a formula and of the cells that it spills into, by sheet and address. */
function cached(bytes: Uint8Array): Map<string, { value: string | undefined; type: string | undefined }> {
  const file = openPackage(bytes);
  return new Map(
    file.sheets.flatMap(({ name, part }) => {
      const cells = storedCells(file.xml(part));
      const spilled = new Set(cells.flatMap(({ ref }) => cellsOf(ref ?? '')));
      return cells
        .filter(({ address, formula }) => formula !== undefined || spilled.has(address))
        .map(({ address, value, type }) => [`${name}!${address}`, { value, type }] as const);
    }),
  );
}

/** The file with the results of all formulas and spills taken out, each spill drawn back to its first cell. */
function emptied(bytes: Uint8Array): Uint8Array {
  const files = unzipSync(bytes);
  for (const { part } of openPackage(bytes).sheets) {
    const spilled = new Set(storedCells(openPackage(bytes).xml(part)).flatMap(({ ref }) => cellsOf(ref ?? '')));
    files[part] = strToU8(
      strFromU8(files[part]!).replace(
        /<c r="([A-Z]+\d+)"([^>]*?)(?:\/>|>(.*?)<\/c>)/g,
        (cell, address: string, attributes: string, inside = '') => {
          const formula = /<f.*<\/f>/.exec(inside)?.[0];
          if (formula === undefined && !spilled.has(address)) return cell;
          const kept = attributes.replace(/ t="\w+"/, '');
          const first = formula?.replace(/ ref="([A-Z]+\d+):[A-Z]+\d+"/, ' ref="$1"') ?? '';
          return `<c r="${address}"${kept}>${first}</c>`;
        },
      ),
    );
  }
  return zipSync(files);
}

describe.each(paths)('%s', (path) => {
  it('is the same again, byte for byte', async () => {
    const [file] = await generateWorkbooks(await sourceFunctions(), (name) => name === path);
    expect(Buffer.compare(Buffer.from(file!.bytes), Buffer.from(bytesOf(path)))).toBe(0);
  });

  it('gets every result again when results are removed and calculated from the file', async () => {
    const before = cached(bytesOf(path));
    const { bytes, kept, formulas } = await recalculateFile(await sourceFunctions(), emptied(bytesOf(path)));
    expect(kept).toEqual([]);
    expect(formulas).toBeGreaterThan(20);
    const after = cached(bytes);
    expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
    for (const [cell, { value, type }] of before) {
      const again = after.get(cell)!;
      expect([cell, again.type]).toEqual([cell, type]);
      if (type === undefined)
        expect(Math.abs(Number(again.value) - Number(value))).toBeLessThanOrEqual(1e-9 * Math.abs(Number(value)));
      else expect([cell, again.value]).toEqual([cell, value]);
    }
  });

  it('breaks no rule of the file format', () => {
    expect(rulesBroken(bytesOf(path))).toEqual([]);
  });

  it('shows no error anywhere', () => {
    const errors = [...cached(bytesOf(path))].filter(([, { type }]) => type === 'e');
    expect(errors).toEqual([]);
  });

  it('lets at most three calls wait for each other', () => {
    const { depth, cell } = deepestChain(bytesOf(path));
    expect(depth, cell).toBeLessThanOrEqual(3);
    expect(depth).toBeGreaterThan(0);
  });

  it('names the units cells, and warns on every sheet while they differ', () => {
    const file = openPackage(bytesOf(path));
    const names = all(file.xml('xl/workbook.xml'), 'definedName').map(({ attributes, text }) => [
      attributes.name,
      text,
    ]);
    expect(names).toContainEqual(['SiltUnits', "'Silt units'!$B$4"]);
    expect(names).toContainEqual(['SiltTypedIn', "'Silt units'!$B$5"]);
    for (const { name, part } of file.sheets) {
      const warns = storedCells(file.xml(part)).some(({ formula }) => formula?.startsWith('IF(SiltUnits=SiltTypedIn,'));
      expect([name, warns]).toEqual([name, true]);
    }
  });

  it('says in five lines what to type where, freezes headings, prints with areas and page numbers', () => {
    const file = openPackage(bytesOf(path));
    expect(file.sheets[0]!.name).toBe('Start');
    const numbers = storedCells(file.xml(file.sheets[0]!.part)).filter(({ address }) => /^A[5-9]$/.test(address));
    expect(numbers.map(({ value }) => value)).toEqual(['1', '2', '3', '4', '5']);
    const areas = all(file.xml('xl/workbook.xml'), 'definedName').filter(
      ({ attributes }) => attributes.name === '_xlnm.Print_Area',
    );
    expect(areas.length).toBe(file.sheets.length);
    const paper = path.startsWith('US/') ? '1' : '9';
    for (const { part } of file.sheets) expect(all(file.xml(part), 'pageSetup')[0]!.attributes.paperSize).toBe(paper);
    expect(file.sheets.some(({ part }) => all(file.xml(part), 'pane').length > 0)).toBe(true);
  });
});

it('accepts dates from 2000 on in the log, in any time zone', () => {
  const file = openPackage(bytesOf('metric/harvest-book.xlsx'));
  const rules = all(file.xml(file.sheets.find(({ name }) => name === 'Pulls')!.part), 'dataValidation');
  const dates = rules.find(({ attributes }) => attributes.type === 'date')!;
  // 2000-01-01 is day 36526 of a spreadsheet.
  expect(dates.children.map(({ text }) => text)).toEqual(['36526']);
});

it('warns on the sheet when a file of one profile is read in the other', async () => {
  const files = unzipSync(bytesOf('US/cone-cut-plan.xlsx'));
  const texts = strFromU8(files['xl/sharedStrings.xml']!);
  const units = openPackage(bytesOf('US/cone-cut-plan.xlsx')).sheets.find(({ name }) => name === 'Silt units')!.part;
  const xml = strFromU8(files[units]!);
  const index = /<c r="B4"[^>]*><v>(\d+)<\/v>/.exec(xml)![1]!;
  expect(texts).toContain('<t>US</t>');
  files[units] = strToU8(xml.replace(/(<c r="B4"[^>]*?) t="s"><v>\d+<\/v>/, '$1 t="inlineStr"><is><t>metric</t></is>'));
  expect(index).toMatch(/^\d+$/);
  const { bytes } = await recalculateFile(await sourceFunctions(), zipSync(files));
  const warnings = [...cached(bytes)].filter(([cell]) => cell.endsWith('!A2')).map(([, { value }]) => value);
  expect(warnings.length).toBe(8);
  for (const warning of warnings)
    expect(warning).toMatch(/^The numbers here were typed in US but are now read as metric/);
});
