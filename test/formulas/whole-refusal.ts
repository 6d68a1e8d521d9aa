import { Refusal } from '../../src/formulas/refusal';

/** For `toThrow`: a refusal that names an argument and has a figure for every mark in its sentence. */
export const wholeRefusal = {
  asymmetricMatch(thrown: unknown): boolean {
    if (!(thrown instanceof Refusal) || thrown.argument === '') return false;
    const marks = [...thrown.advice.matchAll(/\{(\w+)/g)].map(([, mark = '']) => mark);
    return marks.every((mark) => {
      const figure = thrown.figures[mark];
      return typeof figure === 'number' || (typeof figure?.value === 'number' && figure.like.length > 0);
    });
  },
  toString: () => 'a refusal with a figure for every mark',
};
