import type { FunctionLibrary } from '../../functions/function-library';
import { cellName, parseRange } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult, DefinedName } from '../../hosts/workbook-model';
import { type BookCell, openBook, type Spot } from '../cell-formula/book';
import { type SiltCall, siltCalls } from '../cell-formula/calls';
import { readFormula } from '../cell-formula/read-formula';
import { scopeOf } from '../cell-formula/scope';
import type { Surroundings } from '../follow/evaluate';
import { NotFollowed } from '../follow/grid';
import { atPlace, originsOf } from '../follow/origins';
import { readerOf } from './block-reader';
import { type Cause, type CauseFinder, createCauseFinder, keyOf } from './cause';
import { entrySentence, quotedEntry } from './entry-words';
import { placeWords, rowWord } from './place-words';
import { givesVerdicts, type Rank, typedVerdicts, type Verdict, verdicts } from './verdicts';

/** Something to look at in the workbook. */
export interface Finding {
  /** `wrong` where there is no result, `danger` where a reading can hurt fish or people. */
  readonly tone: 'danger' | 'wrong' | 'caution';
  readonly rank: Rank;
  /** The typed cell in a person's words: `Cone height, Moss`; blank if not known. */
  readonly about: string;
  readonly sentence: string;
  /** The typed cells, as far as they are known, then the cells that show the caution. */
  readonly spots: readonly Spot[];
  /** Other cells that show an error because of it. */
  readonly affected: readonly Spot[];
}

export interface WorkbookCells {
  readonly blocks: readonly Block[];
  readonly names: readonly DefinedName[];
  readonly functionLibrary: FunctionLibrary;
}

/** At most this many errors are followed, because they nearly always have one cause. */
const mostFollowed = 300;

type Step = (share: number) => Promise<void>;

/** Every caution and error of a workbook, each once, grouped by the typed cells, the worst first. */
export async function findCautions(cells: WorkbookCells, step: Step): Promise<readonly Finding[]> {
  return new Search(cells, step).run();
}

interface Draft extends Omit<Finding, 'spots' | 'affected'> {
  readonly spots: Map<string, Spot>;
  readonly affected: Map<string, Spot>;
}

class Search {
  private readonly book;
  private readonly around: Surroundings;
  private readonly causes: CauseFinder;
  private readonly drafts = new Map<string, Draft>();
  private readonly step: Step;
  /** Cells in view that repeat a hidden cell, such as `=IF(M16="","",M16)`, by the cell repeated. */
  private readonly shownAt = new Map<string, Spot>();
  private followed = 0;

  constructor({ blocks, names, functionLibrary }: WorkbookCells, step: Step) {
    this.step = step;
    this.book = openBook(blocks, names);
    this.around = { host: readerOf(blocks), functionLibrary, names };
    this.causes = createCauseFinder(this.book, this.around);
    for (const cell of this.book.formulas) {
      const repeated = /^=IF\(([A-Z]+[0-9]+)="","",\1\)$/.exec(cell.formula ?? '')?.[1];
      const range = repeated === undefined ? undefined : parseRange(repeated);
      if (range !== undefined) this.shownAt.set(keyOf({ sheet: cell.sheet, ...range }), cell);
    }
  }

  async run(): Promise<readonly Finding[]> {
    const { formulas } = this.book;
    for (const [index, home] of formulas.entries()) {
      await this.step(index / formulas.length);
      const filled = this.book.filledBy(home);
      if (isOurs(home)) for (const cell of filled) if (typeof cell.value === 'object') await this.error(cell);
      await this.judge(home, filled);
    }
    // Errors of other formulas count only if they come from our functions; other errors are the user's own business.
    for (const home of formulas) {
      if (typeof home.value !== 'object' || isOurs(home) || this.followed > mostFollowed) continue;
      const { at, spots } = await this.causes.ofError(home);
      if (isOurs(at.source ?? at) || this.drafts.has(spots.map(keyOf).join())) await this.error(home);
    }
    const order = (finding: Draft): number => [...finding.spots.values()][0]?.row ?? 0;
    return [...this.drafts.values()]
      .sort((a, b) => b.rank - a.rank || (a.tone === 'danger' ? order(b) - order(a) : 0))
      .map((draft) => ({ ...draft, spots: [...draft.spots.values()], affected: [...draft.affected.values()] }));
  }

  private async error(cell: BookCell): Promise<void> {
    if (typeof cell.value !== 'object' || waiting.has(cell.value.error.code)) return;
    this.followed += 1;
    const itself: Cause = { spots: [cell], isTyped: false, reason: undefined, at: cell };
    const cause = this.followed > mostFollowed ? itself : await this.causes.ofError(cell);
    const { code } = typeof cause.at.value === 'object' ? cause.at.value.error : cell.value.error;
    const reason = cause.reason ?? (cell.value.error.message || known[code]);
    const [first] = cause.spots;
    const value = cause.isTyped && first !== undefined ? (this.book.cell(first)?.value ?? '') : '';
    const about = first === undefined || !cause.isTyped ? '' : placeWords(this.book, first);
    const label = about || (first === undefined ? '' : cellName(first.row, first.column));
    const sentence = cause.isTyped
      ? entrySentence(label, value, reason ?? code)
      : `${code}${reason === undefined ? '' : ` ${reason}`}`;
    const key = cause.isTyped ? cause.spots.map(keyOf).join() : sentence;
    const draft = this.draft(key, { tone: 'wrong', rank: 3, about, sentence });
    for (const spot of cause.spots) draft.spots.set(keyOf(spot), spot);
    if (!cause.isTyped && cause.at !== cell && !draft.spots.has(keyOf(cell))) draft.affected.set(keyOf(cell), cell);
    else if (cause.isTyped) draft.affected.set(keyOf(cell), cell);
  }

