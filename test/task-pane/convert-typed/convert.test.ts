import { describe, expect, test } from 'vitest';
import { backwards, type CellChange, makeChanges } from '../../../src/task-pane/convert-typed/convert';
import { hostWith } from './look-in';

const change = (row: number, column: number, before: CellChange['before'], after: CellChange['after']): CellChange => ({
  spot: { sheet: 'Farm', row, column },
  before,
  after,
});

describe('changing cells', () => {
  test('is one step, with cells below each other in one write', async () => {
    const host = hostWith({ B5: 1, B6: 2, B7: '3 in', C5: '=SILT.TANK.GIRTH(SiltUnits,70)' });
    const changes = [
      change(5, 1, 2, 50.8),
      change(4, 1, 1, 25.4),
      change(4, 2, '=SILT.TANK.GIRTH(SiltUnits,70)', '=SILT.TANK.GIRTH(SiltUnits,1778)'),
    ];
    await makeChanges(host, changes);
    expect([host.at('Farm', 'B5'), host.at('Farm', 'B6'), host.at('Farm', 'B7')]).toEqual([25.4, 50.8, '3 in']);
    expect(host.at('Farm', 'C5')).toBe('=SILT.TANK.GIRTH(SiltUnits,1778)');
    expect(host.steps).toHaveLength(1);
    expect(host.steps[0]).toHaveLength(2);
    await makeChanges(host, backwards(changes));
    expect([host.at('Farm', 'B5'), host.at('Farm', 'C5')]).toEqual([1, '=SILT.TANK.GIRTH(SiltUnits,70)']);
  });

  test('is refused as a whole if one cell has changed', async () => {
    for (const now of [25.4, '1', '', '=1', { error: { code: '#N/A', message: '' } }]) {
      const host = hostWith({ B5: 1, B6: 2 });
      host.change('Farm', 'B5', now);
      await expect(makeChanges(host, [change(5, 1, 2, 50.8), change(4, 1, 1, 25.4)])).rejects.toThrow(
        'Farm!B5 has changed',
      );
      expect([host.at('Farm', 'B6'), host.steps.length]).toEqual([2, 0]);
    }
  });

  test('made twice is refused the second time', async () => {
    const host = hostWith({ B5: 1 });
    const changes = [change(4, 1, 1, 25.4)];
    await makeChanges(host, changes);
    await expect(makeChanges(host, changes)).rejects.toThrow('nothing was changed');
    expect(host.at('Farm', 'B5')).toBe(25.4);
  });

  test('allows the host to change the last digit of a number and the spelling of a formula', async () => {
    const host = hostWith({ B5: 0.1 + 0.2, C5: '=silt.x( SiltUnits, 1 )' });
    await makeChanges(host, [change(4, 1, 0.3, 1), change(4, 2, '=SILT.X(SiltUnits,1)', 2)]);
    expect(host.at('Farm', 'B5')).toBe(1);
  });
});
