/**
 * Standard atomic weights and the mass ratios that follow from them, g/mol and plain ratios.
 *
 * Source: IUPAC abridged standard atomic weights 2021 (Prohaska et al., Pure and Applied Chemistry 94:573, 2022).
 */
export const atomicMass = {
  hydrogen: 1.008,
  carbon: 12.011,
  nitrogen: 14.007,
  oxygen: 15.999,
  sodium: 22.98976928,
  magnesium: 24.305,
  phosphorus: 30.973761998,
  sulfur: 32.06,
  chlorine: 35.45,
  potassium: 39.0983,
  calcium: 40.078,
} as const;

const { hydrogen, carbon, nitrogen, oxygen, phosphorus, potassium, calcium } = atomicMass;

export const molarMass = {
  ammonia: nitrogen + 3 * hydrogen,
  ammonium: nitrogen + 4 * hydrogen,
  nitrite: nitrogen + 2 * oxygen,
  nitrate: nitrogen + 3 * oxygen,
  oxygen: 2 * oxygen,
  carbonDioxide: carbon + 2 * oxygen,
  calciumCarbonate: calcium + carbon + 3 * oxygen,
  phosphate: 2 * phosphorus + 5 * oxygen,
  potash: 2 * potassium + oxygen,
} as const;

/** kg NH3 per kg N: a rate or reading published as ammonia is divided by this. */
export const AMMONIA_PER_NITROGEN = molarMass.ammonia / nitrogen;

/** kg P2O5 per kg P, 2.2914. */
export const PHOSPHATE_PER_PHOSPHORUS = molarMass.phosphate / (2 * phosphorus);

/** kg K2O per kg K, 1.2046. */
export const POTASH_PER_POTASSIUM = molarMass.potash / (2 * potassium);

/** kg CO2 per kg O2 breathed at a respiratory quotient of 1, 44/32. */
export const CARBON_DIOXIDE_PER_OXYGEN = molarMass.carbonDioxide / molarMass.oxygen;

/** kg O2 per kg N oxidized to nitrate without cell growth: NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, 4.57. */
export const OXYGEN_PER_NITROGEN = (2 * molarMass.oxygen) / nitrogen;

/** kg alkalinity as CaCO3 per kg N oxidized to nitrate without cell growth: two H+ neutralized, 7.15. */
export const ALKALINITY_PER_NITROGEN = molarMass.calciumCarbonate / nitrogen;

/** kg N per kg protein, the convention of feed analysis (N x 6.25). */
export const NITROGEN_IN_PROTEIN = 0.16;
