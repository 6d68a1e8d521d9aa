import { Refusal } from '../refusal';

/**
 * Time until oxygen falls to a floor if aeration and flow stop, s: V (oxygen - floor) / (demand x peak).
 *
 * V water, m3; oxygen and floor, kg/m3; demand of fish and bacteria, a day's mean in kg/s; peak the ratio of the worst hour to
 * that mean. Leaves out oxygen from air and plants, so the true time is longer; fish that
 * crowd and panic use more oxygen. Backup air must run within half of it. Refuses oxygen at or below the floor.
 * Source: mass balance.
 */
export function oxygenTime(volume: number, oxygen: number, floor: number, demand: number, peak: number): number {
  if (oxygen <= floor) {
    throw new Refusal('oxygen', 'it is already at or below the floor ({floor}), so no time is left; aerate now', {
      figures: { floor },
    });
  }
  return (volume * (oxygen - floor)) / (demand * peak);
}
