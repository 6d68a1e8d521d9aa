import type { Argument } from '../../catalogue/argument';
import { allowed } from '../../catalogue/reading/bounds';
import { inWords } from '../../catalogue/reading/headings';
import type { FunctionLibrary } from '../../functions/function-library';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';

/** Whether an argument may be left out. */
export function mayBeLeftOut(spec: Argument): boolean {
  return ('optional' in spec && spec.optional === true) || ('default' in spec && spec.default !== undefined);
}

/** The values that an argument accepts, in the profile's units: `a length of more than 0 in`. */
export function acceptedValues(spec: Argument, profile: Profile): string {
  if ('choice' in spec) return 'one of the list';
  if ('reader' in spec) return spec.accepts;
  if ('table' in spec) return `rows of ${Object.keys(spec.table).map(inWords).join(', ')}`;
  if ('cells' in spec) return 'a range whose first column names each row';
  return `${allowed(spec, profile)}${spec.per ? `, a ${spec.per}` : ''}`;
}

/** The default of an argument as text; blank if it has none. */
export function defaultText(spec: Argument, profile: Profile, functionLibrary: FunctionLibrary): string {
  if ('defaultReads' in spec && spec.defaultReads) return spec.defaultReads;
  if (!('default' in spec) || spec.default === undefined) return '';
  if ('choice' in spec || 'reader' in spec) return String(spec.default);
  if (typeof spec.default === 'number') return wordQuantity(profile, spec.kind, spec.default);
  if (typeof spec.default !== 'string') return '';
  const { key, typical } = functionLibrary.coefficient(spec.default);
  return `${wordQuantity(profile, spec.kind, typical)}, the usual ${key}`;
}

/** The unit of a figure typed without one; blank for words and plain numbers. */
export function unitOf(spec: Argument, profile: Profile): string {
  return 'kind' in spec && spec.kind !== undefined ? profile.units[spec.kind].symbol : '';
}

/** Whether an argument needs cells rather than one value. */
export function wantsCells(spec: Argument): boolean {
  return 'table' in spec || 'cells' in spec;
}
