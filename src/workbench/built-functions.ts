import { createCustomFunctions, installCustomFunctions } from '../hosts/univer/custom-functions';
import { type FunctionsMetadata, type HostFunction, pairFunctions } from '../hosts/univer/function-set';

/** Runs a classic script of this site and waits for it. */
function runScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address} cannot be loaded`));
    document.head.append(script);
  });
}

/** The add-in's functions from the very files that Excel loads: functions.json and functions.js. */
export async function builtFunctions(site: string): Promise<readonly HostFunction[]> {
  const standIn = createCustomFunctions();
  installCustomFunctions(standIn);
  const [response] = await Promise.all([fetch(`${site}/functions.json`), runScript(`${site}/functions.js`)]);
  if (!response.ok) throw new Error(`functions.json: ${response.status}`);
  return pairFunctions((await response.json()) as FunctionsMetadata, standIn);
}
