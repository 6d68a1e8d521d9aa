/** So that a name with the word in it comes behind the word itself, be it mistyped by a letter: `drum` is `drums` first. */
const PART_OF_A_NAME = 1.5;

/**
 * The candidates most like a word that was not found, nearest first, by edits between them in lower case. A word of a longer
 * name counts as the name: `trout` is near to `rainbow trout`.
 */
export function nearest(word: string, candidates: readonly string[], most = 3): readonly string[] {
  const sought = word.slice(0, 40).toLowerCase();
  // A column of ten thousand cells often holds one mistake ten thousand times.
  const key = `${most}\n${sought}\n${candidates.join('\n')}`;
  let found = remembered.get(key);
  if (found === undefined) {
    found = candidates
      .map((candidate) => ({ candidate, edits: editsToName(sought, candidate.toLowerCase()) }))
      .sort((a, b) => a.edits - b.edits)
      .slice(0, most)
      .map(({ candidate }) => candidate);
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(key, found);
  }
  return found;
}

const MOST_REMEMBERED = 200;
const remembered = new Map<string, readonly string[]>();

function editsToName(sought: string, name: string): number {
  const parts = name.split(' ');
  const whole = edits(sought, name);
  if (parts.length < 2 || sought.includes(' ')) return whole;
  return Math.min(whole, ...parts.map((part) => edits(sought, part) + PART_OF_A_NAME));
}

/** Insertions, deletions and replacements that turn one word into the other (Levenshtein 1965). */
function edits(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const replaced = editsAt(above, column - 1) + (from[row - 1] === to[column - 1] ? 0 : 1);
      current.push(Math.min(replaced, editsAt(above, column) + 1, editsAt(current, column - 1) + 1));
    }
    above = current;
  }
  return editsAt(above, to.length);
}

function editsAt(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}
