import { capitalized } from '../units/text';

const longest = 60;

/** `Drum 2: cut plan`, or `Cut plan` without a name; a name from a cell is put on one line. */
export function titled(name: string | undefined, what: string): string {
  const tidy = (name ?? '').replace(/\s+/g, ' ').trim();
  const letters = Array.from(tidy);
  const short = letters.length > longest ? `${letters.slice(0, longest - 3).join('')}...` : tidy;
  return short === '' ? capitalized(what) : `${short}: ${what}`;
}
