import { readFileSync } from 'node:fs';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { switchHeader } from './mutation-switch';

/** One small change to the code. */
export interface Mutant {
  readonly id: string;
  /** File, line and column from 1: `src/formulas/pipe/friction.ts:21:19`. */
  readonly place: string;
  /** The code and what it becomes, each in one line and at most so long that a person can compare them. */
  readonly from: string;
  readonly to: string;
}

export interface Instrumented {
  readonly mutants: readonly Mutant[];
  /** Which changes are reached at each place of the code that tells when it is reached. */
  readonly sites: readonly (readonly string[])[];
  /** The code of each file with all its changes in it, each behind a switch, by absolute path. */
  readonly code: ReadonlyMap<string, string>;
}

const silent = {
  isTraceEnabled: () => false,
  isDebugEnabled: () => false,
  isInfoEnabled: () => false,
  isWarnEnabled: () => false,
  isErrorEnabled: () => false,
  isFatalEnabled: () => false,
  trace: () => undefined,
  debug: () => undefined,
  info: () => undefined,
  warn: () => undefined,
  error: () => undefined,
  fatal: () => undefined,
};

/** Puts every change that Stryker knows into the files. */
export async function instrument(root: string, files: readonly string[]): Promise<Instrumented> {
  const sources = new Map(files.map((file) => [`${root}/${file}`, readFileSync(`${root}/${file}`, 'utf8')]));
  const sites: (readonly string[])[] = [];
  const result = await new Instrumenter(silent).instrument(
    Array.from(sources, ([name, content]) => ({ name, content, mutate: true })),
    // Tests read a message as a whole if its text matters; a changed word elsewhere is not a fault.
    { plugins: null, ignorers: [], excludedMutations: ['StringLiteral'], noHeader: true },
  );
  return {
    mutants: result.mutants
      .filter(({ status }) => status === undefined)
      .map(({ id, fileName, location: { start, end }, replacement }) => ({
        id,
        place: `${fileName.slice(root.length + 1)}:${start.line + 1}:${start.column + 1}`,
        from: inShort(textBetween(sources.get(fileName) ?? '', start, end)),
        to: inShort(replacement),
      })),
    sites,
    code: new Map(result.files.map(({ name, content }) => [name, `${switchHeader} ${numbered(content, sites)}`])),
  };
}

/** The code with the number of a site where it would tell the changes there: counting them one by one is slow. */
function numbered(content: string, sites: (readonly string[])[]): string {
  return content.replace(/stryCov_9fa48\(([^()]*)\)/g, (_, ids: string) => {
    sites.push(ids.match(/\d+/g) ?? []);
    return `stryCov_9fa48(${sites.length - 1})`;
  });
}

const LONGEST = 90;

function inShort(code: string): string {
  const line = code.replace(/\s+/g, ' ');
  return line.length > LONGEST ? `${line.slice(0, LONGEST - 1)}…` : line;
}

interface Position {
  readonly line: number;
  readonly column: number;
}

function textBetween(source: string, start: Position, end: Position): string {
  const lines = source.split('\n').slice(start.line, end.line + 1);
  const last = lines.length - 1;
  return lines.map((line, i) => line.slice(i === 0 ? start.column : 0, i === last ? end.column : undefined)).join('\n');
}
