/**
 * The poisonous, un-ionized part of the ammonia in water.
 */

/** Emerson's own zero of Celsius, K: his constants were fitted with it, and 273.15 would give values 0.3 to 0.4 % lower. */
const EMERSON_ZERO = 273.2;

/**
 * pK of the ammonium ion, 0.09018 + 2729.92/(t + 273.2) + (0.1552 - 0.0003142 t) I.
 *
 * t in °C, 0 to 40; I formal ionic strength of sea water, mol/kg, 19.9273 S / (1000 - 1.005109 S), S practical salinity, 0 to 45. For a
 * meter set in ordinary (NBS) buffers. Source: Emerson et al., Journal of the Fisheries Research Board of Canada 32:2379 (1975);
 * salt, Khoo, Culberson and Bates, Journal of Solution Chemistry 6:281 (1977), on which Bower and Bidwell (1978) rest.
 */
function ammoniumConstant(temperature: number, salinity: number): number {
  const fresh = 0.09018 + 2729.92 / (temperature + EMERSON_ZERO);
  if (salinity === 0) return fresh;
  const ionicStrength = (19.9273 * salinity) / (1000 - 1.005109 * salinity);
  return fresh + (0.1552 - 3.142e-4 * temperature) * ionicStrength;
}

/** Share of total ammonia nitrogen that is un-ionized, 1/(1 + 10^(pK - pH)). Range and sources as for ammoniumConstant. */
export function unionizedShare(ph: number, temperature: number, salinity: number): number {
  return 1 / (1 + 10 ** (ammoniumConstant(temperature, salinity) - ph));
}

/**
 * Un-ionized ammonia nitrogen in a reading of total ammonia nitrogen, kg N/m3 both.
 *
 * Range and sources as for ammoniumConstant.
 */
export function waterAmmonia(ammonia: number, ph: number, temperature: number, salinity: number): number {
  return ammonia * unionizedShare(ph, temperature, salinity);
}

/** Total ammonia nitrogen at which the un-ionized part reaches a limit, kg N/m3 both; the inverse of waterAmmonia. Range and sources as for it. */
export function waterLimit(unionized: number, ph: number, temperature: number, salinity: number): number {
  return unionized / unionizedShare(ph, temperature, salinity);
}
