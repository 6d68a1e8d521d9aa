/**
 * What to buy for a bank of settling drums, part by part, each calculated by the function that a builder would use.
 *
 * Lengths in m, areas in m2, volumes in m3, masses in kg.
 */
import { coneBackfill } from '../cone/cone-backfill';
import { coneMix } from '../cone/cone-mix';
import { conePattern, type PatternRow } from '../cone/cone-pattern';
import { coneRivets } from '../cone/cone-rivets';
import { cutSheets } from '../cut/cut-plan';
import { Refusal } from '../refusal';
import { tankStand } from '../tank/tank-ports';
import { tankVolume } from '../tank/tank-volume';
import { type Bank, type BankFactors, counted, fullDrum, measuredPart, type Part } from './plan-bank';
import { plumbing } from './plan-parts-plumbing';

/**
 * One row per part.
 *
 * The cone's top fits the drum's bore and its bottom the drain (`fit`). Refuses a cone that does not fit in the drum and a
 * piece that does not fit on the sheet. Counts of fittings and runs of pipe are common practice, no source.
 */
export function planParts(bank: Bank, factors: BankFactors): readonly Part[] {
  refuseTallCone(bank);
  const pattern = patternOf(bank);
  return [
    counted('drums', bank.drums, 'food grade; ask what each one held'),
    ...coneParts(bank, pattern),
    ...mixParts(bank, factors),
    ...coats(bank, factors, pattern),
    ...plumbing(bank),
    ...standParts(bank, factors),
    leakTest(bank),
  ];
}

/**
 * The parts of `planParts` that each drum needs whatever the other drums are: not the sheets, the rivets and the base mix,
 * and so without the search for a cut plan.
 */
export function partsPerDrum(bank: Bank, factors: BankFactors): readonly Part[] {
  refuseTallCone(bank);
  return [...coats(bank, factors, patternOf(bank)), ...plumbing(bank), ...standParts(bank, factors)];
}

function patternOf({ drumDiameter: top, coneBottom: bottom, coneHeight: height, pieces, lap, thickness }: Bank) {
  return conePattern({ top, bottom, height, thickness, measured: 'fit', clearance: 0, pieces, lap });
}

function refuseTallCone({ drumHeight, coneHeight, baseRise }: Bank): void {
  if (baseRise + coneHeight < drumHeight) return;
  throw new Refusal('coneHeight', 'together with the base rise it leaves no room for water; give less than {limit}', {
    figures: { limit: { value: Math.max(0, drumHeight - baseRise), like: 'dimension' } },
  });
}

function coneParts(bank: Bank, pattern: PatternRow): readonly Part[] {
  const { drums, pieces, lap, rivetSpacing, gap } = bank;
  const { slant } = pattern;
  const patterns = Array.from({ length: drums }, () => pattern);
  const { sheets } = cutSheets(patterns, bank);
  const seam = coneRivets(slant, rivetSpacing, Math.min(rivetSpacing, slant) / 2);
  const joint = lap > 0 ? '' : '; rivets need a lap';
  return [
    counted(
      'sheet for cones',
      sheets,
      { text: `CUT.SHEETS: ${drums * pieces} pieces, gap {gap:dimension}`, figures: { gap } },
      'sheet',
    ),
    counted('rivets', seam * pieces * drums, {
      text: `CONE.RIVETS: ${seam} along {slant:dimension}, seams ${pieces * drums}${joint}`,
      figures: { slant },
    }),
  ];
}

function mixParts(bank: Bank, { mixWaste, bag }: BankFactors): readonly Part[] {
  const { drums, drumDiameter, coneBottom, coneHeight, thickness, baseRise, mixParts: parts } = bank;
  const behind = coneBackfill({
    drum: drumDiameter,
    top: drumDiameter,
    bottom: coneBottom,
    height: coneHeight,
    thickness,
    measured: 'fit',
    rise: baseRise,
  });
  const { aggregate, cement, bags } = coneMix(behind * drums, parts, mixWaste, bag);
  return [
    measuredPart('base mix aggregate', 'bulk', aggregate, {
      text: `CONE.BACKFILL: {behind:bulk} per cone; CONE.MIX: ${parts} to 1, {mixWaste} added`,
      figures: { behind, mixWaste },
    }),
    counted(
      'base mix cement',
      bags,
      { text: 'CONE.MIX: {cement:mass} in bags of {bag:mass}', figures: { cement, bag } },
      'bag',
    ),
  ];
}

/** Mortar under the cones and sealant along their joints. */
function coats(bank: Bank, { mortar, bead }: BankFactors, pattern: PatternRow): readonly Part[] {
  const { drums, drumDiameter, coneBottom, pieces } = bank;
  const area = pattern.area * pieces * drums;
  const joints = (Math.PI * (drumDiameter + coneBottom) + pieces * pattern.slant) * drums;
  return [
    measuredPart('bedding mortar', 'mass', area * mortar, {
      text: 'CONE.PATTERN: {area:area}, at {mortar:holding}',
      figures: { area, mortar },
    }),
    measuredPart('sealant', 'volume', joints * bead * bead, {
      text: 'a bead of {bead:dimension} along {joints:run} of rims, drains and seams; safe for fish, and tested on polyethylene',
      figures: { bead, joints },
    }),
  ];
}

function standParts(bank: Bank, { standClearance }: BankFactors): readonly Part[] {
  const { drums, legs, drumDiameter, containerHeight, drainDrop } = bank;
  const height = tankStand(containerHeight, drainDrop, standClearance);
  return [
    measuredPart('stand posts', 'run', height * legs * drums, {
      text: `TANK.STAND: {height:dimension}, legs ${legs * drums}; a full drum weighs about {fullDrum}`,
      figures: { height, fullDrum },
    }),
    measuredPart(
      'stand tops',
      'area',
      drumDiameter * drumDiameter * drums,
      'for each drum, a square as wide as the drum',
    ),
    counted('pail', 1, 'one pail for all drums'),
  ];
}

/** Each drum is filled twice: to the brim before any mix, and with its cone in. */
function leakTest({ drums, drumDiameter, drumHeight, coneBottom, coneHeight, baseRise }: Bank): Part {
  const before = tankVolume(drumDiameter, drumHeight, 0, 0);
  const after = tankVolume(drumDiameter, drumHeight - baseRise - coneHeight, coneBottom, coneHeight);
  return measuredPart('leak-test water', 'volume', (before + after) * drums, {
    text: 'TANK.VOLUME: {before:volume} per drum before any mix, {after:volume} after',
    figures: { before, after },
  });
}
