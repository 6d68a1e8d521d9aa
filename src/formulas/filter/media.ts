/**
 * Biofilter media: surface in a bulk of each, and how fast a film on it nitrifies.
 */

import { fao, timmons } from '../citations';
import { type Range, range } from '../numeric/range';
import { DAY } from '../numeric/time';

/** A gram a square meter a day, in SI. */
const RATE = 1e-3 / DAY;

export interface Media {
  readonly name: string;
  /** Specific surface, m2/m3. */
  readonly surface: Range;
  /** Areal nitrification at 20 to 30 °C, kg N/m2/s. */
  readonly rateLow: number;
  readonly rateHigh: number;
  readonly source: string;
  readonly known: 'memory';
}

const gravel = `surface: ${fao}, table 4.1; rate: its appendix 4`;
const crab = 'rate: Crab et al., Aquaculture 270:1 (2007)';
const filters = `surface: ${timmons}; ${crab}`;
const design = 'rate: range of design practice';

const media = (
  name: string,
  [low, typical, high]: readonly [number, number, number],
  [slow, fast]: readonly [number, number],
  source: string,
): Media => ({
  name,
  surface: range(low, typical, high),
  rateLow: slow * RATE,
  rateHigh: fast * RATE,
  source,
  known: 'memory',
});

/** Rates are grams of nitrogen, 0.469 from 0.57 of ammonia; those of one kind of filter belong to its usual media. */
export const mediaTable: readonly Media[] = [
  media('gravel', [150, 175, 200], [0.2, 0.469], gravel),
  media('expanded clay', [250, 275, 300], [0.2, 0.469], gravel),
  media('tuff', [300, 300, 300], [0.2, 0.469], gravel),
  media('moving bed', [450, 500, 800], [0.2, 1.0], `surface: makers’ figures for carriers; ${design}`),
  media('trickling', [100, 160, 250], [0.24, 0.64], filters),
  media('rotating contactor', [150, 200, 260], [0.19, 0.79], filters),
  media(
    'bead',
    [1000, 1145, 1475],
    [0.3, 0.6],
    `surface: Malone and Beecher, Aquacultural Engineering 22:57 (2000); ${crab}`,
  ),
  media(
    'fluidized sand',
    [4000, 8000, 20000],
    [0.24, 0.24],
    `surface: Summerfelt, Aquacultural Engineering 34:275 (2006); ${crab}`,
  ),
];

export const mediaNames: readonly string[] = mediaTable.map(({ name }) => name);

/** A medium by its name in any spelling of case and spaces; undefined if there is none. */
export function findMedia(name: string): Media | undefined {
  const wanted = name.trim().toLowerCase();
  return mediaTable.find((one) => one.name.toLowerCase() === wanted);
}
