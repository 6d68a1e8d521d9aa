import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { coefficients } from '../../src/catalogue/coefficients/all';
import { define } from '../../src/catalogue/define';
import { argumentNames } from '../../src/functions/adapter';
import { figuresPage } from '../../src/manual/figures-page';
import { referenceIndex, referencePage } from '../../src/manual/reference-page';

/** A page as a tree; throws where its markup is not well formed. */
function tree(page: string) {
  const closed = page.replace(/<(meta|link)([^>]*)>/g, '<$1$2/>').replace('<!doctype html>', '');
  const onError = (_: string, message: string) => {
    throw new Error(message);
  };
  return new DOMParser({ onError }).parseFromString(closed, 'text/xml');
}

describe('reference pages', () => {
  it.each(catalogue.map((row) => ({ name: row.name, row })))(
    'SILT.$name has every argument, its formula or result, a source and an example',
    ({ row }) => {
      const page = referencePage(row);
      const text = tree(page).documentElement?.textContent ?? '';
      for (const name of argumentNames(row)) expect(text).toContain(name);
      for (const source of row.sources) expect(text).toContain(source.replaceAll('`', ''));
      expect(text).toContain(row.example.formula);
    },
  );

  it('never reads words as markup', () => {
    const row = define({
      name: 'TEST.PAGE',
      summary: '<script>alert(1)</script>',
      arguments: { size: { kind: 'particle', meaning: '"quoted" & <b>bold</b>' } },
      result: { scalar: 'number' },
      compute: () => 1,
      sources: ['<img src=x>'],
      example: { formula: '=SILT.TEST.PAGE("US",1)', gives: '1' },
    });
    const page = referencePage(row);
    expect(page.slice(page.indexOf('<main>'))).not.toMatch(/<(script|b|img)\b/);
    expect(page).toContain('&lt;script&gt;');
  });

  it('lists every function once in the index', () => {
    const index = referenceIndex(catalogue);
    for (const row of catalogue) expect(index.split(`>SILT.${row.name}<`).length).toBe(2);
  });

  it('says what a plan does not know, wherever one is read', () => {
    const textOf = (name: string) => referencePage(catalogue.find((row) => row.name === name)!);
    for (const name of ['PLAN.COMPARE', 'PLAN.LIMIT', 'PLAN.BALANCE'])
      for (const words of [
        'solids share',
        'how fast fine solids decay',
        'gravel beds',
        'leaves out nitrite',
        'alkalinity that new water brings',
        'well mixed',
      ])
        expect(textOf(name), name).toContain(words);
    for (const name of ['PLAN.RANGE', 'PLAN.DRIVERS'])
      expect(textOf(name)).toContain('what the model itself leaves out');
  });

  it('says of no function both that published figures check it and that none does', () => {
    for (const row of catalogue) {
      const text = tree(referencePage(row)).documentElement?.textContent ?? '';
      const none = text.includes('No published figure checks this function');
      expect(none && text.includes('that check this function:'), row.name).toBe(false);
      if (row.unpublished) expect(text).toContain(row.unpublished);
    }
  });

  it('names the unit of an argument once, with bounds or without', () => {
    const text = catalogue.map((row) => tree(referencePage(row)).documentElement?.textContent).join(' ');
    expect(text).toContain('mass: a mass, in kg (metric) or lb (US)');
    expect(text).not.toMatch(/ in, in /);
  });

  it('takes the flow of one inlet for its velocity, and that of the bank where drums are counted', () => {
    const settlers = catalogue.filter(({ name }) => name.startsWith('SETTLE.') && !name.endsWith('.CAPTURE'));
    for (const { name, arguments: given } of settlers) {
      if (!given.flow) continue;
      const isOfBank = given.flow.meaning === 'flow through the bank';
      expect(isOfBank, name).toBe('count' in given || name === 'SETTLE.DRUMS');
    }
  });

  it('speaks of a named species only where one can be named', () => {
    for (const row of catalogue) {
      if (row.notes?.some((note) => note.includes('named species'))) expect(row.arguments).toHaveProperty('species');
    }
  });

  it('shows every coefficient with its range, source, meaning and how it is known', () => {
    const text = tree(figuresPage()).documentElement?.textContent ?? '';
    for (const one of coefficients) {
      for (const part of [one.key, one.source, one.meaning, one.known]) expect(text).toContain(part);
    }
  });

  it('draws what people would rather look at', () => {
    for (const name of ['CONE.PATTERN', 'CONE.ANGLE', 'CUT.PLAN', 'CUT.SHEETS', 'TANK.PORTS', 'PLAN.LIMIT']) {
      expect(referencePage(catalogue.find((row) => row.name === name)!)).toContain('<svg');
    }
  });
});

describe('what is beside the contract of a function', () => {
  const row = catalogue.find(({ name }) => name === 'CONE.ANGLE')!;

  it('are published figures with ours, computed and not copied', () => {
    const check = { source: 'iapws-r12-08', place: 'table 1', known: 'read' } as const;
    const html = referencePage(row, [
      { ...check, call: ['CONE.ANGLE', 'US', 22.5, 4, 9.25], expected: 44.9 },
      { ...check, call: ['CONE.HEIGHT', 'US', 22.5, 4, 45], expected: 9.25 },
    ]);
    const title = `<a href="evidence.html#iapws-r12-08">IAPWS R12-08</a>`;
    expect(html).toContain(`<td>44.9</td><td>45</td><td>${title}, table 1 (read there)</td>`);
    expect(html).not.toContain('SILT.CONE.HEIGHT(');
    expect(referencePage(row)).not.toContain('Published figures beside ours');
  });

  it('name the column of a figure in a row of results', () => {
    const check = { source: 'iapws-r12-08', place: 'table 1', known: 'read', expected: 254.6 } as const;
    const call = ['CONE.PATTERN', 'US', 22.5, 4, 9.25] as const;
    const pattern = catalogue.find(({ name }) => name === 'CONE.PATTERN')!;
    expect(referencePage(pattern, [{ ...check, call, cell: [0, 4] }])).toContain('<td>254.6, sector angle</td>');
  });

  it.each([
    ['read', 'read there'],
    ['computed', 'computed with it'],
    ['worked', 'worked by hand from it'],
    ['memory', 'from memory'],
    ['common practice', 'common practice, no source'],
  ] as const)('are published figures known as %s, which it says', (known, words) => {
    const check = { source: 'iapws-r12-08', place: 'table 1', expected: 44.9, known } as const;
    const html = referencePage(row, [{ ...check, call: ['CONE.ANGLE', 'US', 22.5, 4, 9.25] }]);
    expect(html).toContain(`, table 1 (${words})</td>`);
  });

  it('are the functions of its family and those that its texts name, and not itself', () => {
    const html = referencePage(row).slice(referencePage(row).indexOf('Related functions'));
    expect(html).toContain('<a href="cone.pattern.html">CONE.PATTERN</a>');
    expect(html).not.toContain('>CONE.ANGLE</a>');
  });
});

it.each([
  ['CONE.PATTERN', 'blank width 25.55 in'],
  ['TANK.VOLUME', '20 in'],
  ['TANK.STAND', '21 in'],
  ['CUT.SHEETS', 'by 48 in'],
])('the picture of %s has the sizes of its example', (name, size) => {
  const [, figure = ''] =
    /<figure>(.*?)<\/figure>/s.exec(referencePage(catalogue.find((row) => row.name === name)!)) ?? [];
  expect(figure.replace(/<[^>]*>/g, ' ')).toContain(size);
});
