import { cautions, weightCautions } from '../../workbooks/sheets/cautions';
import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { type FieldId, heightWays, type Ways, widthWays } from './fields';
import type { SheetRole } from './find-sheets';

export type StepId = 'measure' | 'check' | 'pattern' | 'cut' | 'buy' | 'pour' | 'leak test';

/** A figure that a step gives: the cell that it is read from. */
export interface Given {
  readonly label: string;
  readonly sheet: SheetRole;
  /** `#` stands for the drum's row on Drums, `@` for its row where drums without a name are left out. */
  readonly cell: string;
  /** The cell with the unit, or the unit's kind. */
  readonly kind?: 'dimension' | 'angle' | 'bulk' | 'volume' | 'mass' | 'share' | 'money';
}

export interface Step {
  readonly id: StepId;
  readonly title: string;
  /** What to do, in one to three sentences. */
  readonly task: string;
  readonly caution: (profile: ReadyProfile) => string;
  readonly asks: readonly (FieldId | Ways)[];
  readonly gives: readonly Given[];
  /** The cell to look at in the sheets. */
  readonly place: { readonly sheet: SheetRole; readonly cell: string };
}

const cutting =
  'Cut edges are sharp: wear gloves and goggles, clamp each piece, and deburr every edge before anyone reaches inside.';

export const steps: readonly Step[] = [
  {
    id: 'measure',
    title: 'Measure',
    task: 'Measure the empty drum with a tape. Type what the tape shows: 22 1/2, 22.5 or 57 cm.',
    caution: () => cautions.drums,
    asks: ['name', 'held', widthWays, 'drain', heightWays, 'depth'],
    gives: [],
    place: { sheet: 'drums', cell: 'C#' },
  },
  {
    id: 'check',
    title: 'Check',
    task: 'Type the sheet that you can buy, and see whether the cone fits the drum and its pieces fit the sheet.',
    caution: () => 'Look at the drum once more before you go on: measure twice, cut once.',
    asks: ['pieces', 'lap', 'thickness', 'clearance', 'sheetLength', 'sheetWidth'],
    gives: [
      { label: 'inside diameter', sheet: 'drums', cell: 'K#', kind: 'dimension' },
      { label: 'cone height', sheet: 'drums', cell: 'G#', kind: 'dimension' },
      { label: 'height for 45 degrees', sheet: 'drums', cell: 'L#', kind: 'dimension' },
      { label: 'wall angle', sheet: 'patterns', cell: 'B@', kind: 'angle' },
    ],
    place: { sheet: 'drums', cell: 'M#' },
  },
  {
    id: 'pattern',
    title: 'Pattern',
    task: 'This is the piece to mark and cut. Print it full size on ordinary paper, tape the pages together, and lay it in the drum before you cut any sheet.',
    caution: () => `${cutting} ${cautions.metals}`,
    asks: ['rivetSpacing'],
    gives: [
      { label: 'slant', sheet: 'patterns', cell: 'C@', kind: 'dimension' },
      { label: 'inner radius', sheet: 'patterns', cell: 'D@', kind: 'dimension' },
      { label: 'outer radius', sheet: 'patterns', cell: 'E@', kind: 'dimension' },
      { label: 'sector angle', sheet: 'patterns', cell: 'F@', kind: 'angle' },
      { label: 'blank, length', sheet: 'patterns', cell: 'G@', kind: 'dimension' },
      { label: 'blank, width', sheet: 'patterns', cell: 'H@', kind: 'dimension' },
      { label: 'rivets along a seam', sheet: 'patterns', cell: 'G26' },
    ],
    place: { sheet: 'patterns', cell: 'A@' },
  },
  {
    id: 'cut',
    title: 'Cut',
    task: 'Lay the pieces on the sheet as drawn, mark them, and cut along the thick lines.',
    caution: () => 'Support both sides of a cut, keep your hands behind the blade, and wear goggles and gloves.',
    asks: ['gap'],
    gives: [
      { label: 'sheets', sheet: 'cutPlan', cell: 'A5' },
      { label: 'share of them used', sheet: 'cutPlan', cell: 'D5', kind: 'share' },
    ],
    place: { sheet: 'cutPlan', cell: 'A7' },
  },
  {
    id: 'buy',
    title: 'Buy',
    task: 'Take this list to the shop. The prices are invented until you type those of your shop on the sheet Prices.',
    caution: () => cautions.metals,
    asks: ['drumHeight', 'pipeSize', 'wallSeal'],
    gives: [{ label: 'total, at the prices on the sheet', sheet: 'materials', cell: 'D4', kind: 'money' }],
    place: { sheet: 'materials', cell: 'A17' },
  },
  {
    id: 'pour',
    title: 'Pour and cure',
    task: 'First fill the bare drum and wait a day: a leak behind cement cannot be mended. Then set the cone, hold it down with water or weights, and pour the base in layers.',
    caution: () => `Wet mix lifts a cone that is not held down. ${cautions.dust}`,
    asks: ['rise', 'parts', 'bag', 'start', 'baseDays'],
    gives: [
      { label: 'base mix behind the cone', sheet: 'baseMix', cell: 'B@', kind: 'bulk' },
      { label: 'light aggregate to buy', sheet: 'baseMix', cell: 'A23', kind: 'bulk' },
      { label: 'cement to buy', sheet: 'baseMix', cell: 'B23', kind: 'mass' },
      { label: 'bags of cement', sheet: 'baseMix', cell: 'C23' },
    ],
    place: { sheet: 'baseMix', cell: 'A5' },
  },
  {
    id: 'leak test',
    title: 'Leak test',
    task: 'Set the drum on its stand where it will stay. Fill it a third at a time, mark the level on tape, and look again the next day. Dry mix drinks water on the first day: mark it again.',
    caution: (profile) => `${weightCautions[profile]} ${cautions.electricity}`,
    asks: ['pail', 'drop', 'legs', 'sealantDays', 'leachDays'],
    gives: [
      { label: 'water to fill in', sheet: 'baseMix', cell: 'C@', kind: 'volume' },
      { label: 'total weight when full', sheet: 'stand', cell: 'D@', kind: 'mass' },
      { label: 'load per leg if two carry all', sheet: 'stand', cell: 'F@', kind: 'mass' },
      { label: 'height of the stand', sheet: 'stand', cell: 'B22', kind: 'dimension' },
    ],
    place: { sheet: 'calendar', cell: 'A10' },
  },
];

export function isStep(text: string): text is StepId {
  return steps.some(({ id }) => id === text);
}

export function stepOf(id: StepId): Step {
  const step = steps.find((one) => one.id === id);
  if (step === undefined) throw new Error(`there is no step ${id}`);
  return step;
}

/** The step that asks for a field. */
export function stepAsking(id: FieldId): Step | undefined {
  const asksFor = (asked: FieldId | Ways): boolean =>
    typeof asked === 'string' ? asked === id : asked.ways.some(({ asks }) => asks.includes(id));
  return steps.find(({ asks }) => asks.some(asksFor));
}
