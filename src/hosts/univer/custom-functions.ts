/**
 * The few parts of Excel's `CustomFunctions` that the built function script uses, so that the very same script runs
 * where there is no Excel: it calls `CustomFunctions.associate(id, implementation)` for each function and throws
 * `CustomFunctions.Error`.
 */

export type Implementation = (...args: unknown[]) => unknown;

/** An error with the code that the cell shows and the reason. */
export class CustomFunctionError extends Error {
  readonly code: string;

  constructor(code: string, message = '') {
    super(message);
    this.name = 'CustomFunctionError';
    this.code = code;
  }
}

const errorCodes = {
  divisionByZero: '#DIV/0!',
  invalidName: '#NAME?',
  invalidNumber: '#NUM!',
  invalidReference: '#REF!',
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  nullReference: '#NULL!',
} as const;

export interface CustomFunctionsStandIn {
  readonly associate: (id: string, implementation: Implementation) => void;
  readonly Error: typeof CustomFunctionError;
  readonly ErrorCode: typeof errorCodes;
  /** What has been associated so far, by id. */
  readonly associated: ReadonlyMap<string, Implementation>;
}

/** A stand-in; with what an earlier one, of another script of the page, has been told. */
export function createCustomFunctions(earlier?: CustomFunctionsStandIn): CustomFunctionsStandIn {
  const associated = new Map<string, Implementation>(earlier?.associated);
  return {
    associate: (id, implementation) => {
      associated.set(id, implementation);
    },
    Error: CustomFunctionError,
    ErrorCode: errorCodes,
    associated,
  };
}

/** The stand-in that another script of the page has installed. */
export function installedCustomFunctions(): CustomFunctionsStandIn | undefined {
  return (globalThis as unknown as { CustomFunctions?: CustomFunctionsStandIn }).CustomFunctions;
}

/** Puts the stand-in where the function script looks for it, whenever it associates a function or makes an error. */
export function installCustomFunctions(standIn: CustomFunctionsStandIn): void {
  (globalThis as { CustomFunctions?: unknown }).CustomFunctions = standIn;
}
