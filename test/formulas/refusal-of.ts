import { Refusal } from '../../src/formulas/refusal';

/** The refusal that a call ends in, to be looked at as a whole; a call that is taken, or that fails otherwise, fails the test. */
export function refusalOf(run: () => unknown): Refusal {
  try {
    run();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('was not refused');
}
