/** Changes that no test can or should notice, with the reason. A place is a file, or a file and a line. */
export interface Harmless {
  readonly place: string;
  /** Part of what the code is changed to. */
  readonly change: string;
  readonly reason: string;
}

const starts = 'Newton’s method reaches the same root from any near start; only a step or two more are taken.';
const rounding = 'Both sides of the bound give the same figure there, so that it may belong to either.';

export const harmless: readonly Harmless[] = [
  { place: 'src/formulas/pipe/friction.ts:20', change: '', reason: starts },
  { place: 'src/formulas/pipe/friction.ts:21', change: 'step <= 8', reason: starts },
  { place: 'src/formulas/pipe/friction.ts:21', change: 'step--', reason: 'The search ends by its other condition.' },
  {
    place: 'src/formulas/pipe/friction.ts:25',
    change: '',
    reason: 'A step that changes nothing more may be taken or not.',
  },
  { place: 'src/formulas/pipe/friction.ts:37', change: 'reynolds < LAMINAR', reason: rounding },
  { place: 'src/formulas/pipe/friction.ts:38', change: 'reynolds > TURBULENT', reason: rounding },
  { place: 'src/formulas/tank/tank-drain.ts:69', change: 'level >= coneHeight', reason: rounding },
  { place: 'src/formulas/tank/tank-shape.ts:42', change: 'held > cone', reason: rounding },
];
