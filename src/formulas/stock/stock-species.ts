/**
 * What each species lives through, grows best in and is kept within, as one table.
 */
import { type FishKind, fishKinds, fishLimits } from '../water/water-species';

export interface SpeciesRow {
  readonly species: FishKind;
  readonly survivesFrom: number | undefined;
  readonly survivesTo: number | undefined;
  readonly growsBestFrom: number;
  readonly growsBestTo: number;
  readonly oxygenFloor: number;
  readonly ammonia: number;
  readonly unionized: number;
  readonly nitrite: number;
  readonly carbonDioxide: number;
  readonly phFrom: number;
  readonly phTo: number;
  readonly source: string;
  readonly known: string;
}

/** One row per species or group, or one row for the named one. Units and sources as in fishLimits. */
export function stockSpecies(species: FishKind | undefined): readonly SpeciesRow[] {
  return (species === undefined ? fishKinds : [species]).map((kind) => {
    const { survives, growsBest, ph, temperatureSource, source, carbonDioxideSource, ...rest } = fishLimits(kind);
    return {
      ...rest,
      species: kind,
      survivesFrom: survives?.[0],
      survivesTo: survives?.[1],
      growsBestFrom: growsBest[0],
      growsBestTo: growsBest[1],
      phFrom: ph[0],
      phTo: ph[1],
      source: `temperatures: ${temperatureSource}; carbon dioxide: ${carbonDioxideSource}; the rest: ${source}`,
    };
  });
}
