/** Changes that no test can or should notice, with the reason. A place is a file, or a file and a line. */
export interface Harmless {
  readonly place: string;
  /** Part of what the code is changed to. */
  readonly change: string;
  readonly reason: string;
}

const starts = 'Newton’s method reaches the same root from any near start; only a step or two more are taken.';
const bracket = 'The search for an end of the bracket passes it from any start; only a step or two more are taken.';
const ends = 'Where the start is a number both ends are found, else neither.';
const zero = 'What follows gives 0 there as well; the check only says so.';
const noLap = 'A lap of 0 is not over any width.';
const never = 'The type asks for the check, but the code before it leaves no such case.';
const rounding = 'Both sides of the bound give the same figure there, so that it may belong to either.';

export const harmless: readonly Harmless[] = [
  { place: 'src/formulas/air/air.ts:47:10', change: 'aerator.target > saturation', reason: rounding },
  { place: 'src/formulas/air/air-test.ts:67:17', change: 'first.time', reason: never },
  { place: 'src/formulas/air/air-test.ts:74:5', change: '<=', reason: 'Of two rates as good, either may be taken.' },
  { place: 'src/formulas/air/air-test.ts:106:12', change: 'gradient(left) <= 0', reason: rounding },
  { place: 'src/formulas/air/air-test.ts:106:34', change: 'gradient(right) > 0', reason: rounding },
  { place: 'src/formulas/air/air-test.ts:111:5', change: 'gradient(low) <= 0', reason: rounding },
  { place: 'src/formulas/air/air-test.ts:122:27', change: 'log[i - 1].time', reason: never },
  { place: 'src/formulas/air/air-test.ts:135:17', change: 'log[0].oxygen', reason: never },
  { place: 'src/formulas/air/air-test.ts:136:16', change: 'log.at(-1).oxygen', reason: never },
  {
    place: 'src/formulas/cone/cone-pattern.ts:46:18',
    change: 'true',
    reason: 'A rectangle has no radii and no angle, so that they are blank either way.',
  },
  {
    place: 'src/formulas/cone/cone-pattern.ts:95:7',
    change: 'false',
    reason: 'A rectangle has no angle, so that no lap comes round it either way.',
  },
  { place: 'src/formulas/cone/cone-pattern.ts:111:10', change: 'true', reason: noLap },
  { place: 'src/formulas/cone/cone-pattern.ts:111:10', change: 'lap >= 0', reason: noLap },
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
  { place: 'src/formulas/pipe/pipe-flow.ts:61:30', change: '', reason: bracket },
  { place: 'src/formulas/pipe/pipe-flow.ts:61:61', change: 'fixed -', reason: bracket },
  { place: 'src/formulas/pipe/pipe-flow.ts:61:69', change: 'length * bore', reason: bracket },
  { place: 'src/formulas/pipe/pipe-flow.ts:63:26', change: '', reason: bracket },
  { place: 'src/formulas/pipe/pipe-flow.ts:63:61', change: 'excess(at) < 0', reason: rounding },
  { place: 'src/formulas/pipe/pipe-flow.ts:64:57', change: 'excess(at) > 0', reason: rounding },
  { place: 'src/formulas/pipe/pipe-flow.ts:65:7', change: '&&', reason: ends },
  { place: 'src/formulas/pipe/pipe-flow.ts:65:7', change: 'false', reason: ends },
  { place: 'src/formulas/pipe/pipe-flow.ts:65:28', change: 'false', reason: ends },
  {
    place: 'src/formulas/pipe/pipe-flow.ts:76:31',
    change: '',
    reason: 'The search ends by its other conditions: at no speed nothing is lost, and at the greatest everything.',
  },
  { place: 'src/formulas/pipe/pipe-flow.ts:76:70', change: 'i--', reason: 'The search ends by its other conditions.' },
  { place: 'src/formulas/pipe/pump-curve.ts:32:7', change: 'false', reason: 'Without a first point there is no last.' },
  { place: 'src/formulas/pipe/pump-curve.ts:73', change: 'false', reason: zero },
  { place: 'src/formulas/pipe/pump-curve.ts:73', change: '&&', reason: zero },
  { place: 'src/formulas/pipe/pump-curve.ts:83:7', change: 'slope >= 0', reason: zero },
  { place: 'src/formulas/pipe/pump-curve.ts:83:20', change: 'false', reason: zero },
  { place: 'src/formulas/pipe/pump-curve.ts:89:39', change: 'flow < to.flow', reason: rounding },
  { place: 'src/formulas/pipe/pump-curve.ts:90', change: 'false', reason: never },
  {
    place: 'src/formulas/tank/tank-drain.ts:48:7',
    change: 'true',
    reason: 'A level that is not a number adds nothing to the integral, as the level 0 does.',
  },
  { place: 'src/formulas/tank/tank-ports.ts:90:7', change: 'false', reason: 'Cosine and sine of 0 are exact.' },
  { place: 'src/formulas/tank/tank-drain.ts:69', change: 'level >= coneHeight', reason: rounding },
  { place: 'src/formulas/tank/tank-shape.ts:42', change: 'held > cone', reason: rounding },
];
