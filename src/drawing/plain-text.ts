/** Text from a cell without what no file format can hold: control characters and half characters. */
export function plainText(words: string): string {
  return Array.from(words)
    .filter((letter) => {
      const code = letter.codePointAt(0) ?? 0;
      const control = code < 32 || (code >= 0x7f && code < 0xa0);
      const half = code >= 0xd800 && code <= 0xdfff;
      return !(control || half || (code & 0xfffe) === 0xfffe);
    })
    .join('');
}
