/**
 * What to buy for a bank of settling drums, part by part, each figured by the function that a builder would call for it.
 *
 * Lengths in m, areas in m2, volumes in m3, masses in kg.
 */
import { coneBackfill } from './cone-backfill';
import { coneMix } from './cone-mix';
import { conePattern, type PatternRow } from './cone-pattern';
import { coneRivets } from './cone-rivets';
import { cutSheets } from './cut-plan';
import { type Bank, type BankFactors, counted, measured, type Part } from './plan-bank';
import { figuresLike } from './plan-figures';
import { plumbing } from './plan-parts-plumbing';
import { Refusal } from './refusal';
import { tankStand } from './tank-ports';
import { tankVolume } from './tank-volume';

/**
 * A row a part that is bought.
 *
 * The cone's top fits the drum's bore and its bottom the drain (`fit`). Cannot have a cone that does not stand in the drum,
 * or a piece that does not go on the sheet. Counts of fittings and runs of pipe are common practice, no source.
 */
export function planParts(bank: Bank, factors: BankFactors): readonly Part[] {
  refuseTallCone(bank);
  const { drumDiameter: top, coneBottom: bottom, coneHeight: height, pieces, lap, thickness, drums } = bank;
  const cone = { top, bottom, height, thickness, measured: 'fit', clearance: 0 } as const;
  const pattern = conePattern({ ...cone, pieces, lap });
  return [
    counted('drums', drums, 'drums of the bank; ask what each one held, and that it is food grade'),
    ...coneParts(bank, pattern),
    ...mixParts(bank, factors, pattern),
    ...plumbing(bank),
    ...standParts(bank, factors),
    leakTest(bank),
  ];
}

function refuseTallCone({ drumHeight, coneHeight, baseRise }: Bank): void {
  if (baseRise + coneHeight < drumHeight) return;
  throw new Refusal('coneHeight', 'with the base rise it leaves no water above; give less than {limit}', {
    figures: { limit: { value: Math.max(0, drumHeight - baseRise), like: 'dimension' } },
  });
}

function coneParts(bank: Bank, pattern: PatternRow): readonly Part[] {
  const { drums, pieces, lap, rivetSpacing: spacing, sheetLength, sheetWidth } = bank;
  const patterns = Array.from({ length: drums }, () => pattern);
  const { sheets } = cutSheets(patterns, sheetLength, sheetWidth, 0);
  const seam = coneRivets(pattern.slant, spacing, Math.min(spacing, pattern.slant) / 2);
  const lengths = figuresLike('dimension', { length: sheetLength, width: sheetWidth, spacing, slant: pattern.slant });
  const joint = lap > 0 ? '' : '; give a lap, rivets hold nothing without one';
  return [
    counted(
      'sheet for cones',
      sheets,
      { text: `CUT.SHEETS: ${drums * pieces} pieces on sheets of {length} by {width}, no gap`, figures: lengths },
      'sheet',
    ),
    counted('rivets', seam * pieces * drums, {
      text: `CONE.RIVETS: ${seam} along a seam of {slant} at {spacing}, ${pieces} a cone, ${drums} cones${joint}`,
      figures: lengths,
    }),
  ];
}

function mixParts(bank: Bank, factors: BankFactors, pattern: PatternRow): readonly Part[] {
  const { drums, drumDiameter, coneBottom, coneHeight, thickness, baseRise, mixParts: parts, pieces } = bank;
  const { mixWaste, bag, mortar, bead } = factors;
  const behindOne = coneBackfill({
    drum: drumDiameter,
    top: drumDiameter,
    bottom: coneBottom,
    height: coneHeight,
    thickness,
    measured: 'fit',
    rise: baseRise,
  });
  const mix = coneMix(behindOne * drums, parts, mixWaste, bag);
  const area = pattern.area * pieces * drums;
  const joints = (Math.PI * (drumDiameter + coneBottom) + pieces * pattern.slant) * drums;
  const bulk = figuresLike('bulk', { one: behindOne });
  return [
    measured('base mix aggregate', 'bulk', mix.aggregate, {
      text: `CONE.BACKFILL: {one} behind a cone, ${drums} cones; CONE.MIX: ${parts} to 1 with {waste} added for spilling`,
      figures: { ...bulk, ...figuresLike('share', { waste: mixWaste }) },
    }),
    counted(
      'base mix cement',
      mix.bags,
      { text: 'CONE.MIX: {cement} in bags of {bag}', figures: figuresLike('mass', { cement: mix.cement, bag }) },
      'bag',
    ),
    measured('bedding mortar', 'mass', area * mortar, {
      text: 'cones’ area by CONE.PATTERN, {area}, at {mortar} of mortar',
      figures: { ...figuresLike('area', { area }), ...figuresLike('holding', { mortar }) },
    }),
    measured('sealant', 'volume', joints * bead * bead, {
      text: 'a bead of {bead} along rims, drains and seams, {joints}; one that is safe for fish, and most do not bond to polyethylene',
      figures: { ...figuresLike('dimension', { bead }), ...figuresLike('run', { joints }) },
    }),
  ];
}

function standParts(bank: Bank, { standClearance }: BankFactors): readonly Part[] {
  const { drums, legs, drumDiameter, containerHeight, drainDrop } = bank;
  const height = tankStand(containerHeight, drainDrop, standClearance);
  return [
    measured('stand posts', 'run', height * legs * drums, {
      text: `TANK.STAND: {height} high, ${legs} legs a drum, ${drums} drums; a full drum is a quarter of a tonne`,
      figures: figuresLike('dimension', { height }),
    }),
    measured('stand tops', 'area', drumDiameter * drumDiameter * drums, {
      text: `a square of {side} a drum, ${drums} drums, with a hole for the drain`,
      figures: figuresLike('dimension', { side: drumDiameter }),
    }),
    counted('pail', 1, {
      text: 'one, {height} high, carried from drum to drum',
      figures: figuresLike('dimension', { height: containerHeight }),
    }),
  ];
}

/** Each drum is filled twice: to the brim before any mix, and with its cone in. */
function leakTest({ drums, drumDiameter, drumHeight, coneBottom, coneHeight, baseRise }: Bank): Part {
  const before = tankVolume(drumDiameter, drumHeight, 0, 0);
  const after = tankVolume(drumDiameter, drumHeight - baseRise - coneHeight, coneBottom, coneHeight);
  return measured('leak-test water', 'volume', (before + after) * drums, {
    text: `TANK.VOLUME: {before} to the brim before any mix and {after} after, ${drums} drums; less where it is passed on`,
    figures: figuresLike('volume', { before, after }),
  });
}
