import { describe, expect, test } from 'vitest';
import { choiceOf, choosableKinds, textOf, unitsToChoose } from '../../../src/task-pane/units/profile-text';
import { sameUnits } from '../../../src/task-pane/workbook-units';
import { readProfile } from '../../../src/units/profile';

describe('a chosen profile', () => {
  test('is read back from its text, for every unit of every kind that is offered', () => {
    for (const name of ['metric', 'US'] as const) {
      for (const kind of choosableKinds) {
        for (const symbol of unitsToChoose(kind, name, undefined)) {
          const text = textOf({ name, exceptions: new Map([[kind, symbol]]) });
          const again = textOf(choiceOf(readProfile(text)));
          expect(sameUnits(readProfile(again), readProfile(text)), `${kind} ${symbol}`).toBe(true);
          expect(again.startsWith(name)).toBe(true);
        }
      }
    }
  });

  test('keeps exceptions that are typed in units that the list does not offer', () => {
    const choice = choiceOf(readProfile('us,  FLOW = L/s; mass g'));
    expect(textOf(choice)).toBe('US, mass g, flow L/s');
    expect(unitsToChoose('flow', 'US', 'L/s')).toContain('L/s');
  });

  test('does not name units that the profile has anyway', () => {
    expect(textOf({ name: 'US', exceptions: new Map([['flow', 'gpm']]) })).toBe('US');
    expect(textOf({ name: 'metric', exceptions: new Map([['flow', 'gpm']]) })).toBe('metric, flow gpm');
  });

  test('lets masses per day and per hour follow the unit of mass', () => {
    expect(choosableKinds).not.toContain('daily');
    expect(readProfile(textOf({ name: 'metric', exceptions: new Map([['mass', 'g']]) })).units.daily.symbol).toBe(
      'g/d',
    );
  });
});
