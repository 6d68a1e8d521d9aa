import { buildSteps } from './build-steps';
import { plantSteps } from './plant-steps';
import type { Step } from './step';

export type { Step } from './step';

/** In the order of the work. */
export const steps: readonly Step[] = [...buildSteps, ...plantSteps];
