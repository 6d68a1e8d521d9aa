import { numericHarmless } from './harmless-numeric';
import { pipeHarmless } from './harmless-pipe';
import { readingHarmless } from './harmless-reading';
import { waterHarmless } from './harmless-water';

/** Changes that no test can or should notice, with the reason. A place is a file, or a file and a line. */
export interface Harmless {
  readonly place: string;
  /** Part of what the code is changed to. */
  readonly change: string;
  readonly reason: string;
}

export const harmless: readonly Harmless[] = [
  ...numericHarmless,
  ...waterHarmless,
  ...pipeHarmless,
  ...readingHarmless,
];
