/**
 * How wide text sets. Advance widths of Helvetica in thousandths of the type size (Adobe Core 14 font metrics,
 * Helvetica.afm); other sans-serif faces set within a few per cent of it. Capitals are 0.718 of the type size high.
 */
export const capitalHeight = 0.718;

/** Distance from one line of text to the next, in heights of capitals. */
export const lineStep = 1.7;

const printable =
  '278 278 355 556 556 889 667 191 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 556 556 278 278 ' +
  '584 584 584 556 1015 667 667 722 722 667 611 778 722 278 500 667 556 833 722 778 667 778 722 667 611 722 667 944 ' +
  '667 667 611 278 278 278 469 556 333 556 556 500 556 556 278 556 556 222 222 500 222 833 556 556 556 556 333 500 ' +
  '278 556 500 722 500 500 500 334 260 334 584';
const widths = printable.split(' ').map(Number);

const others: Readonly<Record<string, number>> = { '°': 400, '×': 584, '·': 278, '±': 584, '½': 834, '¼': 834 };

/** Width of one line of text with capitals `height` high. */
export function textWidth(words: string, height: number): number {
  let thousandths = 0;
  for (const letter of words) thousandths += widths[letter.charCodeAt(0) - 32] ?? others[letter] ?? 556;
  return (thousandths / 1000) * (height / capitalHeight);
}

/** Breaks a sentence between words into lines of at most a width; a single word can still be wider. */
export function wrapped(sentence: string, height: number, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of sentence.split(/\s+/).filter((part) => part !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, height) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