  private async judge(home: BookCell, filled: readonly BookCell[]): Promise<void> {
    const { formula = '' } = home;
    const isWorded = givesVerdicts(formula);
    if (!isOurs(home) && !isWorded) return;
    const part = readFormula(formula);
    if (part === undefined) return;
    const calls = isOurs(home) ? [...siltCalls(part, scopeOf(home))] : [];
    const lines = linesOf(home, filled);
    const given = isWorded
      ? typedVerdicts(lines)
      : verdicts(
          calls.map(({ name }) => name),
          lines,
        );
    for (const verdict of given) {
      const said = { sheet: home.sheet, row: home.row + verdict.row, column: home.column + (verdict.column ?? 0) };
      const spot = this.shownAt.get(keyOf(said)) ?? said;
      const typed = isWorded ? await this.causes.typedFor(spot) : await this.subject(calls, verdict);
      this.caution(verdict, spot, typed);
    }
  }

  private caution(verdict: Verdict, spot: Spot, typed: readonly Spot[]): void {
    const others = typed.filter((one) => keyOf(one) !== keyOf(spot));
    // If there are several readings, the one that the sentence names.
    const first =
      others.find((one) => this.isNamed(one, verdict)) ?? others.find((one) => this.isAbout(one, verdict)) ?? others[0];
    const isOfRow = first !== undefined && !verdict.ofValue;
    // A check is about a whole drum or day, not about one figure.
    const about = isOfRow ? rowWord(this.book, first) : first === undefined ? '' : placeWords(this.book, first);
    const value = first === undefined ? '' : (this.book.cell(first)?.value ?? '');
    const { sentence, rank } = verdict;
    const fullSentence = verdict.ofValue && about !== '' ? `${about}: ${quotedEntry(value)}. ${sentence}` : sentence;
    const draft = this.draft(`${fullSentence} ${verdict.ofValue ? keyOf(first ?? spot) : ''}`, {
      tone: rank === 4 ? 'danger' : 'caution',
      rank,
      about: verdict.ofValue ? '' : about,
      sentence: fullSentence,
    });
    if (first !== undefined) draft.spots.set(keyOf(first), first);
    draft.spots.set(keyOf(spot), spot);
  }

  /** The typed cells that a check is about: the reading that its line names, else its first figure. */
  private async subject(calls: readonly SiltCall[], { reading, row }: Verdict): Promise<readonly Spot[]> {
    const call = calls.find(({ name }) => name.endsWith('.CHECK'));
    const contract = this.around.functionLibrary.catalogue.find(({ name }) => name === call?.name);
    if (call === undefined || contract === undefined) return [];
    const names = Object.keys(contract.arguments);
    const named =
      reading === undefined ? 0 : names.findIndex((name) => reading.toLowerCase().endsWith(name.toLowerCase()));
    const part = call.given[Math.max(0, named) + (contract.units === false ? 0 : 1)];
    const spec = Object.values(contract.arguments)[Math.max(0, named)];
    if (!part || (spec !== undefined && ('cells' in spec || 'table' in spec))) return [];
    try {
      const spots = atPlace(await originsOf(part, call.scope, this.around), { down: row, across: 0 });
      const typed = await Promise.all(spots.map((spot) => this.causes.typedFor(spot)));
      return typed.flat().filter((spot) => this.book.cell(spot)?.formula === undefined);
    } catch (error) {
      if (error instanceof NotFollowed) return [];
      throw error;
    }
  }

  /** Whether the sentence has the whole heading of the cell: `350 fish`. */
  private isNamed(spot: Spot, { sentence, ofValue }: Verdict): boolean {
    const [heading = ''] = placeWords(this.book, spot).split(',');
    return ofValue === true && heading !== '' && sentence.toLowerCase().includes(heading.toLowerCase());
  }

  private isAbout(spot: Spot, { sentence, ofValue }: Verdict): boolean {
    const words =
      placeWords(this.book, spot)
        .split(',')[0]
        ?.toLowerCase()
        .match(/[a-z]{2,}/g) ?? [];
    return (
      ofValue === true &&
      words.some((word) =>
        sentence
          .toLowerCase()
          .split(/[^a-z]+/)
          .includes(word),
      )
    );
  }

  private draft(key: string, made: Omit<Draft, 'spots' | 'affected'>): Draft {
    const draft = this.drafts.get(key) ?? { ...made, spots: new Map(), affected: new Map() };
    this.drafts.set(key, draft);
    return draft;
  }
}

function isOurs({ formula }: BookCell): boolean {
  return formula !== undefined && /\bSILT[._]/i.test(formula);
}

/** The values that a formula fills, by row. */
function linesOf(home: BookCell, filled: readonly BookCell[]): readonly (readonly CellResult[])[] {
  const lines: CellResult[][] = [];
  for (const { row, column, value } of filled) {
    while (lines.length <= row - home.row) lines.push([]);
    const line = lines[row - home.row] ?? [];
    while (line.length < column - home.column) line.push('');
    line[column - home.column] = value;
  }
  return lines;
}

/** A host that is still calculating is not an error. */
const waiting = new Set(['#BUSY!', '#GETTING_DATA', '#CONNECT!']);

const known: Readonly<Record<string, string>> = {
  '#NAME?': 'Siltstead was not loaded when this was entered; press Re-enter SILT formulas in Functions.',
  '#SPILL!': 'other cells block the result; clear the cells below and to the right.',
  '#REF!': 'it refers to cells that no longer exist; refer to other cells.',
  '#CALC!': 'a formula around it finds no rows; check that its rows are filled in.',
};
