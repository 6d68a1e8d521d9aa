/**
 * Changes that no test can or should notice, by file, each as the report prints it and with the reason.
 */
export type Harmless = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Reasons that several changes share. */
export const starts = 'Newton’s method reaches the same root from any near start; only a step or two more are taken.';
export const bracket =
  'The search for an end of the bracket passes it from any start; only a step or two more are taken.';
export const ends = 'Where the start is a number both ends are found, else neither.';
export const zero = 'What follows gives 0 there as well; the check only says so.';
export const noLap = 'A lap of 0 is not over any width.';
export const halved = 'Once no number is left between the ends, further halving changes nothing.';
export const never = 'The type asks for the check, but the code before it leaves no such case.';
export const rounding = 'Both sides of the bound give the same figure there, so that it may belong to either.';
export const stops = 'The search ends by its other condition.';
export const more = 'A step that changes nothing more may be taken or not.';
export const bound = 'Only rounding decides whether a figure is the bound itself; a little to either side is tested.';
export const still = 'A velocity of 0 is refused before it gets here.';
export const left = 'Below pH 9 a dose is left, however small, unless rounding takes it.';
export const fresh = 'Without salt the long way adds 0 and gives the same figure; the short one is only quicker.';
export const absent = 'A comparison with a reading or bound that is not there is false by itself.';
export const interpolates =
  'Whether interpolation is tried or not, the root is the same; a few steps more or less are taken.';
export const behind = 'Behind the last figure there is none, and what is none is left out.';
export const quick = 'The check only saves time; the long way gives the same.';
export const filled = 'Every place of the list is filled afterwards.';
export const first = 'Of the list only the places behind the first are used.';
export const kept = 'It decides only how long what was read is remembered.';
export const onlyRefusals = 'Nothing but a refusal is thrown there; anything else would be a fault.';
