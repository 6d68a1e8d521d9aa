/**
 * What the bench measures is the function's own example: with its figures as numbers it gives what it gives as text.
 */
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../src/catalogue/all';
import { readCall } from '../../../src/command-line/read-call';
import { adapted } from '../../../src/tools/bench/bench-calls';
import { argumentsOf, numbersOfExample } from '../../../src/tools/bench/bench-speed';

describe('the speed of every function', () => {
  it.each(catalogue.map((row) => [row.name, row] as const))('is that of its example: %s', (name, row) => {
    const asText = adapted(name)(...argumentsOf(readCall(row.example.formula)));
    const asNumbers = adapted(name)(...numbersOfExample(row));
    expect(digits(asNumbers)).toEqual(digits(asText));
  });
});

/** Numbers to nine digits, as text and the number of a profile may differ in the last of sixteen. */
function digits(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(digits);
  return typeof value === 'number' ? Number(value.toPrecision(9)) : value;
}
