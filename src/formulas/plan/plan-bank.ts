/**
 * A bank of settling drums on paper, and how its parts are put. Lengths in m, masses in kg.
 */
import type { Caution } from '../caution';

/** A drum of about 210 L full of water and base mix: about 230 kg or 500 lb. Common practice, no source. */
export const fullDrum = { value: 228, like: 'mass', digits: 2 } as const;

export const wallSeals = ['grommet', 'bulkhead'] as const;

export interface Bank {
  readonly drums: number;
  readonly drumDiameter: number;
  readonly drumHeight: number;
  readonly coneBottom: number;
  readonly coneHeight: number;
  readonly pieces: number;
  readonly lap: number;
  readonly thickness: number;
  readonly rivetSpacing: number;
  readonly sheetLength: number;
  readonly sheetWidth: number;
  /** Kept between pieces and from the sheet's edge. */
  readonly gap: number;
  /** Cone's bottom above the drum floor. */
  readonly baseRise: number;
  /** Light aggregate to 1 of cement. */
  readonly mixParts: number;
  /** As a plumber calls it. */
  readonly pipeSize: string;
  readonly wallSeal: (typeof wallSeals)[number];
  readonly containerHeight: number;
  readonly drainDrop: number;
  readonly legs: number;
}

export interface BankFactors {
  /** Share of base mix added for spilling, and cement in a bag, kg. */
  readonly mixWaste: number;
  readonly bag: number;
  readonly standClearance: number;
  /** Mortar on a unit of cone, kg/m2. */
  readonly mortar: number;
  /** Width and height of a bead of sealant, m. */
  readonly bead: number;
}

export type PartKind = 'count' | 'bulk' | 'mass' | 'volume' | 'run' | 'area';

export interface Part {
  /** Never changes, so that a price list finds it. */
  readonly item: string;
  readonly quantity: { readonly kind: PartKind; readonly si: number };
  /** What one is called, where it is counted. */
  readonly countedPart: string;
  readonly how: Caution;
}

/** A part that is counted. */
export function counted(item: string, quantity: number, how: Caution | string, unit = 'each'): Part {
  return { item, quantity: { kind: 'count', si: quantity }, countedPart: unit, how: sentence(how) };
}

/** A part that is measured. */
export function measuredPart(item: string, kind: PartKind, quantity: number, how: Caution | string): Part {
  return { item, quantity: { kind, si: quantity }, countedPart: '', how: sentence(how) };
}

function sentence(how: Caution | string): Caution {
  return typeof how === 'string' ? { text: how } : how;
}
