import type { HostFunction } from '../hosts/univer/function-set';

/** The function and argument at the end of a formula that is being typed. */
export interface TypingPlace {
  readonly functionName: string;
  readonly argument: number;
}

/** Reads a formula up to where it is typed; undefined outside any function's brackets. */
export function typingPlace(typed: string): TypingPlace | undefined {
  if (!typed.startsWith('=')) return undefined;
  const open: { functionName: string; argument: number }[] = [];
  let braces = 0;
  let word = '';
  let quote = '';
  for (const letter of typed.slice(1)) {
    if (quote !== '') {
      if (letter === quote) quote = '';
      continue;
    }
    if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '{') braces += 1;
    else if (letter === '}') braces -= 1;
    else if (letter === '(') open.push({ functionName: word.toUpperCase(), argument: 0 });
    else if (letter === ')') open.pop();
    else if (letter === ',' && braces === 0) {
      const call = open.at(-1);
      if (call !== undefined) call.argument += 1;
    }
    word = /[\w.]/.test(letter) ? word + letter : '';
  }
  return open.filter((call) => call.functionName !== '').at(-1);
}

/** One line about the argument that is being typed: `kind (2 of 3): such as dimension or flow`. */
export function typingHelp(typed: string, functions: ReadonlyMap<string, HostFunction>): string {
  const place = typingPlace(typed);
  const fn = place === undefined ? undefined : functions.get(place.functionName);
  if (place === undefined || fn === undefined) return '';
  const { parameters, description } = fn.metadata;
  const parameter = parameters[place.argument];
  if (parameter === undefined) return `${fn.fullName}: ${description ?? ''}`;
  const may = parameter.optional === true ? ', optional' : '';
  return `${parameter.name} (${place.argument + 1} of ${parameters.length}${may}): ${parameter.description ?? ''}`;
}
