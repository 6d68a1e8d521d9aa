import type { Profile } from './profile';
import { readQuantity } from './quantity';

/** Reads a share; a bare number above `atMost` is refused as a percentage typed without its sign. */
export function readShare(profile: Profile, value: unknown, atMost = 1): number {
  return readQuantity(profile, 'share', value, atMost);
}
