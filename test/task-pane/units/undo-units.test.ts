import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { changeUnits, undoUnits } from '../../../src/task-pane/units/change-units';
import { readWorkbookUnits } from '../../../src/task-pane/workbook-units';
import { hostWith, look, noProgress } from '../convert-typed/look-in';

const girths = {
  B5: 10,
  B6: 20,
  C5: '=SILT.TANK.GIRTH(SiltUnits,B5)',
  C6: '=SILT.TANK.GIRTH(SiltUnits,B6)',
  C7: '=SILT.TANK.GIRTH(SiltUnits,B7)',
};

/** A workbook changed from inches to millimeters; 20 in was left unticked. */
async function changed() {
  const host = hostWith(girths);
  const { plain } = await look(girths, { host });
  const [first] = plain;
  const made = await changeUnits(host, await readWorkbookUnits(host), {
    units: 'metric',
    typedIn: 'metric',
    conversions: [{ spot: first!.spot, before: 10, after: 254 }],
  });
  return { host, undo: () => undoUnits(host, functionLibrary, made, noProgress) };
}

describe('undoing a change of units', () => {
  test('leaves alone what was not converted', async () => {
    const { host, undo } = await changed();
    expect(await undo()).toBe(0);
    expect([host.at('Farm', 'B5'), host.at('Farm', 'B6'), host.at('Silt units', 'B3')]).toEqual([10, 20, 'US']);
  });

  // 508 mm are 20 in, because an inch is 25.4 mm.
  test('converts a number typed since then, which would else be read as inches', async () => {
    const { host, undo } = await changed();
    host.change('Farm', 'B7', 508);
    expect(await undo()).toBe(1);
    expect(host.at('Farm', 'B7')).toBe(20);
    expect([host.at('Farm', 'B5'), host.at('Farm', 'B6')]).toEqual([10, 20]);
    expect(host.steps).toHaveLength(2);
  });

  test('converts a number typed since then inside a formula', async () => {
    const { host, undo } = await changed();
    host.change('Farm', 'C8', '=SILT.TANK.GIRTH(SiltUnits,508)');
    expect(await undo()).toBe(1);
    expect(host.at('Farm', 'C8')).toBe('=SILT.TANK.GIRTH(SiltUnits,20)');
  });

  test('is refused where it is not certain what a number typed since then becomes', async () => {
    const { host, undo } = await changed();
    host.change('Farm', 'B7', 508);
    host.change('Farm', 'D7', '=B7*2');
    await expect(undo()).rejects.toThrow('Farm!B7 was typed since then');
    expect([host.at('Farm', 'B5'), host.at('Silt units', 'B3')]).toEqual([254, 'metric']);
  });
});
