import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert';
import { dateOfSerial, serialOfDate } from '../../src/units/date';
import { isUnitless, listedUnits } from '../../src/units/kind-units';
import { kinds } from '../../src/units/kinds';
import { readProfile } from '../../src/units/profile';
import { readQuantity, toProfile, wordQuantity } from '../../src/units/quantity';
import { Unreadable } from '../../src/units/unreadable';

const profiles = ['metric', 'US', 'US, flow L/min, temperature C, mass g', 'metric, dimension in, angle rad'].map(
  readProfile,
);
const anyProfile = fc.constantFrom(...profiles);
const measured = kinds.filter((kind) => !isUnitless(kind));
const anyMeasured = fc.constantFrom(...measured);
const anyUnit = anyMeasured.chain((kind) =>
  fc.tuple(fc.constant(kind), fc.constantFrom(...listedUnits(kind)), fc.constantFrom(...listedUnits(kind))),
);

describe('reading and giving quantities', () => {
  it('brings a bare number back', () => {
    fc.assert(
      fc.property(anyProfile, anyMeasured, fc.double({ min: 25, max: 98, noNaN: true }), (profile, kind, bare) => {
        const back = toProfile(profile, kind, readQuantity(profile, kind, bare, 1e9));
        expect(Math.abs(back - bare)).toBeLessThan(1e-13 * (bare + 600));
      }),
    );
  });

  it('brings a number of three decimals back exactly', () => {
    fc.assert(
      fc.property(anyProfile, anyMeasured, fc.integer({ min: 25000, max: 98000 }), (profile, kind, thousandths) => {
        const bare = thousandths / 1000;
        expect(toProfile(profile, kind, readQuantity(profile, kind, bare, 1e9))).toBe(bare);
      }),
    );
  });

  it('takes text with a unit for the same quantity whatever the profile', () => {
    fc.assert(
      fc.property(anyUnit, fc.double({ min: -1e4, max: 1e4, noNaN: true }), ([kind, unit], value) => {
        const text = `${value} ${unit}`;
        expect(new Set(profiles.map((profile) => readQuantity(profile, kind, text))).size).toBe(1);
      }),
    );
  });

  it('reads a number with the profile’s unit like the bare number', () => {
    fc.assert(
      fc.property(anyProfile, anyMeasured, fc.double({ min: 25, max: 98, noNaN: true }), (profile, kind, bare) => {
        const written = readQuantity(profile, kind, `${bare} ${profile.units[kind].symbol}`);
        expect(readQuantity(profile, kind, bare, 1e9) / written).toBeCloseTo(1, 13);
      }),
    );
  });

  it('reads its own texts', () => {
    fc.assert(
      fc.property(anyProfile, anyMeasured, fc.double({ min: 26, max: 98, noNaN: true }), (profile, kind, bare) => {
        const si = readQuantity(profile, kind, bare, 1e9);
        expect(readQuantity(profile, kind, wordQuantity(profile, kind, si)) / si).toBeCloseTo(1, 3);
      }),
    );
  });

  it('reads mixed numbers as their sum', () => {
    const parts = fc
      .tuple(fc.nat(99), fc.integer({ min: 2, max: 64 }))
      .chain(([whole, under]) =>
        fc.tuple(fc.constant(whole), fc.integer({ min: 1, max: under - 1 }), fc.constant(under)),
      );
    fc.assert(
      fc.property(
        parts,
        fc.constantFrom(' ', '-'),
        fc.constantFrom(' in', '"', 'in', ' inches'),
        ([whole, over, under], between, unit) => {
          const read = readQuantity(profiles[0]!, 'dimension', `${whole}${between}${over}/${under}${unit}`);
          expect(read).toBeCloseTo((whole + over / under) * 0.0254, 14);
        },
      ),
    );
  });

  it('reads thousands with and without separators alike', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e9 }), (value) => {
        expect(readQuantity(profiles[0]!, 'number', value.toLocaleString('en-US'))).toBe(value);
      }),
    );
  });

  it('gives for any text a finite number or an advice', () => {
    const pieces = fc.constantFrom(
      '1',
      '22',
      ' ',
      '.',
      ',',
      '-',
      '/',
      '1/2',
      '½',
      'in',
      "'",
      '"',
      'ft',
      'gal',
      '²',
      'e',
      '%',
      '°',
      'F',
      'per',
      'SG',
      '$',
      'as N',
      'CaCO3',
      '−',
      '(',
      '·',
      'm',
      'K',
    );
    const text = fc.oneof(
      fc.string({ maxLength: 30, unit: 'grapheme' }),
      fc.array(pieces, { maxLength: 9 }).map((each) => each.join('')),
    );
    fc.assert(
      fc.property(anyProfile, fc.constantFrom(...kinds), text, (profile, kind, value) => {
        try {
          expect(Number.isFinite(readQuantity(profile, kind, value))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(Unreadable);
          expect((error as Error).message).toMatch(/give|write/);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('gives for any number a finite one or an advice', () => {
    fc.assert(
      fc.property(anyProfile, fc.constantFrom(...kinds), fc.double(), (profile, kind, value) => {
        try {
          expect(Number.isFinite(readQuantity(profile, kind, value))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(Unreadable);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('gives for any profile text a profile or an advice', () => {
    const pieces = fc.constantFrom(
      'US',
      'metric',
      ',',
      ' ',
      'flow',
      'L/min',
      'mass',
      'kg',
      'daily',
      'g/d',
      'air flow',
      '=',
      'share',
      'price of mass',
      '/',
      'temperature',
      'C',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 9 }), (each) => {
        try {
          const { units } = readProfile(each.join(''));
          for (const kind of kinds) expect(units[kind].scale).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(Unreadable);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('converting', () => {
  it('there and back gives the same number', () => {
    fc.assert(
      fc.property(anyUnit, fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([, from, to], value) => {
        expect(Math.abs(convert(convert(value, from, to), to, from) - value)).toBeLessThan(
          1e-12 * (Math.abs(value) + 1000),
        );
      }),
    );
  });

  it('agrees with reading in the other unit', () => {
    fc.assert(
      fc.property(anyUnit, fc.double({ min: 0, max: 1e4, noNaN: true }), ([kind, from, to], value) => {
        const direct = readQuantity(profiles[0]!, kind, `${value} ${from}`);
        const through = readQuantity(profiles[0]!, kind, `${convert(value, from, to)} ${to}`);
        expect(Math.abs(through - direct)).toBeLessThan(1e-12 * (Math.abs(direct) + 1));
      }),
    );
  });
});

describe('dates', () => {
  it('come back from their serial numbers', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2958465 }), (serial) => {
        if (serial !== 60) expect(serialOfDate(dateOfSerial(serial))).toBe(serial);
      }),
    );
  });
});
