import type { CustomFunctionsStandIn } from '../../hosts/univer/custom-functions';
import { type CallFunction, isError } from './look-plan';

/** Calls the functions that the function script has associated, as cells do; what they refuse is a value too. */
export function associatedCalls({ associated }: CustomFunctionsStandIn): CallFunction {
  return (name, given) => {
    const call = associated.get(name);
    if (call === undefined) throw new Error(`there is no function ${name}`);
    try {
      return call(...given);
    } catch (thrown) {
      if (isError(thrown)) return thrown;
      throw thrown;
    }
  };
}
