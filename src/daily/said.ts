/** A sentence of the page about what was just done, and whether it is a warning. */
export type Sentence = readonly [tone: 'alert' | 'plain', words: string];

export const alert = (words: string): Sentence => ['alert', words];
export const plain = (words: string): Sentence => ['plain', words];

/** Something to press beside the sentence. */
export interface Offer {
  readonly label: string;
  readonly press: () => void;
}
