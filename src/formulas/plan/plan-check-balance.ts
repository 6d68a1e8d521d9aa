/**
 * Cautions about the steady state of a farm: what builds up, limits that no flow can keep, figures that cannot all be right.
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
    ammoniaLevelCaution(farm),
    nitrateCaution(farm),
    filmCaution(farm),
    ...tracingCautions(farm),
  ];
}

function risingCautions({ balance, solids }: Farm): readonly PossibleCaution[] {
  const { rising } = balance.solids;
  return [
    rising > 0 && {
      text: 'Nothing removes {share} % of the solids: they are too fine to settle and build up in the water without end. Add pads or gravel beds, or let water out.',
      figures: { share: (100 * rising) / solids },
    },
    balance.ammonia.rising > 0 && {
      text: 'Ammonia builds up without end: {made:daily} is made and {nitrified:daily} is nitrified. Add media, or let the pump run.',
      figures: { made: balance.ammonia.made, nitrified: balance.ammonia.nitrified },
    },
  ];
}

function neverCaution({ needs, balance }: Farm): PossibleCaution {
  const held = balance.solids.rising > 0 ? 'solids' : undefined;
  const wastes = needs.filter(({ flow, waste }) => flow === Number.POSITIVE_INFINITY && waste !== held);
  if (wastes.length === 0) return undefined;
  const names = wastes.map(({ waste }) => waste).join(' and ');
  const media = names.includes('ammonia') ? 'add media, ' : '';
  return `No flow and no number of drums keeps ${names} within the limit, and drums needed is only for the flow that runs: ${media}remove more per pass, or feed less.`;
}

/** What the other cautions lead to, in the figure that a test kit shows. */
function ammoniaLevelCaution({ scenario, balance: { ammonia } }: Farm): PossibleCaution {
  return (
    Number.isFinite(ammonia.level) &&
    ammonia.level > scenario.ammoniaLimit * (1 + 1e-9) && {
      text: 'Total ammonia nitrogen reaches {level:concentration} in the tank, above the limit of {ammoniaLimit:concentration}: it harms or kills the fish.',
      figures: { level: ammonia.level },
    }
  );
}

function nitrateCaution({ scenario, balance }: Farm): PossibleCaution {
  const { nitrate } = balance;
  if (nitrate.rising > 0) {
    return 'Nitrate rises without end: no water is let out, and plants and denitrification remove less than is made. Let water out, or grow more plants.';
  }
  const { nitrate: limit } = fishLimits(scenario.species ?? 'warm-water');
  return (
    nitrate.level > limit && {
      text: 'Nitrate as N reaches {nitrate:concentration}, above the limit of {limit:concentration}: let more water out, or grow more plants.',
      figures: { nitrate: nitrate.level, limit },
    }
  );
}

function filmCaution({ scenario }: Farm): PossibleCaution {
  const { coldestWater } = scenario;
  if (coldestWater >= coolest && coldestWater <= warmest) return undefined;
  return {
    text: 'The nitrification rate at {coldestWater:temperature} is an extrapolation: it was studied from {coolest:temperature} to {warmest:temperature}. Measure your own filter.',
    figures: { coolest, warmest },
  };
}

/** If more is traced than is fed, the shares cannot all be right. */
function tracingCautions(farm: Farm): readonly PossibleCaution[] {
  const rows = planBalance(farm);
  const traced = (nutrient: 'nitrogen' | 'phosphorus', inFeed: string): PossibleCaution => {
    const over = -(rows.at(-1)?.[nutrient] ?? 0) / (rows[0]?.[nutrient] ?? 1);
    return (
      over > 1e-9 && {
        text: `The plan traces {over} % of the ${nutrient} fed: ${inFeed}, solids share, ${nutrient} share, conversion and fish ${nutrient} cannot all be right. Measure the one you trust least.`,
        figures: { over: 100 * (1 + over) },
      }
    );
  };
  return [traced('nitrogen', 'protein'), traced('phosphorus', 'feed phosphorus')];
}
