/** A sentence of the page about what was just done, and whether it is a warning. */
export type Sentence = readonly [tone: 'alert' | 'plain', words: string];

export const alert = (words: string): Sentence => ['alert', words];
export const plain = (words: string): Sentence => ['plain', words];
