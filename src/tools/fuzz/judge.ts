import type { CatalogueRow } from '../../catalogue/define';
import { type Adapted, adapt, argumentNames } from '../../functions/adapter';
import type { FuzzCall } from './arguments';

/** The host's own error, as a host would make it. */
class HostError extends Error {
  readonly code: string;
  constructor(code: string, message: string) {
    super(message);
    this.code = code;
  }
}

export interface Judge {
  readonly row: CatalogueRow;
  /** The fault in the result of a call; undefined if there is none. */
  readonly faultOf: (call: FuzzCall, mostMs: number) => string | undefined;
}

const longestMessage = 1200;
/**
 * Text that must never be in a message or a result. Messages repeat the user's text, so calls never contain
 * `Infinity`.
 */
const leaks = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object |fault in Siltstead/;

/**
 * Checks one function: it throws only the host's error, gives only finite numbers and complete blocks, leaves its
 * input unchanged and does not hang.
 */
export function judge(row: CatalogueRow): Judge {
  const call = adapt(row, (code, message) => new HostError(code, message));
  const names = argumentNames(row).map((name) => new RegExp(`\\b${name}\\b`));
  const named = (message: string) =>
    names.some((name) => name.test(message)) || /is not a profile|profile/.test(message);
  const faultOf = ({ values }: FuzzCall, mostMs: number): string | undefined => {
    for (const value of values) if (typeof value === 'object') deepFreeze(value);
    const { result, ms } = timed(call, values, mostMs);
    if (ms > mostMs) return `took ${Math.round(ms)} ms`;
    return result instanceof Error ? errorFault(result, named) : blockFault(result, named);
  };
  return { row, faultOf };
}

/**
 * On a busy machine any call is late now and then, so a late call is repeated, and only the processor time counts.
 */
function timed(call: Adapted, values: readonly unknown[], mostMs: number): { result: unknown[][] | Error; ms: number } {
  const start = performance.now();
  const result = answerOf(call, values);
  let least = performance.now() - start;
  for (let tries = 0; tries < 3 && least > mostMs; tries++) {
    const before = process.cpuUsage();
    answerOf(call, values);
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return { result, ms: least };
}

function answerOf(call: Adapted, values: readonly unknown[]): unknown[][] | Error {
  try {
    return call(...values);
  } catch (error) {
    return error instanceof Error ? error : new Error(`threw ${String(error)}`);
  }
}

function errorFault(error: Error, named: (message: string) => boolean): string | undefined {
  if (!(error instanceof HostError)) return `threw ${error.name}: ${error.message}`;
  const { code, message } = error;
  if (!code.startsWith('#')) return `has the code ${code}`;
  // An error in the user's cells is passed on unchanged.
  if (message === '' && code !== '#VALUE!') return undefined;
  if (message.length > longestMessage) return `says ${message.length} characters: ${message.slice(0, 80)}`;
  if (leaks.test(message)) return `says: ${message}`;
  return named(message) ? undefined : `names no argument: ${message}`;
}

function blockFault(block: unknown[][], named: (message: string) => boolean): string | undefined {
  const wide = block[0]?.length ?? 0;
  if (wide === 0) return 'gives nothing';
  for (const line of block) {
    if (line.length !== wide) return 'is ragged';
    for (const cell of line) {
      const fault = cellFault(cell, named);
      if (fault !== undefined) return fault;
    }
  }
  return undefined;
}

function cellFault(cell: unknown, named: (message: string) => boolean): string | undefined {
  if (typeof cell === 'number') return Number.isFinite(cell) ? undefined : `gives ${cell}`;
  if (typeof cell === 'string') return leaks.test(cell) ? `answers: ${cell}` : undefined;
  if (typeof cell === 'boolean') return undefined;
  return cell instanceof Error ? errorFault(cell, named) : `gives a ${typeof cell}`;
}

function deepFreeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return;
  Object.freeze(value);
  for (const inner of Object.values(value)) deepFreeze(inner);
}
