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

  // By hand: feed 100 × 0.25 kg × 1 % = 0.25 kg/d, a quarter of it solids, 62.5 g. With a settleable share of 45 %,
  // 28.125 g
  // settle: each pass the drums take 0.4 / 0.45 of that, pads 0.6 of the rest and of the other 34.375 g; beds and
  // decay none.
  const settled = 0.4 / 0.45;
  const cleared = 1 - (1 - settled) * 0.4;
  const still = { 'bed capture': 'none', 'solids decay': 'none' };

  test('removes at each stage what it removes at steady state', () => {
    const stages = stagesOf(still);
    const drums = (0.028125 * settled) / cleared;
    expect(stages.get('Settling drums')!.taken).toBe(`solids pulled ${Number(drums.toPrecision(3))} kg/d`);
    expect(stages.get('Pads')!.taken).toBe(`solids held ${Number((0.0625 - drums).toPrecision(3))} kg/d`);
  });

  // 40 L/min are 57.6 m3 a day.
  test('shows what is in the water between the stages', () => {
    const stages = stagesOf(still);
    const tank = 28.125 / 57.6 / cleared + 34.375 / 57.6 / 0.6;
    expect(stages.get('Fish tank')!.solids).toBe(`${Number(tank.toPrecision(3))} mg/L`);
    expect(Number.parseFloat(stages.get('Pads')!.solids!)).toBeCloseTo(tank - 62.5 / 57.6, 2);
    expect(stages.get('Biofilter')!.solids).toBe(stages.get('Pads')!.solids);
  });

  test('turns 35 % of the ammonia into nitrate at the biofilter in each pass', () => {
    const stages = stagesOf();
    const [before, after] = ['Pads', 'Biofilter'].map((name) => Number.parseFloat(stages.get(name)!.ammonia!));
    expect(after! / before!).toBeCloseTo(0.65, 2);
    expect(stages.get('Biofilter')!.nitrate).toMatch(/mg\/L$/);
  });

  test('says that solids build up if nothing removes the fine ones', () => {
    const stages = stagesOf({ ...still, pads: 'none' });
    expect(stages.get('Fish tank')!.solids).toBe('without limit');
  });

  test('shows the flow of the pump, or the flow needed if none is given', () => {
    expect(stagesOf().get('Fish tank')!.flow).toBe('40 L/min');
    const without = train({ 'pump flow': '' });
    expect(without.stages[0]!.flow).toMatch(/^\d[\d.]* L\/min$/);
    expect(without.notes).toContain('The flow shown is the flow needed, because no pump flow is given.');
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
