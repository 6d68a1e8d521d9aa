import type { CellResult } from '../hosts/workbook-model';

/** A formula's result as a file stores it: the text of `<v>` and the type, none for a number. */
export interface StoredResult {
  readonly text: string;
  readonly type: 'str' | 'b' | 'e' | undefined;
}

/** The errors of the file format (ECMA-376 part 1, 18.17.3); what hosts have added since is stored as `#VALUE!`, as they do themselves. */
const storedErrors: ReadonlySet<string> = new Set(['#DIV/0!', '#N/A', '#NAME?', '#NULL!', '#NUM!', '#REF!', '#VALUE!']);

export function storedError(code: string): string {
  return storedErrors.has(code) ? code : '#VALUE!';
}

export function storedResult(value: CellResult): StoredResult {
  if (typeof value === 'number') return { text: String(Object.is(value, -0) ? 0 : value), type: undefined };
  if (typeof value === 'boolean') return { text: value ? '1' : '0', type: 'b' };
  if (typeof value === 'string') return { text: value, type: 'str' };
  return { text: storedError(value.error.code), type: 'e' };
}

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\r': '&#13;',
};

/** Text as XML needs it; characters that XML cannot hold are written as the file format does, `_x0007_`. */
export function markup(text: string): string {
  return text
    .replace(/_x([0-9A-Fa-f]{4})_/g, '_x005F_x$1_')
    .replace(/[&<>"\r]/g, (mark) => marks[mark] ?? mark)
    .replace(
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML 1.0 leaves out.
      /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g,
      (mark) => `_x${mark.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    );
}
