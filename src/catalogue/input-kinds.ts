import type { Kind } from '../units/kinds';
import type { NamedInputs } from './plan/named-input';
import { inWords } from './reading/headings';

/** The kind of each input's figure by the input's name in lower case, without inputs that are only words. */
export function inputKinds(inputs: NamedInputs): Readonly<Record<string, Kind>> {
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([key, input]) =>
      'kind' in input ? [[(input.name ?? inWords(key)).toLowerCase(), input.kind] as const] : [],
    ),
  );
}
