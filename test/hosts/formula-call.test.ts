import { describe, expect, it } from 'vitest';
import { callArguments } from '../../src/hosts/formula-call';

describe('the arguments of a call in a cell formula', () => {
  it.each([
    ['=SILT.CUT.PLAN(SiltUnits,B5:K7,96,48)', ['SiltUnits', 'B5:K7', '96', '48']],
    ['=silt.cut.plan("US, flow L/min",{1,2;3,4},SUM(1,2),)', ['"US, flow L/min"', '{1,2;3,4}', 'SUM(1,2)', '']],
    ["=SUM(1)+SILT.CUT.PLAN( 'a, b'!A1 , 2 )*3", ["'a, b'!A1", '2']],
    ['="SILT.CUT.PLAN(9)"&SILT.CUT.PLAN(1)', ['1']],
  ])('%s', (formula, expected) => {
    expect(callArguments(formula, 'SILT.CUT.PLAN')).toEqual(expected);
  });

  it('are undefined where the function is not called, or its brackets do not close', () => {
    expect(callArguments('=MY.SILT.CUT.PLAN(1)', 'SILT.CUT.PLAN')).toBeUndefined();
    expect(callArguments('=SILT.CUT.PLANS(1)', 'SILT.CUT.PLAN')).toBeUndefined();
    expect(callArguments('=SILT.CUT.PLAN(1', 'SILT.CUT.PLAN')).toBeUndefined();
  });
});
