import {
  type AstExpression,
  type LambdaExpression,
  type LetExpression,
  parse,
  parseA1Ref,
  type ReferenceIdentifier,
  tokenize,
} from '@borgar/fx';
import type { BookCell, OpenRange } from './book';

/** A part of a cell formula, with its place in the text. */
export type Part = AstExpression | LambdaExpression | LetExpression;

/** The parts of a cell formula; undefined if it cannot be read. */
export function readFormula(formula: string): Part | undefined {
  try {
    return parse(tokenize(formula, { withLocation: true })) as Part;
  } catch {
    return undefined;
  }
}

/**
 * What a reference points at: cells of a sheet of this workbook (`sheet` undefined for the formula's own) or a name.
 */
export type Target =
  | { readonly sheet: string | undefined; readonly range: OpenRange }
  | { readonly name: string }
  /** Another workbook, or a table. */
  | undefined;

export function targetOf(reference: ReferenceIdentifier): Target {
  if (reference.kind === 'table') return undefined;
  const read = parseA1Ref(reference.value, { allowNamed: true });
  if (read === undefined || read === null) return undefined;
  const context = (read.context ?? []) as readonly string[];
  if ('name' in read) return { name: read.name };
  if (context.length > 1) return undefined;
  const { top, left, bottom, right } = read.range;
  return {
    sheet: context[0],
    range: { top: top ?? null, left: left ?? null, bottom: bottom ?? null, right: right ?? null },
  };
}

/** The name of a function that is called, without the `SILT.` of ours: `CONE.PATTERN`; undefined for any other. */
export function siltName(callee: string): string | undefined {
  const stored = /^_xldudf_SILT_(.+)$/i.exec(callee)?.[1]?.replaceAll('_', '.');
  return (stored ?? /^SILT\.(.+)$/i.exec(callee)?.[1])?.toUpperCase();
}

/** Reads each cell's formula once. */
export class ReadFormulas {
  private readonly read = new Map<BookCell, Part | undefined>();

  of(cell: BookCell): Part | undefined {
    if (this.read.has(cell)) return this.read.get(cell);
    const part = cell.formula === undefined ? undefined : readFormula(cell.formula);
    this.read.set(cell, part);
    return part;
  }
}
