/**
 * The listed words most like what was typed, nearest first, for messages about a word that is not in a list.
 *
 * Likeness is the least number of letters put in, left out, changed or swapped with their neighbour, ignoring case and
 * spacing; a word that begins with what was typed, or that it begins with, counts as one step away.
 */
export function nearest(typed: string, words: readonly string[], most = 3): readonly string[] {
  const wanted = fold(typed).slice(0, 60);
  const scored = words.map((word, place) => ({ word, place, steps: steps(wanted, fold(word)) }));
  scored.sort((a, b) => a.steps - b.steps || a.place - b.place);
  return scored.slice(0, most).map((one) => one.word);
}

function fold(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}

function steps(a: string, b: string): number {
  if (a === b) return 0;
  if (a.length > 2 && (b.startsWith(a) || a.startsWith(b))) return 1;
  let before: number[] = [];
  let row: number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, before[j - 2]! + 1);
      next.push(best);
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}
