import {
  createCustomFunctions,
  installCustomFunctions,
  installedCustomFunctions,
} from '../hosts/univer/custom-functions';
import { type FunctionsMetadata, type HostFunction, pairFunctions } from '../hosts/univer/function-set';

/** The add-in's functions from the very files that Excel loads: functions.json, and functions.js, which the page has run. */
export async function builtFunctions(site: string): Promise<readonly HostFunction[]> {
  const earlier = installedCustomFunctions();
  if (earlier === undefined || earlier.associated.size === 0) throw new Error('functions.js cannot be loaded');
  // From now on errors are made by this script, which knows its own.
  const standIn = createCustomFunctions(earlier);
  installCustomFunctions(standIn);
  const response = await fetch(`${site}/functions.json`);
  if (!response.ok) throw new Error(`functions.json: ${response.status}`);
  return pairFunctions((await response.json()) as FunctionsMetadata, standIn);
}
