import { describe, expect, test } from 'vitest';
import { HostError } from '../../../src/hosts/sheet-host';
import { changeUnits } from '../../../src/task-pane/units/change-units';
import { putTypedIn, putUnitCells } from '../../../src/task-pane/units/unit-cells';
import { readWorkbookUnits, unitsCaution } from '../../../src/task-pane/workbook-units';
import { readProfile } from '../../../src/units/profile';
import { MemoryHost } from '../memory-host';

const us = readProfile('US, flow L/min');
const named = async (host: MemoryHost) =>
  Object.fromEntries((await host.names()).map(({ name, refersTo }) => [name, refersTo]));

describe('putting units into a workbook', () => {
  test('writes the profile with its exceptions into both cells', async () => {
    const host = new MemoryHost();
    await putUnitCells(host, us);
    const now = await readWorkbookUnits(host);
    expect([now.units?.text, now.typedIn?.text]).toEqual(['US, flow L/min', 'US, flow L/min']);
    expect(unitsCaution(now)).toBeUndefined();
  });

  test('names the cells again if only the names are gone', async () => {
    const host = new MemoryHost();
    await putUnitCells(host, us);
    for (const name of ['SiltUnits', 'SiltTypedIn']) await host.removeName(name);
    await putUnitCells(host, readProfile('metric'));
    expect(await host.sheets()).toEqual(['Sheet1', 'Silt units']);
    expect((await readWorkbookUnits(host)).units?.text).toBe('metric');
  });

  test('leaves nothing behind if it fails halfway', async () => {
    for (const failing of ['setName', 'insert'] as const) {
      const host = new MemoryHost({ Sheet1: { A1: 7 } }, { SiltTypedIn: 'Sheet1!$A$1' });
      const before = await named(host);
      host[failing] = async () => {
        throw new HostError('protected', 'The workbook is protected.');
      };
      await expect(putUnitCells(host, us)).rejects.toThrow('The workbook is protected.');
      expect(await host.sheets()).toEqual(['Sheet1']);
      expect(await named(host)).toEqual(before);
    }
  });

  test('adds the second cell to a workbook with only SiltUnits, in a blank cell', async () => {
    const host = new MemoryHost({ Setup: { B2: 'US', B3: 'mine' } }, { SiltUnits: 'Setup!$B$2' });
    const { units } = await readWorkbookUnits(host);
    await putTypedIn(host, units!, 'US');
    expect((await named(host)).SiltTypedIn).toBe("'Setup'!$B$4");
    expect(host.at('Setup', 'B4')).toBe('US');
  });

  test('does not overwrite a formula that gives the units', async () => {
    const host = new MemoryHost(
      { Setup: { B2: '=C2', B3: 'US' } },
      { SiltUnits: 'Setup!$B$2', SiltTypedIn: 'Setup!$B$3' },
    );
    host.give('Setup', 'B2', 'US');
    const now = await readWorkbookUnits(host);
    await expect(changeUnits(host, now, { units: 'metric', typedIn: 'metric', conversions: [] })).rejects.toThrow(
      'holds a formula',
    );
    expect([host.at('Setup', 'B2'), host.at('Setup', 'B3'), host.steps.length]).toEqual(['=C2', 'US', 0]);
  });
});

describe('the caution about units', () => {
  const caution = async (units: string | number, typedIn: string) => {
    const host = new MemoryHost(
      { 'Silt units': { B4: units, B5: typedIn } },
      { siltunits: "='Silt units'!$B$4", SiltTypedIn: "'Silt units'!$B$5" },
    );
    return unitsCaution(await readWorkbookUnits(host));
  };

  test('is shown while numbers are read in other units than they were typed in', async () => {
    expect(await caution('metric', 'US')).toContain('typed in US but are read as metric');
    expect(await caution('US', 'US, flow L/min')).toContain('convert them');
    expect(await caution('us', ' US')).toBeUndefined();
  });

  test('is shown if a cell holds no profile', async () => {
    expect(await caution(22.5, 'US')).toContain('22.5 is not a profile');
    expect(await caution('US', 'imperial')).toContain('SiltTypedIn');
  });
});
