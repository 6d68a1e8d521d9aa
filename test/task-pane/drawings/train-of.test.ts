import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { scenarioFigures } from '../../../src/task-pane/drawings/scenario-figures';
import { trainOf } from '../../../src/task-pane/drawings/train-of';

const farm = {
  'fish count': 100,
  'fish mass': 250,
  'feeding rate': 0.01,
  'tank volume': 2000,
  'pump flow': 40,
  drums: 2,
  'drum diameter': 570,
  settler: 0.4,
  pads: 6,
  'pad area': 0.5,
  'pad capture': 0.6,
  'solids share': 0.25,
  protein: 0.32,
  'media volume': 100,
  'bed area': 12,
} as const;

function train(changes: Readonly<Record<string, string | number>> = {}) {
  const table = Object.entries({ ...farm, ...changes }).map(([name, value]) => [name, value]);
  return trainOf(scenarioFigures(table, 0, 'metric', functionLibrary), 'Farm: train');
}

/** Stages by name. */
function stagesOf(...given: Parameters<typeof train>) {
  return new Map(train(...given).stages.map((stage) => [stage.name, stage]));
}

describe('the train of a scenario', () => {
  test('has its stages in the order of the water', () => {
    expect(train().stages.map(({ name }) => name)).toEqual([
      'Fish tank',
      'Settling drums',
      'Pads',
      'Biofilter',
      'Plant beds',
      'Pump',
    ]);
  });

  // By hand: feed 100 × 0.25 kg × 1 % = 0.25 kg/d, a quarter of it solids, 0.0625; the drums take 40 %, 0.025, and pass
  // on 0.0375; the pads hold 60 % of that, 0.0225.
  test('carries solids on, less what each stage takes out', () => {
    const stages = stagesOf();
    expect(stages.get('Fish tank')!.solids).toBe('0.0625 kg/d');
    expect(stages.get('Settling drums')).toMatchObject({ taken: 'solids pulled 0.025 kg/d', solids: '0.0375 kg/d' });
    expect(stages.get('Pads')).toMatchObject({ taken: 'solids held 0.0225 kg/d', solids: '0.015 kg/d' });
    expect(stages.get('Plant beds')!.solids).toBeUndefined();
  });

  // Ammonia nitrogen is feed × protein × 0.092 (Timmons and Ebeling, Recirculating Aquaculture): 0.25 × 0.32 × 0.092.
  test('carries nitrogen on, as ammonia up to the biofilter and as nitrate after it', () => {
    const stages = stagesOf();
    expect(stages.get('Pads')!.nitrogen).toBe('0.00736 kg/d as ammonia');
    expect(stages.get('Biofilter')!.nitrogen).toBe('0.00736 kg/d as nitrate');
  });

  test('shows the flow of the pump, or the flow needed where none is given', () => {
    expect(stagesOf().get('Fish tank')!.flow).toBe('40 L/min');
    const without = train({ 'pump flow': '' });
    expect(without.stages[0]!.flow).toMatch(/^\d[\d.]* L\/min$/);
    expect(without.notes).toContain('Flow is the flow needed; no pump flow is given.');
  });

  test('leaves out what the farm does not have', () => {
    const names = train({ drums: 'none', pads: 'none', 'media volume': 'none' }).stages.map(({ name }) => name);
    expect(names).toEqual(['Fish tank', 'Plant beds', 'Pump']);
  });

  test.each([
    ['Fish tank', { 'tank volume': 100 }],
    ['Biofilter', { 'media volume': 5 }],
    ['Plant beds', { 'bed area': 0.5 }],
    ['Pump', { 'pump flow': 1 }],
  ])('marks %s where it is the first limit, and no other', (name, changes) => {
    const limiting = train(changes).stages.filter((stage) => stage.limiting);
    expect(limiting.map((stage) => stage.name)).toEqual([name]);
  });
});
