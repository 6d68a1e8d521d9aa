/** Signs that NFKC would turn into something else than what was meant: ordinal and ring for degree, acute for prime. */
const before: Readonly<Record<string, string>> = { º: '°', '˚': '°', '´': "'", '`': "'" };

const after: Readonly<Record<string, string>> = {
  '‘': "'",
  '’': "'",
  '‛': "'",
  '′': "'",
  ʹ: "'",
  ʼ: "'",
  '“': '"',
  '”': '"',
  '‟': '"',
  ʺ: '"',
  '‐': '-',
  '‒': '-',
  '–': '-',
  '—': '-',
  '―': '-',
  '−': '-',
  '⁄': '/',
  '∕': '/',
  '÷': '/',
  '⋅': '·',
  '∙': '·',
  '•': '·',
  '‧': '·',
  '*': '·',
  μ: 'µ',
};

const plain = /^[\x20-\x29\x2b-\x5f\x61-\x7e]*$/;

/**
 * Brings text to plain signs: fractions such as ½ become 1/2 (2½ becomes 2 1/2), superscripts digits, dashes a minus,
 * primes and curly quotes ' and ", every white space one ordinary space.
 */
export function tidyText(text: string): string {
  const signs = plain.test(text)
    ? text
    : text
        .replace(/[º˚´`]/g, (sign) => before[sign] ?? sign)
        .replace(/(\d)(?=[\u00b2\u00b3\u00b9\u00bc-\u00be\u2070-\u2079\u2150-\u215f\u2189])/g, '$1 ')
        .normalize('NFKC')
        .replace(/[\u0080-\uffff*]/g, (sign) => after[sign] ?? sign);
  return signs.replace(/''/g, '"').replace(/\s+/g, ' ').trim();
}

/** Text for a message: white space collapsed, shortened past 40 characters, `blank` where there is none. */
export function wordText(text: string): string {
  const short = text.slice(0, 200).replace(/\s+/g, ' ').trim();
  if (short === '') return text.trim() === '' ? 'blank' : wordText(text.trim());
  const signs = Array.from(short);
  return signs.length > 40 ? `${signs.slice(0, 39).join('')}…` : short;
}

/** A list for a message: `in, mm, cm or m`. */
export function wordList(items: readonly string[], last = 'or'): string {
  return items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** A word with the article that it takes: `an area`, `a unit`. */
export function withArticle(word: string): string {
  return `${/^[aeio]/i.test(word) ? 'an' : 'a'} ${word}`;
}

/** With its first letter as a sentence begins; pH stays. */
export function capitalized(words: string): string {
  return words.startsWith('pH') ? words : words.charAt(0).toUpperCase() + words.slice(1);
}
