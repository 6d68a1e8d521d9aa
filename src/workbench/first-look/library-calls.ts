import type { Adapted } from '../../functions/adapter';
import type { FunctionLibrary } from '../../functions/function-library';
import { type CallFunction, isError } from './look-plan';

/** Calls functions of the library as cells do; what they refuse is a value too. */
export function libraryCalls({ catalogue, adapt }: FunctionLibrary): CallFunction {
  const adapted = new Map<string, Adapted>();
  return (name, given) => {
    const row = catalogue.find((one) => one.name === name);
    if (row === undefined) throw new Error(`there is no function ${name}`);
    const call = adapted.get(name) ?? adapt(row, (code, message) => ({ code, message }));
    adapted.set(name, call);
    try {
      return call(...given);
    } catch (thrown) {
      if (isError(thrown)) return thrown;
      throw thrown;
    }
  };
}
