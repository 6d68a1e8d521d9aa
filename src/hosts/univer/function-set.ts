import type { CustomFunctionsStandIn, Implementation } from './custom-functions';

/** The namespace that the add-in's manifest puts before every function name. */
export const namespace = 'SILT';

export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: 'scalar' | 'matrix';
  readonly optional?: boolean;
  readonly customEnumId?: string;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
}

export interface FunctionsMetadata {
  readonly functions: readonly FunctionMetadata[];
}

/** One function as a host registers it: what Excel reads from functions.json, and what the script associated with its id. */
export interface HostFunction {
  /** As typed in a cell: `SILT.CONE.PATTERN`. */
  readonly fullName: string;
  readonly metadata: FunctionMetadata;
  readonly implementation: Implementation;
}

/** Pairs metadata with implementations; a function that has only one of the two is a fault of the build. */
export function pairFunctions(metadata: FunctionsMetadata, standIn: CustomFunctionsStandIn): readonly HostFunction[] {
  const unclaimed = new Set(standIn.associated.keys());
  const functions = metadata.functions.map((row): HostFunction => {
    const implementation = standIn.associated.get(row.id);
    if (implementation === undefined) throw new Error(`${row.id} is described but the script does not associate it`);
    unclaimed.delete(row.id);
    return { fullName: `${namespace}.${row.name}`.toUpperCase(), metadata: row, implementation };
  });
  if (unclaimed.size > 0) throw new Error(`${[...unclaimed].join(', ')}: associated but not described`);
  return functions;
}
