import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import type { Columns } from '../../src/catalogue/argument';
import { argumentNames, takesHeadings } from '../../src/functions/adapter';
import { functionsMetadata, isOptional } from '../../src/functions/metadata';
import { type Kind, kindRows } from '../../src/units/kinds';

const dimensioned = (kind: Kind) => kindRows[kind].metric !== '' && kind !== 'days' && kind !== 'hours';
const kindsOf = (columns: Columns) => Object.values(columns).flatMap((one) => ('kind' in one ? [one.kind] : []));

describe('every function in the catalogue', () => {
  it.each(catalogue.map((row) => row.name))('SILT.%s has a name that Excel takes', (name) => {
    expect(name).toMatch(/^[A-Z][A-Z0-9]*\.[A-Z0-9]+$/);
    expect(`SILT.${name}`.length).toBeLessThanOrEqual(128);
  });

  it('has a name of its own once dots have become underscores', () => {
    const stored = catalogue.map((row) => `SILT.${row.name}`.replaceAll('.', '_').toUpperCase());
    expect(new Set(stored).size).toBe(stored.length);
  });

  it('asks for a profile wherever an argument or its result has a unit', () => {
    for (const row of catalogue) {
      if (row.units !== false) continue;
      const kinds = Object.values(row.arguments).flatMap((spec) => ('kind' in spec && spec.kind ? [spec.kind] : []));
      if ('scalar' in row.result) kinds.push(row.result.scalar);
      if ('row' in row.result) kinds.push(...kindsOf(row.result.row));
      if ('rows' in row.result) kinds.push(...kindsOf(row.result.rows));
      expect(kinds.filter(dimensioned), row.name).toEqual([]);
    }
  });

  it('keeps required arguments before optional ones', () => {
    for (const row of catalogue) {
      const optional = Object.values(row.arguments).map(isOptional);
      expect(optional.lastIndexOf(false), row.name).toBeLessThan(
        optional.includes(true) ? optional.indexOf(true) : Number.POSITIVE_INFINITY,
      );
    }
  });

  it('names its sources and gives an example that calls it', () => {
    for (const row of catalogue) {
      expect(row.sources.length, row.name).toBeGreaterThan(0);
      expect(row.example.formula, row.name).toContain(`SILT.${row.name}(`);
      expect(row.example.gives, row.name).not.toBe('');
    }
  });

  it('has all the texts that `npm run new` leaves to be written', () => {
    const unwritten = catalogue.filter((row) => JSON.stringify(row).toLowerCase().includes('to be written'));
    expect(
      unwritten.map(({ name }) => name),
      'fill in each text “to be written” of the row',
    ).toEqual([]);
  });

  it('has names of arguments that Excel shows whole', () => {
    for (const row of catalogue) {
      for (const name of argumentNames(row)) expect(name, row.name).toMatch(/^[a-z][A-Za-z0-9]{1,30}$/);
      expect(argumentNames(row).includes('headings'), row.name).toBe(takesHeadings(row));
    }
  });
});

describe('the metadata for Excel', () => {
  const metadata = functionsMetadata('https://siltstead.example');

  it('stays within Excel’s lengths', () => {
    for (const one of metadata.functions) {
      expect(one.description.length, one.name).toBeLessThanOrEqual(255);
      for (const parameter of one.parameters) expect(parameter.description.length, one.name).toBeLessThanOrEqual(255);
    }
  });

  it('takes values of any type as blocks, words from a list as text, and gives blocks', () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    const lists = new Set(metadata.enums.map((one) => one.id));
    for (const { parameters, result } of metadata.functions) {
      expect(result).toEqual({ type: 'any', dimensionality: 'matrix' });
      for (const one of parameters) {
        expect(one.customEnumId === undefined ? `${one.type} ${one.dimensionality}` : 'string scalar').toBe(
          one.customEnumId === undefined ? 'any matrix' : `${one.type} ${one.dimensionality}`,
        );
        if (one.customEnumId) expect(lists).toContain(one.customEnumId);
      }
    }
  });

  it('is small enough to load at once', () => {
    // Excel on Windows takes no more than a megabyte; an eighth of that loads without being noticed.
    expect(JSON.stringify(metadata).length).toBeLessThanOrEqual(125_000);
  });

  it('points every function at its own reference page', () => {
    const pages = metadata.functions.map((one) => one.helpUrl);
    expect(new Set(pages).size).toBe(pages.length);
    expect(pages.every((page) => page.startsWith('https://siltstead.example/reference/'))).toBe(true);
  });
});
