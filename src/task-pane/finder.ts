import type { CatalogueRow } from '../catalogue/define';
import { inWords } from '../catalogue/reading/headings';
import type { AllTexts } from './function-texts';
import { familyOf, stageTitles } from './stages';
import { synonyms } from './synonyms';

/** Finds functions for a question, best first; none if the question has no word with meaning. */
export type Finder = (sought: string) => readonly CatalogueRow[];

/** How much a word counts depends on where it is. */
const weights = { name: 10, summary: 4, stage: 2, argument: 1.5 } as const;
/** The weight of a word that is still being typed, and of a synonym. */
const partly = 0.7;
const meant = 0.6;

const empty = new Set(
  'a an and are at be can does for from get give have how i if in into is it many may me most much my need of on one or our should so take that the their them there they this to up use want we what when where which will with work you your'.split(
    ' ',
  ),
);

/** The synonyms by the stems of their words. */
const meanings: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(synonyms).map(([said, others]) => [stem(said), wordsOf(others)]),
);

/** Builds the finder once: a table from each word to the functions that contain it. */
export function createFinder(catalogue: readonly CatalogueRow[], texts: AllTexts): Finder {
  const table = new Map<string, Map<number, number>>();
  const add = (text: string, index: number, weight: number): void => {
    for (const word of wordsOf(text)) {
      const places = table.get(word) ?? new Map<number, number>();
      places.set(index, Math.max(places.get(index) ?? 0, weight));
      table.set(word, places);
    }
  };
  catalogue.forEach((row, index) => {
    const { summary = '', meanings } = texts.get(row.name) ?? {};
    add(row.name.replaceAll('.', ' '), index, weights.name);
    add(summary, index, weights.summary);
    add(stageTitles[familyOf(row.name)] ?? '', index, weights.stage);
    for (const [name, spec] of Object.entries(row.arguments)) {
      add(`${inWords(name)} ${meanings?.get(name) ?? ''}`, index, weights.argument);
      if ('choice' in spec) add(spec.choice.join(' '), index, weights.argument);
    }
  });
  const vocabulary = [...table.keys()].sort();
  return (sought) => search(sought, catalogue, table, vocabulary);
}

function search(
  sought: string,
  catalogue: readonly CatalogueRow[],
  table: ReadonlyMap<string, ReadonlyMap<number, number>>,
  vocabulary: readonly string[],
): readonly CatalogueRow[] {
  const words = wordsOf(sought);
  const scores = new Array<number>(catalogue.length).fill(0);
  words.forEach((word, at) => {
    const isLast = at === words.length - 1;
    const best = new Map<number, number>();
    const addMatches = (known: string, share: number): void => {
      for (const [index, weight] of table.get(known) ?? []) {
        best.set(index, Math.max(best.get(index) ?? 0, weight * share));
      }
    };
    addMatches(word, 1);
    for (const [index, weight] of combinedWeights(meanings.get(word) ?? [], table)) {
      best.set(index, Math.max(best.get(index) ?? 0, weight * meant));
    }
    if (isLast && word.length > 1) {
      for (const known of startingWith(vocabulary, word)) addMatches(known, partly);
      for (const [said, others] of meanings) {
        if (word.length > 2 && said.startsWith(word)) for (const other of others) addMatches(other, meant * partly);
      }
    }
    // A word that occurs everywhere counts less.
    const rarity = 1 + Math.log(catalogue.length / Math.max(best.size, 1));
    for (const [index, weight] of best) scores[index] = (scores[index] ?? 0) + weight * rarity;
  });
  return catalogue
    .map((row, index) => ({ row, score: scores[index] ?? 0 }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ row }) => row);
}

/** A synonym of several words fits best where several of them occur. */
function combinedWeights(
  words: readonly string[],
  table: ReadonlyMap<string, ReadonlyMap<number, number>>,
): ReadonlyMap<number, number> {
  const sum = new Map<number, number>();
  for (const word of words) {
    for (const [index, weight] of table.get(word) ?? []) sum.set(index, (sum.get(index) ?? 0) + weight);
  }
  return sum;
}

function startingWith(sorted: readonly string[], start: string): readonly string[] {
  return sorted.filter((word) => word.length > start.length && word.startsWith(start));
}

/** The words with meaning, as stems. */
function wordsOf(text: string): readonly string[] {
  const found = text.toLowerCase().match(/[a-z][a-z0-9-]*/g) ?? [];
  return found.filter((word) => !empty.has(word)).map(stem);
}

/** Removes plurals and a few endings, so that `settling` and `settles` become `settl`. */
function stem(word: string): string {
  if (word.length < 4) return word;
  const singular = word.replace(/(ss|us|is)$|ies$|(x|ch|sh)es$|s$/, (whole, kept: string, before: string) =>
    kept ? kept : whole === 'ies' ? 'y' : (before ?? ''),
  );
  return singular.length > 5 ? singular.replace(/(?:ing|ed|e)$/, '') : singular;
}
