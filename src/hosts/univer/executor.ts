import { BaseFunction, type BaseValueObject, FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';
import { CustomFunctionError } from './custom-functions';
import type { HostFunction, ParameterMetadata } from './function-set';
import { errorObject, handOver, toEngineResult } from './value-objects';

type Executor = [new (name: string) => BaseFunction, string];

/** Excel passes rows of cells to a matrix parameter even for one cell or a literal, and null if it is omitted. */
function asDeclared(value: unknown, parameter: ParameterMetadata): unknown {
  if (parameter.dimensionality === 'matrix') return value === null || Array.isArray(value) ? value : [[value]];
  return Array.isArray(value) && value.length === 1 && value[0].length === 1 ? value[0][0] : value;
}

/** Calls one function as Excel does and never throws, because a throw would end the engine. */
export function callFunction(fn: HostFunction, given: readonly BaseValueObject[]): BaseValueObject {
  const { parameters } = fn.metadata;
  if (given.length > parameters.length) {
    return errorObject('#VALUE!', `${fn.fullName} takes ${parameters.length} arguments; ${given.length} were given`);
  }
  try {
    const args = parameters.map((parameter, index) => {
      const object = given[index];
      return object === undefined ? null : asDeclared(handOver(object), parameter);
    });
    return toEngineResult(fn.implementation(...args, { functionName: fn.metadata.id }));
  } catch (thrown) {
    if (thrown instanceof CustomFunctionError) return errorObject(thrown.code, thrown.message);
    const reason = thrown instanceof Error ? thrown.message : String(thrown);
    return errorObject('#VALUE!', `a fault inside ${fn.fullName}: ${reason}`);
  }
}

/**
 * What the engine's function plug-in needs: one class per function. The adapter, not the engine, reports missing
 * arguments.
 */
export function executors(functions: readonly HostFunction[]): Executor[] {
  return functions.map((fn): Executor => {
    class HostedFunction extends BaseFunction {
      override minParams = 0;
      override maxParams = 255;

      /** Quoted text stays text; without this the engine passes "1/2" as a date. */
      override isArgumentsIgnoreNumberPattern(): boolean {
        return true;
      }

      override calculate(...given: BaseValueObject[]): BaseValueObject {
        return callFunction(fn, given);
      }
    }
    return [HostedFunction, fn.fullName];
  });
}

/** The help shown while a function is typed. */
export function descriptions(functions: readonly HostFunction[]): IFunctionInfo[] {
  return functions.map(({ fullName, metadata }) => ({
    functionName: fullName,
    functionType: FunctionType.User,
    description: metadata.description ?? '',
    abstract: metadata.description ?? '',
    functionParameter: metadata.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? '',
      example: '',
      require: parameter.optional === true ? 0 : 1,
      repeat: 0,
    })),
  }));
}
