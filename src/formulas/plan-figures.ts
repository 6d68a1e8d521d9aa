import type { Figure } from './refusal';

type Figures = Readonly<Record<string, Figure>>;

/** Figures of one kind for the marks of a sentence. */
export function figuresLike(kind: string, values: Readonly<Record<string, number>>): Figures {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, { value, like: kind }]));
}
