/**
 * Head loss of fittings, by a plumber's names for them.
 */

import { fullyTurbulentFactor } from './friction';

/** Loss of a set of fittings: a K of its own, and equivalent lengths in bores, each worth K = length x fully turbulent factor. */
export interface FittingLoss {
  readonly coefficient: number;
  readonly bores: number;
}

export const noFittings: FittingLoss = { coefficient: 0, bores: 0 };

const bores = (length: number): FittingLoss => ({ coefficient: 0, bores: length });
const coefficient = (k: number): FittingLoss => ({ coefficient: k, bores: 0 });

/**
 * Equivalent lengths in bores, Crane Technical Paper 410, pages A-27 to A-30, of standard fittings of full bore, valves open; the
 * smallest losses, of couplings and unions, from Perry's Chemical Engineers' Handbook, table 6-4. A sweep is a bend of 90° whose
 * radius is 1.5 bores (A-29, from memory). Other tables differ as much as three times: Hydraulic Institute has 1.00 for a screwed 2 in elbow where Crane has 0.57.
 */
export const fittingLosses: Readonly<Record<string, FittingLoss>> = {
  elbow: bores(30),
  'elbow 45': bores(16),
  sweep: bores(14),
  'return bend': bores(50),
  tee: bores(60),
  'tee run': bores(20),
  'ball valve': bores(3),
  'gate valve': bores(8),
  'butterfly valve': bores(45),
  'check valve': bores(100),
  'angle valve': bores(150),
  'globe valve': bores(340),
  coupling: coefficient(0.04),
  union: coefficient(0.04),
  entrance: coefficient(0.5),
  exit: coefficient(1),
};

/** K of a set of fittings in a pipe of a bore, m. */
export function fittingCoefficient(loss: FittingLoss, bore: number): number {
  return loss.bores === 0 ? loss.coefficient : loss.coefficient + loss.bores * fullyTurbulentFactor(bore);
}
