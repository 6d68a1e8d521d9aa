import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../src/catalogue/all';
import { methodsInWords, texFormulas, typesetFormula } from '../../../src/manual/formulas/typeset';

const rows = catalogue.flatMap(({ name, formula }) => (formula === undefined ? [] : [{ name, formula }]));
const typeset = rows.filter(({ name }) => !methodsInWords.includes(name));

/** What both ways of writing must share: figures, and words of four letters or more. */
function content(text: string): readonly string[] {
  const plain = text
    .normalize('NFKD')
    .replace(/[₀-₉]/g, (digit) => String(digit.charCodeAt(0) - 0x2080))
    .replaceAll('alpha', 'α')
    .replaceAll('beta', 'β');
  return [...new Set(plain.match(/\d*\.\d+|\d{2,}|[A-Za-z]{4,}/g) ?? [])].map((word) => word.toLowerCase());
}

describe('typeset formulas', () => {
  test('are there for each function whose formula is one', () => {
    expect(Object.keys(texFormulas).toSorted()).toEqual(typeset.map(({ name }) => name).toSorted());
    const known = rows.map(({ name }) => name);
    for (const name of methodsInWords) expect(known).toContain(name);
  });

  test.each(typeset)('$name is well-formed MathML with the figures and words of its row', ({ name, formula }) => {
    const markup = typesetFormula(name) ?? '';
    const tree = new DOMParser({
      onError: (_, message) => {
        throw new Error(message);
      },
    }).parseFromString(markup, 'text/xml');
    expect(tree.documentElement?.tagName).toBe('math');
    expect(markup).not.toMatch(/ style=| class=|merror/);
    const shown = content(markup.replace(/<[^>]*>/g, ' '));
    const replaced =
      /^(sqrt|atan|rounded|down|each|cube|root|mass|radii|slope|hole|removes|stage|with|smallest|size|which|most|times|caco)$/;
    for (const word of content(formula))
      if (!replaced.test(word)) expect(shown, `${word} of: ${formula}`).toContain(word);
  });
});
