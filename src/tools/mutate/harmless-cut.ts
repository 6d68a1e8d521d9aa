import { bound, type Harmless, more, never, quick, rounding } from './harmless-reasons';

const loose =
  'The bound is several times what any piece needs, so that a smaller one still leaves the best turn among those tried.';
const pruned = 'Fewer turns are left out, and those that are tried in addition are no better.';
const steps = 'Steps are counted in thousands; that they are spent to the very last decides nothing.';
const touching =
  'Boxes that only touch leave the room as it is, and the parts that are listed in addition lie within it.';
const empty = 'A room without length or width takes no box.';
const negative = 'The area of such a sheet is 0 or less, so that no piece is small enough for it.';
const oneMore = 'One more or one less of many tries at random.';

/** Changes to cut plans that no test can or should notice. */
export const cutHarmless: Harmless = {
  'src/formulas/cut/piece-fit.ts': {
    '(_, i) => share(i * step) -> () => undefined': pruned,
    'reach(0) + reach(Math.PI) -> reach(0) - reach(Math.PI)': loose,
    'reach(Math.PI / 2) + reach(-Math.PI / 2) -> reach(Math.PI / 2) - reach(-Math.PI / 2)': loose,
    '-Math.PI / 2 -> -Math.PI * 2': loose,
    '-Math.PI -> +Math.PI': loose,
    '(diagonal / Math.min(length, width)) * step -> diagonal / Math.min(length, width) / step': pruned,
    'diagonal / Math.min(length, width) -> diagonal * Math.min(length, width)': loose,
    'Math.min(length, width) -> Math.max(length, width)': loose,
    'tried[(i + 1) % steps] ?? here -> tried[(i + 1) % steps] && here': pruned,
    '(i + 1) % steps -> (i + 1) * steps': pruned,
    'i + 1 -> i - 1': pruned,
    'tried[(i + steps - 1) % steps] ?? here -> tried[(i + steps - 1) % steps] && here': pruned,
    '(i + steps - 1) % steps -> (i + steps - 1) * steps': pruned,
    'i + steps - 1 -> i + steps + 1': pruned,
    'i + steps -> i - steps': pruned,
    'here - gain > best.share || here > next || here > previous -> false': pruned,
    'here - gain > best.share || here > next || here > previous -> (here - gain > best.share || here > next) && here > previous':
      pruned,
    'here - gain > best.share || here > next -> false': pruned,
    'here - gain > best.share || here > next -> here - gain > best.share && here > next': pruned,
    'here - gain > best.share -> false': pruned,
    'here - gain > best.share -> here - gain >= best.share': 'A turn that can at most be as good need not be tried.',
    'here > next -> false': pruned,
    'here > previous -> false': pruned,
    'found.share < best.share -> found.share <= best.share': 'Of two turns as good, either may be taken.',
    'length <= 0 || width <= 0 -> length <= 0 && width <= 0': negative,
    'length <= 0 -> false': negative,
    'length <= 0 -> length < 0': negative,
    'width <= 0 -> false': negative,
    'width <= 0 -> width < 0': negative,
    'pieceArea(piece) > length * width * (1 + 1e-8) -> false': quick,
    'pieceArea(piece) > length * width * (1 + 1e-8) -> pieceArea(piece) >= length * width * (1 + 1e-8)': rounding,
    'share(0) <= most || share(Math.PI / 2) <= most -> false': quick,
    'share(0) <= most || share(Math.PI / 2) <= most -> share(0) <= most && share(Math.PI / 2) <= most': quick,
    'share(0) <= most -> false': quick,
    'share(0) <= most -> share(0) < most': quick,
    'share(Math.PI / 2) <= most -> false': quick,
    'share(Math.PI / 2) <= most -> share(Math.PI / 2) < most': quick,
    // In the bound and in the quick look at a quarter turn.
    'Math.PI / 2 -> Math.PI * 2': quick,
    'bestTurn(piece, length, width).share <= most -> bestTurn(piece, length, width).share < most': bound,
    'i < 60 -> i <= 60': more,
    'value(low + third) < value(high - third) -> value(low + third) <= value(high - third)': rounding,
    'square.share <= between.share -> square.share < between.share': rounding,
  },
  'src/formulas/cut/cut-search.ts': {
    'lengthOf(shortest, job) <= enough -> lengthOf(shortest, job) < enough': rounding,
    'lengthOf(shortest, job) <= enough -> false': quick,
    'i < byChance -> i <= byChance': oneMore,
    'budget.spent < most -> budget.spent <= most': steps,
    'part !== undefined -> true': never,
  },
  'src/formulas/cut/cut-repeat.ts': {
    'areaOf(job, [...job.pieces.keys()]) <= job.length * job.width -> areaOf(job, [...job.pieces.keys()]) < job.length * job.width':
      rounding,
    'areaOf(job, left) > job.length * job.width -> areaOf(job, left) >= job.length * job.width': rounding,
    'budget.spent > stepsAnEffort.all * effort -> budget.spent >= stepsAnEffort.all * effort': steps,
    'filled[0]?.spots -> filled[0].spots': never,
    'waiting.get(shape)?.length -> waiting.get(shape).length': never,
    'waiting.get(job.shapeOf(spot.item))?.shift -> waiting.get(job.shapeOf(spot.item)).shift': never,
    'item !== undefined -> true': never,
    'left.length > 0 -> true': 'No pieces have no places.',
    'left.length > 0 -> left.length >= 0': 'No pieces have no places.',
    'filled.length > 0 -> true': 'Every search begins with steps left.',
    'filled.length > 0 -> filled.length >= 0': 'Every search begins with steps left.',
    'budget.spent > mostSteps -> budget.spent >= mostSteps': steps,
    'shape === undefined -> false': never,
    'more * shape.area > job.length * job.width -> false': quick,
    'more * shape.area > job.length * job.width -> more * shape.area >= job.length * job.width': rounding,
    'layout.used > job.length -> layout.used >= job.length': rounding,
  },
  'src/formulas/cut/cut-improve.ts': {
    'idle < idleAnEffort * effort -> idle <= idleAnEffort * effort': oneMore,
    'budget.spent < mostSteps -> budget.spent <= mostSteps': steps,
    'cost(next) > cost(current) + worse -> cost(next) >= cost(current) + worse': rounding,
  },
  'src/formulas/cut/cut-boxes.ts': {
    'budget.spent > mostSteps -> budget.spent >= mostSteps': steps,
    'restLength < -allowance * room.length -> restLength <= -allowance * room.length': rounding,
    'restWidth < -allowance * room.width -> restWidth <= -allowance * room.width': rounding,
    'box.x >= right -> box.x > right': touching,
    'boxRight <= room.x -> boxRight < room.x': touching,
    'box.y >= top -> box.y > top': touching,
    'boxTop <= room.y -> boxTop < room.y': touching,
    'boxRight < right -> true': empty,
    'boxRight < right -> boxRight <= right': empty,
    'boxTop < top -> true': empty,
    'boxTop < top -> boxTop <= top': empty,
  },
};
