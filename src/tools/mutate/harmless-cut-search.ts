import { bound, type Harmless, quick, rounding } from './harmless-reasons';

const sides = 'A side is 1 or −1.';
const twice = 'A place that is listed twice limits movements as it does once.';
const hollow = 'A hollow is nearest to a line at its ends, which are corners; its other places are farther limits.';
const center = 'Corners on each other lie on a line too, and a direction that is no number leads to no arc.';
const offSheet = 'A typed list ignores what is written beside it, and a row that is not there has no stretches.';
const inside = 'A corner inside of a corner is nearer to one of the lines there.';

/** Changes to the search for cut plans that no test can or should notice. */
export const cutSearchHarmless: Harmless = {
  'src/formulas/cut/cut-squeeze.ts': {
    'sheet.gap > length -> sheet.gap >= length': bound,
    'best.length > enough -> best.length >= enough': bound,
    'overlaps.sum() < small * area -> overlaps.sum() <= small * area': bound,
    'next.length < best.length - 1e-9 -> next.length <= best.length - 1e-9': bound,
    'random() < 0.5 -> random() <= 0.5': bound,
    'budget.spent >= mostSteps -> false': 'A round is ended; the search ends with its steps after that.',
    'budget.spent >= mostSteps -> budget.spent > mostSteps': bound,
  },
  'src/formulas/cut/nearness.ts': {
    '!areBoxesNear(one, other, reach) -> false': quick,
    'one.left - reach < other.right -> one.left - reach <= other.right': bound,
    'other.left - reach < one.right -> other.left - reach <= one.right': bound,
    'one.bottom - reach < other.top -> one.bottom - reach <= other.top': bound,
    'other.bottom - reach < one.top -> other.bottom - reach <= one.top': bound,
    'left < reach || bottom < reach || right > length - reach || top > width - reach -> true': quick,
    'left < reach -> left <= reach': quick,
    'bottom < reach -> bottom <= reach': quick,
    'right > length - reach -> right >= length - reach': quick,
    'top > width - reach -> top >= width - reach': quick,
    '!isNear -> false': quick,
    'x < reach -> x <= reach': bound,
    'y < reach -> y <= reach': bound,
    'width - y < reach -> width - y <= reach': bound,
    'length - x < reach -> length - x <= reach': bound,
    'arc.side < 0 -> arc.side <= 0': sides,
    'i < j -> true': twice,
    'i < j -> i <= j': twice,
    'arc.side < 0 -> false': hollow,
    'beside.side < 0 -> beside.side <= 0': sides,
    'distance >= reach -> distance > reach': bound,
    'distance <= -reach / 4 -> distance < -reach / 4': bound,
    'x < one.left - reach || x > one.right + reach || y < one.bottom - reach || y > one.top + … -> false': quick,
    'x < one.left - reach || x > one.right + reach || y < one.bottom - reach || y > one.top + … -> (x < one.left - reach || x > one.right + reach || y < one.bottom - reach) && y > one.top …':
      quick,
    'x < one.left - reach || x > one.right + reach || y < one.bottom - reach -> false': quick,
    'x < one.left - reach || x > one.right + reach || y < one.bottom - reach -> (x < one.left - reach || x > one.right + reach) && y < one.bottom - reach':
      quick,
    'x < one.left - reach || x > one.right + reach -> false': quick,
    'x < one.left - reach || x > one.right + reach -> x < one.left - reach && x > one.right + reach': quick,
    'x < one.left - reach -> false': quick,
    'x < one.left - reach -> x <= one.left - reach': quick,
    'x > one.right + reach -> false': quick,
    'x > one.right + reach -> x >= one.right + reach': quick,
    'y < one.bottom - reach -> false': quick,
    'y < one.bottom - reach -> y <= one.bottom - reach': quick,
    'y > one.top + reach -> false': quick,
    'y > one.top + reach -> y >= one.top + reach': quick,
    'Math.abs(out) >= least -> Math.abs(out) > least': bound,
    'along < 0 -> along <= 0': bound,
    'along > line.length -> along >= line.length': bound,
    'Math.sqrt(dx * dx + dy * dy) * (1 + 1e-9) -> Math.sqrt(dx * dx + dy * dy) / (1 + 1e-9)': rounding,
    '1 + 1e-9 -> 1 - 1e-9': rounding,
    'from >= least -> from > least': bound,
    'from === 0 -> false': center,
    '{ x, y } -> {}': inside,
    '-1 -> +1': inside,
    'cosine > facingCosine -> cosine >= facingCosine': bound,
    'to <= 0 -> to < 0': bound,
    'from >= line.length -> from > line.length': bound,
    'arc.radius > beside.radius -> arc.radius >= beside.radius': bound,
  },
  'src/formulas/cut/taken-rows.ts': {
    'Math.max(0, -lowest) -> Math.min(0, -lowest)': offSheet,
    'i + 1 < starts.length && lowest + i < this.rowCount -> i + 1 < starts.length || lowest + i < this.rowCount':
      offSheet,
    'i + 1 < starts.length -> true': offSheet,
    'i + 1 < starts.length -> i + 1 <= starts.length': offSheet,
    'i + 1 -> i - 1': offSheet,
    'lowest + i < this.rowCount -> true': offSheet,
    'lowest + i < this.rowCount -> lowest + i <= this.rowCount': offSheet,
    'lowest + i -> lowest - i': offSheet,
    'left >= right -> left > right': 'A stretch without length adds and takes the same.',
    'last < 0 -> false': 'No place is tried where the last one is less than the first.',
    'overlap > 0 -> overlap >= 0': 'Adding 0 changes nothing.',
    'overlap < least -> overlap <= least': quick,
    'row < rowCount -> row <= rowCount': offSheet,
    'known !== undefined -> false': quick,
  },
};
