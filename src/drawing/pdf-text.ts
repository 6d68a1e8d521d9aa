import { plainText } from './plain-text';

/** The standard fonts have the characters of Windows code page 1252; these are the ones with another code than in Unicode. */
const windows = '€\u0000‚ƒ„…†‡ˆ‰Š‹Œ\u0000Ž\u0000\u0000‘’“”•–—˜™š›œ\u0000žŸ';

const spelled: Readonly<Record<string, string>> = {
  '−': '-',
  '≤': '<=',
  '≥': '>=',
  '′': "'",
  '″': '"',
  '\u2002': ' ',
  '\u2009': ' ',
  '\u202f': ' ',
};

/** One character as a code of the font, without its accent if the font lacks it; `?` if the font has nothing like it. */
function codes(letter: string): readonly number[] {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x80 || (code >= 0xa0 && code <= 0xff)) return [code];
  const place = windows.indexOf(letter);
  if (place >= 0) return [0x80 + place];
  const plain = spelled[letter] ?? letter.normalize('NFKD').replace(/[^\u0020-\u007e]/g, '');
  return plain === '' ? ['?'.charCodeAt(0)] : Array.from(plain, (one) => one.charCodeAt(0));
}

/** A string of a page's contents in the encoding of the standard fonts: nothing in it can end the string early. */
export function pdfString(words: string): string {
  const bytes = Array.from(plainText(words)).flatMap(codes);
  const safe = bytes.map((code) => {
    const letter = String.fromCharCode(code);
    return code > 0x7e ? `\\${code.toString(8).padStart(3, '0')}` : /[()\\]/.test(letter) ? `\\${letter}` : letter;
  });
  return `(${safe.join('')})`;
}

/** A string of the document's own description, which can hold any character: UTF-16, big-endian. */
export function pdfTitle(words: string): string {
  const units = Array.from({ length: words.length }, (_, i) => words.charCodeAt(i).toString(16).padStart(4, '0'));
  return `<feff${units.join('')}>`;
}
