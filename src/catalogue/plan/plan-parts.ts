import type { BankFactors, Part } from '../../formulas/plan/plan-bank';
import { partsPerDrum, planParts } from '../../formulas/plan/plan-parts';
import type { Profile } from '../../units/profile';
import type { MixedCell } from '../argument';
import { coefficient } from '../coefficients/all';
import { cementBag } from '../cone-arguments';
import { inputTable, type OpenCell } from '../reading/input-table';
import { namedColumn } from '../reading/named-column';
import { withNamedRefusals } from '../reading/named-refusals';
import { bankInputs } from './bank-inputs';

export interface PartRow {
  readonly item: string;
  readonly quantity: MixedCell;
  readonly unit: string;
  readonly how: MixedCell;
}

const titles = ['input', 'bank', 'name'] as const;

function factorsOf(profile: Profile): BankFactors {
  return {
    mixWaste: coefficient('mix waste').typical,
    bag: cementBag(profile),
    standClearance: coefficient('stand clearance').typical,
    mortar: coefficient('bedding mortar').typical,
    bead: coefficient('sealant bead').typical,
  };
}

/** The name of an argument in formulas, and its name in the bank. */
const renamed = {
  top: 'drumDiameter',
  drum: 'drumDiameter',
  bottom: 'coneBottom',
  height: 'coneHeight',
  edge: 'rivetSpacing',
  spacing: 'rivetSpacing',
  patterns: 'pieces',
} as const;

/** The bill of materials of a bank, each part in the unit in which it is priced. */
export function bankParts(bank: readonly (readonly OpenCell[])[], profile: Profile): readonly PartRow[] {
  return partRows(bank, profile, planParts);
}

/** The parts that each drum needs whatever the other drums are: fittings, pipe, mortar, sealant, stand. */
export function partsOfDrum(bank: readonly (readonly OpenCell[])[], profile: Profile): readonly PartRow[] {
  return partRows(bank, profile, partsPerDrum);
}

function partRows(
  bank: readonly (readonly OpenCell[])[],
  profile: Profile,
  partsOf: typeof planParts,
): readonly PartRow[] {
  const table = inputTable('bank', bankInputs, bank, titles);
  const { values } = namedColumn(bankInputs, table, 0, 'bank: ', profile);
  const parts = withNamedRefusals({ place: 'bank: ', inputs: bankInputs, renamed, profile, values }, () =>
    partsOf(values, factorsOf(profile)),
  );
  return parts.map((part) => partRow(part, profile));
}

function partRow({ item, quantity, countedPart: counted, how }: Part, profile: Profile): PartRow {
  return { item, quantity, unit: counted || profile.units[quantity.kind].symbol, how };
}
