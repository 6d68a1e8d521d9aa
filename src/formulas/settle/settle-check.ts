/**
 * Cautions about a bank of settling drums, in sentences.
 */
import type { Caution } from '../caution';
import { pipeVelocity } from '../pipe/pipe-flow';
import { Refusal } from '../refusal';
import { fasterThan, settleDrums, settleOverflow } from './settle-drums';

export interface SettlingBank {
  readonly flow: number;
  readonly diameter: number;
  readonly count: number;
  /** Bore of the pipe into each drum. */
  readonly bore: number;
  /** Fastest overflow rate at which the capture that is counted on was measured, m/s. */
  readonly overflowLimit: number;
  /** Inlet velocities at which solids neither settle in the pipe nor break up, m/s. */
  readonly slowestInlet: number;
  readonly fastestInlet: number;
}

/**
 * Cautions about overflow rate and inlet velocity, or one line that says that nothing was found.
 *
 * The flow is shared evenly by the drums, each with its own inlet. Source: Davidson and Summerfelt, Aquacultural Engineering 33:47
 * (2005), for the overflow limit; inlet velocities are common practice, no source.
 */
export function settleCheck(bank: SettlingBank): readonly Caution[] {
  const { flow, diameter, count, bore, overflowLimit } = bank;
  if (bore >= diameter) {
    throw new Refusal('bore', 'give less than the drum’s diameter ({diameter})', { figures: { diameter } });
  }
  const overflow = settleOverflow(flow, diameter, count);
  const inlet = pipeVelocity(flow / count, bore);
  const figures = { ...bank, overflow, inlet, drums: settleDrums(flow, diameter, overflowLimit) };
  const found: string[] = [];
  if (fasterThan(overflow, overflowLimit)) {
    found.push(
      'Water rises at {overflow:loading}, faster than the {overflowLimit} at which settlers of this kind were measured (Davidson and Summerfelt 2005), so they will capture less than measured: use {drums} drums side by side, or less flow.',
    );
  }
  if (inlet > bank.fastestInlet) {
    found.push(
      'Water enters at {inlet:velocity}. That breaks solids into pieces too fine to settle and stirs up settled solids: use a wider inlet, to stay below {fastestInlet:velocity} (common practice, no source).',
    );
  }
  if (flow > 0 && inlet < bank.slowestInlet) {
    found.push(
      'Water enters at {inlet:velocity}, so slowly that solids settle in the pipe and rot there: use a narrower inlet, to stay above {slowestInlet:velocity} (common practice, no source), or flush it often.',
    );
  }
  if (found.length === 0) {
    found.push(
      'Nothing found: water rises at {overflow:loading} (limit {overflowLimit}) and enters at {inlet:velocity}.',
    );
  }
  return found.map((text) => ({ text, figures }));
}
