import { Refusal } from '../../formulas/refusal';
import { convert } from '../../units/convert';
import { kinds } from '../../units/kinds';
import { readQuantity } from '../../units/quantity';
import { Unreadable } from '../../units/unreadable';
import { alsoRead } from '../../units/wording';
import { define } from '../define';
import { anyCell, textReader } from '../readers';

const definitions =
  'International inch and pound (1959), US gallon of 231 cubic inches, SI Brochure: exact definitions';

/** Names the argument in the message about text that cannot be read. */
function withArgumentName<T>(argument: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof Unreadable) throw new Refusal(argument, error.message);
    throw error;
  }
}

export const unitRows = [
  define({
    name: 'UNIT.LABEL',
    summary: 'The unit of a kind of quantity in a profile, for column headings.',
    arguments: { kind: { choice: kinds, meaning: 'kind of quantity, such as dimension or flow' } },
    result: { text: true },
    compute: ({ kind }, profile) => profile.units[kind].symbol,
    sources: [definitions],
    example: { formula: '=SILT.UNIT.LABEL("US","flow")', gives: 'gpm' },
    unpublished: 'Which unit each profile shows is this project’s own choice.',
  }),
  define({
    name: 'UNIT.READ',
    summary: 'A quantity as a number in the profile’s unit; text with a unit keeps its own unit.',
    arguments: {
      kind: { choice: kinds, meaning: 'kind of quantity, such as dimension or flow' },
      quantity: { ...anyCell('a number or text with a unit'), meaning: 'a number, or text such as 3 1/4 in or 55 gal' },
    },
    result: { quantity: true },
    compute: ({ kind, quantity }, profile) => ({
      kind,
      si: withArgumentName('quantity', () => readQuantity(profile, kind, quantity)),
    }),
    sources: [definitions],
    example: { formula: '=SILT.UNIT.READ("metric","dimension","3 1/4 in")', gives: '82.55' },
  }),
  define({
    name: 'UNIT.CONVERT',
    summary: 'A value in another unit of the same kind.',
    units: false,
    arguments: {
      value: { ...anyCell('a number'), meaning: 'number to convert' },
      from: { ...textReader('a unit such as gal'), meaning: 'unit of the value, such as gal' },
      to: { ...textReader('a unit such as L'), meaning: 'unit to convert to, such as L' },
    },
    result: { scalar: 'number' },
    compute: ({ value, from, to }) => withArgumentName('value', () => convert(value, from, to)),
    sources: [definitions],
    example: { formula: '=SILT.UNIT.CONVERT(55,"gal","L")', gives: '208.198' },
  }),
  define({
    name: 'UNIT.LIST',
    summary: 'Every kind of quantity, its unit in the profile and the other units you can type.',
    arguments: {},
    result: { rows: { kind: { text: true }, unit: { text: true }, alsoRead: { text: true } } },
    compute: (_, profile) =>
      kinds.map((kind) => ({ kind, unit: profile.units[kind].symbol, alsoRead: alsoRead(profile, kind).join(', ') })),
    sources: [definitions],
    example: { formula: '=SILT.UNIT.LIST("metric",TRUE)', gives: 'one row per kind' },
    unpublished: 'A list of this project’s own kinds and units.',
  }),
];
