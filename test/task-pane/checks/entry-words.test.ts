import { describe, expect, test } from 'vitest';
import type { CellResult } from '../../../src/hosts/workbook-model';
import { entrySentence, quotedEntry } from '../../../src/task-pane/checks/entry-words';

const about = (value: CellResult, reason: string): string => entrySentence('Girth, Fern', value, reason);

describe('a sentence about an entry has its label, the entry once and what is allowed', () => {
  test.each<[CellResult, string, string]>([
    ['about 21', 'quantity: about 21 is not allowed; give it', 'Girth, Fern: “about 21” is not allowed; give it.'],
    ['12 gal', 'girth: 12 gal is a volume; give it', 'Girth, Fern: “12 gal” is a volume; give it.'],
    [-5, 'bank: drum diameter: -5 mm is not allowed; give it', 'Girth, Fern: -5 mm is not allowed; give it.'],
    [0, 'height: 0 or blank is not allowed; give it', 'Girth, Fern: 0 or blank is not allowed; give it.'],
    ['', 'height: 0 or blank is not allowed; give it', 'Girth, Fern: the cell is empty; give it.'],
    ['', 'height: its row is missing', 'Girth, Fern: the cell is empty. height: its row is missing.'],
    // The title of a column may have the figure too.
    [
      2,
      'scenarios: column 2 (2: two fish), drums: 2 is not allowed; give it',
      'Girth, Fern: 2 is not allowed; give it.',
    ],
    ['a: b', 'quantity: a: b is not allowed; give it', 'Girth, Fern: “a: b” is not allowed; give it.'],
    [
      '2 1/2 feetz',
      'bank: drum diameter: feetz is not a unit; give it',
      'Girth, Fern: “2 1/2 feetz” is not allowed: feetz is not a unit; give it.',
    ],
    // What is refused is made of the entry, and is neither the entry nor the beginning of it.
    [
      4,
      'gained: 4.5 kg is not allowed; give it',
      'Girth, Fern: the cell holds 4. gained: 4.5 kg is not allowed; give it.',
    ],
    [
      'x'.repeat(50),
      `top: ${'x'.repeat(39)}… is not allowed; give it`,
      `Girth, Fern: “${'x'.repeat(39)}…” is not allowed; give it.`,
    ],
  ])('%s, %s', (value, reason, sentence) => {
    expect(about(value, reason)).toBe(sentence);
  });
});

test('an entry is quoted if it is text that can be seen, and is shortened as in every message', () => {
  const entries: readonly CellResult[] = ['about 21', -5, true, '', ' ', `${'x'.repeat(80)} y`];
  const quoted = ['“about 21”', '-5', 'true', 'blank', 'blank', `“${'x'.repeat(39)}…”`];
  expect(entries.map(quotedEntry)).toEqual(quoted);
  expect(quotedEntry({ error: { code: '#DIV/0!', message: '' } })).toBe('#DIV/0!');
});
