import { closeSync, openSync, writeSync } from 'node:fs';

export interface Fault {
  readonly call: string;
  readonly fault: string;
}

/** Records each call before it runs, so that a call that ends the process is known too, and keeps the faults. */
export interface FuzzLog {
  readonly before: (call: unknown) => void;
  readonly fault: (call: unknown, fault: string) => void;
  readonly faults: readonly Fault[];
  readonly calls: number;
  /** A call is late after this many times its usual time. */
  readonly patience: number;
  readonly close: () => void;
}

const mostFaults = 200;
/** The part of a call that generator, seed and number do not give again. */
const longest = 4000;

/** With a file, its first line is always the call that is running. */
export function fuzzLog(file?: string, patience = 1): FuzzLog {
  const handle = file === undefined ? undefined : openSync(file, 'w');
  const faults: Fault[] = [];
  const seen = new Set<string>();
  let calls = 0;
  return {
    before: (call) => {
      calls++;
      if (handle !== undefined) writeSync(handle, `${calls} ${textOf(call)}\n`, 0);
    },
    fault: (call, fault) => {
      // One fault of each sort is enough: figures and the user's own text do not count.
      const sort = `${nameOf(call)} ${fault.replace(/-?\d[\d.e+-]*/gi, '#').slice(0, 60)}`;
      if (seen.has(sort) || faults.length >= mostFaults) return;
      seen.add(sort);
      faults.push({ call: textOf(call), fault });
    },
    faults,
    patience,
    get calls() {
      return calls;
    },
    close: () => {
      if (handle !== undefined) closeSync(handle);
    },
  };
}

function nameOf(call: unknown): string {
  return typeof call === 'object' && call !== null && 'name' in call ? String(call.name) : '';
}

function textOf(call: unknown): string {
  const text = typeof call === 'string' ? call : JSON.stringify(call, printable);
  return text.length > longest ? `${text.slice(0, longest)} …` : text;
}

/** Replaces values that JSON would leave out or change. */
function printable(_: string, value: unknown): unknown {
  if (value === undefined) return '(left out)';
  if (typeof value === 'string' && value.length > 200) return `${value.slice(0, 100)}… (${value.length})`;
  return typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0)) ? String(value) : value;
}
