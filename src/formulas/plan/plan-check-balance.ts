/**
 * Cautions over the steady state of a farm: what builds up, what no flow can hold, and figures that cannot all be right.
 */
import { STUDIED_FILMS } from '../filter/nitrification';
import { fishLimits } from '../water/water-species';
import { planBalance } from './plan-balance';
import type { Farm } from './plan-farm';
import type { PossibleCaution } from './possible-caution';

const [coolest, warmest] = STUDIED_FILMS;

export function balanceCautions(farm: Farm): readonly PossibleCaution[] {
  return [
    ...risingCautions(farm),
    neverCaution(farm),
    nitrateCaution(farm),
    filmCaution(farm),
    ...tracingCautions(farm),
  ];
}

function risingCautions({ balance, solids }: Farm): readonly PossibleCaution[] {
  const { rising } = balance.solids;
  return [
    rising > 0 && {
      text: 'Nothing takes {share} % of the solids: too fine to settle, they build up in the water without end. Add pads or gravel beds, or let water out.',
      figures: { share: (100 * rising) / solids },
    },
    balance.ammonia.rising > 0 && {
      text: 'Ammonia builds up without end: {made:daily} a day is made and {nitrified:daily} nitrified. More media, or a pump that runs.',
      figures: { made: balance.ammonia.made, nitrified: balance.ammonia.nitrified },
    },
  ];
}

function neverCaution({ needs, balance }: Farm): PossibleCaution {
  const held = balance.solids.rising > 0 ? 'solids' : undefined;
  const wastes = needs.filter(({ flow, waste }) => flow === Number.POSITIVE_INFINITY && waste !== held);
  if (wastes.length === 0) return undefined;
  const names = wastes.map(({ waste }) => waste).join(' and ');
  return `No flow, however large, keeps ${names} within the limit: more has to be removed in a pass, or less fed.`;
}

function nitrateCaution({ scenario, balance }: Farm): PossibleCaution {
  const { nitrate } = balance;
  if (nitrate.rising > 0) {
    return 'Nitrate rises without end: no water is let out, and plants and denitrification take less than is made.';
  }
  const { nitrate: limit } = fishLimits(scenario.species ?? 'warm-water');
  return (
    nitrate.level > limit && {
      text: 'Nitrate as N comes to {nitrate:concentration}, above {limit:concentration}: let more water out, or grow more plants.',
      figures: { nitrate: nitrate.level, limit },
    }
  );
}

function filmCaution({ scenario }: Farm): PossibleCaution {
  const { coldestWater } = scenario;
  if (coldestWater >= coolest && coldestWater <= warmest) return undefined;
  return {
    text: 'Nitrification is carried on to {coldestWater:temperature}, outside the {coolest:temperature} to {warmest:temperature} at which it was studied: measure your own filter.',
    figures: { coolest, warmest },
  };
}

/** More is found than is fed: some of the shares cannot be right together. */
function tracingCautions(farm: Farm): readonly PossibleCaution[] {
  const rows = planBalance(farm);
  const into = rows[0];
  const left = rows.at(-1);
  const short = (column: 'nitrogen' | 'phosphorus'): number => -(left?.[column] ?? 0) / (into?.[column] ?? 1);
  const fed = (over: number) => ({ over: 100 * (1 + over) });
  return [
    short('nitrogen') > 1e-9 && {
      text: 'Nitrogen traced is {over} % of what is fed: protein, solids share, nitrogen share, conversion and fish nitrogen cannot all be right; measure the one you trust least.',
      figures: fed(short('nitrogen')),
    },
    short('phosphorus') > 1e-9 && {
      text: 'Phosphorus traced is {over} % of what is fed: feed phosphorus, solids share, phosphorus share, conversion and fish phosphorus cannot all be right; measure the one you trust least.',
      figures: fed(short('phosphorus')),
    },
  ];
}
