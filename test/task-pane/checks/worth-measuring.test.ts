import { expect, it } from 'vitest';
import { verdicts } from '../../../src/task-pane/checks/verdicts';

it('lists the three figures most worth measuring, those with the most influence on a result', () => {
  const line = (name: string, share: number) => [name, '', 0.1, 0.2, 0.3, 1, 2, share];
  const lines = [
    ['input', 'unit', 'low', 'plan', 'high', 'result at low', 'result at high', 'share of the variance'],
    line('solids share', 0.6),
    line('removal', 0.2),
    line('pad capture', 0.1),
    line('nitrification', 0.05),
    line('pad holding', 0),
    ['together', '', '', '', '', '', '', 0.05],
  ];
  const found = verdicts(['PLAN.DRIVERS'], lines);
  expect(found.map(({ row }) => row)).toEqual([1, 2, 3]);
  expect(found[0]?.sentence).toBe(
    'Worth measuring on your own farm: solids share. Alone it explains 60 % of the uncertainty of the result.',
  );
  expect(verdicts(['PLAN.DRIVERS'], [line('pad holding', 0), ['together', '', '', '', '', '', '', 0]])).toEqual([]);
});
