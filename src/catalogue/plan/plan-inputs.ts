import type { Profile } from '../../units/profile';
import type { MixedCell } from '../argument';
import { coefficient } from '../coefficients/all';
import { inputName } from '../reading/input-table';
import type { NamedInput } from './named-input';
import { scenarioInputs } from './scenario-inputs';

export interface InputRow {
  readonly input: string;
  readonly kind: string;
  readonly unit: string;
  readonly default: MixedCell;
  readonly source: string;
  readonly meaning: string;
}

const wanted = new Set(['fishCount', 'fishMass', 'feedingRate', 'feed']);

/** One row per scenario input: name, kind, unit, default, source of the default, meaning. */
export function planInputs(profile: Profile): readonly InputRow[] {
  return Object.entries(scenarioInputs).map(([key, spec]: [string, NamedInput]) => {
    const kind = 'choice' in spec ? 'choice' : 'accepts' in spec ? spec.accepts : spec.kind;
    return {
      input: inputName(scenarioInputs, key),
      kind,
      unit: 'choice' in spec ? '' : profile.units[spec.kind].symbol,
      ...defaultOf(key, spec),
      meaning: 'choice' in spec ? `${spec.meaning}: ${spec.choice.join(', ')}` : spec.meaning,
    };
  });
}

function defaultOf(key: string, spec: NamedInput): { readonly default: MixedCell; readonly source: string } {
  if ('reader' in spec) return { default: spec.default, source: sourceOf(spec.coefficient ?? '') };
  if ('choice' in spec) return { default: spec.default ?? 'not given', source: spec.source ?? '' };
  if (spec.as !== undefined) return { default: `as ${inputName(scenarioInputs, spec.as)}`, source: 'another input' };
  if (spec.default === 'coefficient') {
    const name = inputName(scenarioInputs, key);
    return { default: { kind: spec.kind, si: coefficient(name).typical }, source: sourceOf(name) };
  }
  if (spec.default !== undefined) return { default: { kind: spec.kind, si: spec.default }, source: spec.source ?? '' };
  if (wanted.has(key)) return { default: 'required', source: 'fish count, fish mass and feeding rate, or feed' };
  return { default: 'not given', source: spec.equipment ? 'equipment: type none if the farm has none' : '' };
}

function sourceOf(key: string): string {
  const { source, known } = coefficient(key);
  return known === 'memory' ? `${source} (from memory)` : source;
}
