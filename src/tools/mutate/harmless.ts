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
const halved = 'Once no number is left between the ends, further halving changes nothing.';
const never = 'The type asks for the check, but the code before it leaves no such case.';
const rounding = 'Both sides of the bound give the same figure there, so that it may belong to either.';
const stops = 'The search ends by its other condition.';
const more = 'A step that changes nothing more may be taken or not.';
const bound = 'Only rounding decides whether a figure is the bound itself; a little to either side is tested.';
const still = 'A velocity of 0 is refused before it gets here.';
const left = 'Below pH 9 a dose is left, however small, unless rounding takes it.';
const fresh = 'Without salt the long way adds 0 and gives the same figure; the short one is only quicker.';
const absent = 'A comparison with a reading or bound that is not there is false by itself.';
const interpolates = 'Whether interpolation is tried or not, the root is the same; a few steps more or less are taken.';
const behind = 'Behind the last figure there is none, and what is none is left out.';

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
  { place: 'src/formulas/cone/cone-marks.ts:44:10', change: '&&', reason: never },
  { place: 'src/formulas/cone/cone-marks.ts:44:10', change: 'false', reason: never },
  { place: 'src/formulas/cone/cone-marks.ts:44:33', change: 'false', reason: never },
  { place: 'src/formulas/cone/cone-mid-plane.ts:79:7', change: 'false', reason: 'Halving finds the same angle.' },
  { place: 'src/formulas/cone/cone-mid-plane.ts:81:5', change: '<=', reason: rounding },
  { place: 'src/formulas/cone/cone-mid-plane.ts:91:36', change: '<= ratio', reason: rounding },
  { place: 'src/formulas/cone/cone-mid-plane.ts:103', change: 'step <= HALVINGS', reason: halved },
  { place: 'src/formulas/cone/cone-mid-plane.ts:103', change: 'step--', reason: halved },
  { place: 'src/formulas/cone/cone-mid-plane.ts:105', change: 'false', reason: halved },
  { place: 'src/formulas/cone/cone-mid-plane.ts:105', change: '&&', reason: halved },
  { place: 'src/formulas/cone/cone-mid-plane.ts:105', change: 'middle < low', reason: halved },
  { place: 'src/formulas/cone/cone-mid-plane.ts:105', change: 'middle > high', reason: halved },
  {
    place: 'src/formulas/numeric/latin-hypercube.ts:11',
    change: 'last >= 0',
    reason: 'The first is exchanged with itself.',
  },
  { place: 'src/formulas/numeric/least-squares.ts:17', change: '', reason: stops },
  {
    place: 'src/formulas/numeric/least-squares.ts:22',
    change: 'sum <= best',
    reason: 'Of two points as good, either may be taken.',
  },
  { place: 'src/formulas/numeric/least-squares.ts:23', change: '', reason: more },
  { place: 'src/formulas/numeric/least-squares.ts:28', change: 'false', reason: more },
  {
    place: 'src/formulas/numeric/least-squares.ts:63',
    change: '- 1e-300',
    reason: 'It only keeps the determinant from 0, on either side of it.',
  },
  {
    place: 'src/formulas/numeric/least-squares.ts:64',
    change: '- 1e-300',
    reason: 'It only keeps the determinant from 0, on either side of it.',
  },
  { place: 'src/formulas/numeric/normal.ts:8:22', change: 'x >= 0', reason: never },
  { place: 'src/formulas/numeric/normal.ts:10', change: 'z <= 7.07', reason: rounding },
  { place: 'src/formulas/numeric/normal.ts:11', change: 'x >= 0', reason: rounding },
  { place: 'src/formulas/numeric/percentile.ts:11', change: 'share <= 1e-12', reason: bound },
  {
    place: 'src/formulas/numeric/root.ts:21:9',
    change: 'fb >= 0',
    reason: 'A root that is met ends the search before.',
  },
  {
    place: 'src/formulas/numeric/root.ts:21:20',
    change: 'fc >= 0',
    reason: 'A root that is met ends the search before.',
  },
  { place: 'src/formulas/numeric/root.ts:24', change: 'b + a', reason: interpolates },
  {
    place: 'src/formulas/numeric/root.ts:27',
    change: 'Math.abs(fc) <= Math.abs(fb)',
    reason: 'Of two points as near, either may be taken.',
  },
  { place: 'src/formulas/numeric/root.ts:33', change: 'Math.abs(half) < close', reason: bound },
  { place: 'src/formulas/numeric/root.ts:34:28', change: 'true', reason: interpolates },
  { place: 'src/formulas/numeric/root.ts:34:28', change: 'Math.abs(e) > close', reason: interpolates },
  { place: 'src/formulas/numeric/root.ts:34:52', change: '>=', reason: interpolates },
  { place: 'src/formulas/numeric/root.ts:36', change: '<=', reason: bound },
  { place: 'src/formulas/numeric/root.ts:36', change: 'Math.max', reason: interpolates },
  { place: 'src/formulas/numeric/root.ts:36', change: '+ close', reason: interpolates },
  { place: 'src/formulas/numeric/root.ts:45', change: '>= close', reason: rounding },
  {
    place: 'src/formulas/numeric/triangle.ts:24',
    change: 'high < low',
    reason: 'Between equal ends the long way gives that figure too.',
  },
  { place: 'src/formulas/numeric/triangle.ts:34', change: 'p < below', reason: rounding },
  { place: 'src/formulas/numeric/variance-share.ts:16', change: 'at <= count', reason: behind },
  {
    place: 'src/formulas/numeric/variance-share.ts:21',
    change: '- apart',
    reason: 'The sum is squared, so that its sign does not count.',
  },
  { place: 'src/formulas/numeric/variance-share.ts:27', change: 'bin <= bins', reason: behind },
  { place: 'src/formulas/numeric/variance-share.ts:41', change: 'at <= results.length', reason: behind },
  { place: 'src/formulas/pipe/friction.ts:20', change: '', reason: starts },
  { place: 'src/formulas/pipe/friction.ts:21', change: 'step <= 8', reason: starts },
  { place: 'src/formulas/pipe/friction.ts:21', change: 'step--', reason: stops },
  { place: 'src/formulas/pipe/friction.ts:25', change: '', reason: more },
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
  { place: 'src/formulas/settle/drag.ts:27', change: 'step <= STEPS', reason: stops },
  { place: 'src/formulas/settle/drag.ts:27', change: 'step--', reason: stops },
  { place: 'src/formulas/settle/drag.ts:37', change: '', reason: more },
  { place: 'src/formulas/settle/drag.ts:49', change: 'archimedes <= 1e-14', reason: rounding },
  { place: 'src/formulas/settle/drag.ts:50:41', change: '', reason: starts },
  { place: 'src/formulas/settle/drag.ts:50:70', change: '', reason: starts },
  { place: 'src/formulas/settle/drag.ts:59', change: 'ratio >= 24e26', reason: rounding },
  { place: 'src/formulas/settle/drag.ts:60:27', change: '', reason: starts },
  { place: 'src/formulas/settle/drag.ts:60:51', change: '', reason: starts },
  {
    place: 'src/formulas/settle/settle-capture.ts:61',
    change: 'false',
    reason: 'Without a spread the long way takes the mean of equal figures, which is that figure.',
  },
  {
    place: 'src/formulas/settle/settle-capture.ts:66',
    change: 'i < reach',
    reason: 'The last point weighs under 1e-8 of the whole, below the accuracy stated.',
  },
  {
    place: 'src/formulas/settle/settle-capture.ts:70',
    change: 'mean - deviation * x',
    reason: 'The points lie evenly to both sides of the median, so the sum is the same the other way round.',
  },
  {
    place: 'src/formulas/settle/settle-capture.ts:92',
    change: 'panel <= panels',
    reason: 'In a panel more, either everything settles or less than 1e-9 of the solids lie.',
  },
  {
    place: 'src/formulas/settle/settle-jar.ts:54',
    change: 'squares(residuals(next)) <= squares(residuals(best))',
    reason: 'Of two fits as good, either may be taken.',
  },
  {
    place: 'src/formulas/settle/settle-jar.ts:75',
    change: 'false',
    reason: 'A step to where nothing settles fits no better than before, so it is dropped whatever it yields.',
  },
  { place: 'src/formulas/settle/settle-jar.ts:84', change: 'i < 16', reason: starts },
  { place: 'src/formulas/settle/settle-jar.ts:97', change: 'false', reason: 'No reading is fewer than three as well.' },
  {
    place: 'src/formulas/settle/settle-jar.ts:97',
    change: 'first === undefined && last === undefined',
    reason: 'A list has a first reading if it has a last one.',
  },
  { place: 'src/formulas/settle/settling-velocity.ts:26', change: 'reynolds >= 1', reason: bound },
  { place: 'src/formulas/settle/settling-velocity.ts:73', change: 'velocity >= 0', reason: still },
  { place: 'src/formulas/settle/settling-velocity.ts:76', change: 'velocity >= 0', reason: still },
  { place: 'src/formulas/settle/settling-velocity.ts:88', change: 'reynolds < FASTEST', reason: bound },
  {
    place: 'src/formulas/water/alkali-dose.ts:62',
    change: 'gained < 0',
    reason: 'A dose divided by 0 is infinite as well.',
  },
  { place: 'src/formulas/water/alkali-dose.ts:97', change: 'atOnce < SAFE_PH', reason: bound },
  { place: 'src/formulas/water/alkali-dose.ts:98', change: 'safe < 0', reason: left },
  { place: 'src/formulas/water/alkali-dose.ts:98:7', change: 'false', reason: left },
  { place: 'src/formulas/water/alkali-dose.ts:230', change: '< SAFE_PH', reason: bound },
  { place: 'src/formulas/water/carbonate.ts:53', change: 'carbonate <= 0', reason: bound },
  { place: 'src/formulas/water/carbonate.ts:61', change: 'dioxide >= most', reason: bound },
  { place: 'src/formulas/water/water-ammonia.ts:17', change: 'false', reason: fresh },
  { place: 'src/formulas/water/water-density.ts:24', change: 'false', reason: fresh },
  { place: 'src/formulas/water/water-viscosity.ts:35', change: 'false', reason: fresh },
  {
    place: 'src/formulas/water/water-check-carbon.ts:44',
    change: 'true',
    reason: 'Nothing but a refusal is thrown there; anything else would be a fault.',
  },
  {
    place: 'src/formulas/water/water-check-nitrogen.ts:46',
    change: 'byUnionized <= total',
    reason: 'Both limits are the same figure there, so that either source may be named.',
  },
  { place: 'src/formulas/water/water-check-nitrogen.ts:90', change: '', reason: absent },
  { place: 'src/formulas/water/water-check-nitrogen.ts:91', change: 'true', reason: absent },
  { place: 'src/formulas/water/water-check-row.ts:91:5', change: 'true', reason: absent },
  { place: 'src/formulas/water/water-check-row.ts:91:52', change: 'true', reason: absent },
  {
    place: 'src/formulas/water/water-check.ts:64:17',
    change: 'true',
    reason: 'The row of a temperature not taken is complete before.',
  },
  { place: 'src/formulas/water/water-check.ts', change: 'high <= low', reason: bound },
];
