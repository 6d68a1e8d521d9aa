import { createCustomFunctions, installCustomFunctions } from './custom-functions';
import { type HostFunction, pairFunctions } from './function-set';

let loaded: Promise<readonly HostFunction[]> | undefined;

async function load(): Promise<readonly HostFunction[]> {
  const standIn = createCustomFunctions();
  installCustomFunctions(standIn);
  // The script associates functions while it is loaded, so the stand-in must exist first.
  await import('../../functions/associate');
  const { functionsMetadata } = await import('../../functions/metadata');
  return pairFunctions(functionsMetadata(), standIn);
}

/** The add-in's functions straight from their sources, for use where nothing has been built. */
export function sourceFunctions(): Promise<readonly HostFunction[]> {
  loaded ??= load();
  return loaded;
}
