import { describe, expect, it } from 'vitest';
import type { HostFunction } from '../../src/hosts/univer/function-set';
import { typingHelp, typingPlace } from '../../src/workbench/typing-help';

const example: HostFunction = {
  fullName: 'SILT.CONE.ANGLE',
  metadata: {
    id: 'CONE.ANGLE',
    name: 'CONE.ANGLE',
    description: 'The angle.',
    parameters: [
      { name: 'units', description: 'profile' },
      { name: 'top', description: 'top width', optional: true },
    ],
  },
  implementation: () => '',
};
const functions = new Map([[example.fullName, example]]);

describe('help while a formula is typed', () => {
  it.each([
    ['=SILT.CONE.ANGLE(', 'SILT.CONE.ANGLE', 0],
    ['=silt.cone.angle("US, flow L/min",', 'SILT.CONE.ANGLE', 1],
    ['=SILT.CONE.ANGLE({1,2;3,4},SUM(1,2),', 'SILT.CONE.ANGLE', 2],
    ["=SILT.CONE.ANGLE('a, sheet'!A1,", 'SILT.CONE.ANGLE', 1],
    ['=SILT.CONE.ANGLE("US",(1+2', 'SILT.CONE.ANGLE', 1],
    ['=SUM(SILT.CONE.ANGLE("US",', 'SILT.CONE.ANGLE', 1],
  ])('%s stands at an argument', (typed, functionName, argument) => {
    expect(typingPlace(typed)).toEqual({ functionName, argument });
  });

  it.each(['', 'text(', '=1+2', '=SUM(1,2)', '=("a('])('%s is at no argument', (typed) => {
    expect(typingPlace(typed)).toBeUndefined();
  });

  it('says what the argument means', () => {
    expect(typingHelp('=SILT.CONE.ANGLE(', functions)).toBe('units (1 of 2): profile');
    expect(typingHelp('=SILT.CONE.ANGLE("US",', functions)).toBe('top (2 of 2, optional): top width');
    expect(typingHelp('=SILT.CONE.ANGLE("US",1,', functions)).toBe('SILT.CONE.ANGLE: The angle.');
    expect(typingHelp('=SUM(', functions)).toBe('');
  });
});
