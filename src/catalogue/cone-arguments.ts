import { measuredWays } from '../formulas/cone/cone-mid-plane';
import type { Profile } from '../units/profile';

/** Arguments and cautions that the CONE functions share. */
export const geometry = 'Geometry of the frustum and of its development';
export const dust =
  'Silica and light-aggregate dust harm lungs, wet cement burns skin and fresh cement raises pH. Wear mask, gloves and goggles; leach and test before adding fish. The maker’s sheet comes first.';
export const plastic =
  'Hot plastic burns and gives off fumes. Never heat or cut a closed drum, or one that held anything flammable.';
export const degree = Math.PI / 180;

export const top = { kind: 'dimension', above: 0, meaning: 'diameter of the cone at the top' } as const;
export const bottom = { kind: 'dimension', atLeast: 0, meaning: 'diameter at the bottom; 0 for a point' } as const;
export const height = { kind: 'dimension', above: 0, meaning: 'height between the rims' } as const;
export const thickness = { kind: 'dimension', atLeast: 0, default: 0, meaning: 'thickness of the sheet' } as const;
export const measured = {
  choice: measuredWays,
  default: 'fit',
  meaning: 'what you measured: fit (bores it must fit), inside, outside, middle',
} as const;
export const pieces = {
  kind: 'count',
  atLeast: 1,
  atMost: 60,
  whole: true,
  default: 1,
  meaning: 'equal pieces that make up the cone',
} as const;
export const lap = { kind: 'dimension', atLeast: 0, default: 0, meaning: 'width of the strip for the seam' } as const;
export const mixParts = {
  kind: 'number',
  above: 0,
  atMost: 20,
  meaning: 'parts of light aggregate to 1 of cement',
} as const;
/** Cement in a bag as it is sold, kg: 94 lb, or 25 kg. */
export function cementBag(profile: Profile): number {
  return profile.name === 'US' ? 94 * 0.45359237 : 25;
}
export const measuredNotes = [
  'With wall angle a, mid-plane diameter = outside - thickness × sin a = inside + thickness × sin a, for rims cut square.',
  'With `fit`, the top is the bore that the rim must go into and the bottom is the drain’s bore.',
];
