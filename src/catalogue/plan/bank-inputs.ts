import { wallSeals } from '../../formulas/plan/plan-bank';
import type { Profile } from '../../units/profile';
import type { CellValue } from '../argument';
import { mixParts } from '../cone-arguments';
import { nominal } from '../pipe-arguments';
import type { NamedInputs, ReaderInput } from './named-input';

const length = { kind: 'dimension', above: 0 } as const;
const room = { kind: 'dimension', atLeast: 0 } as const;

/** A pipe by its nominal size; gives the name that a plumber uses. */
const pipeInput = {
  kind: 'number',
  accepts: 'nominal size',
  default: '2',
  meaning: 'nominal size of the pipe, such as 2, 1-1/2 or 63 mm',
  reader: (value: CellValue, profile: Profile): string => {
    const { series, size } = nominal.reader(value, profile);
    return series === 'metric' ? `${size} mm pipe` : `${size} in pipe`;
  },
} as const satisfies ReaderInput;

/** Every input of a settling bank; the cone is measured as `fit`. */
export const bankInputs = {
  drums: { kind: 'count', atLeast: 1, atMost: 100, whole: true, required: true, meaning: 'drums in the bank' },
  drumDiameter: { ...length, required: true, meaning: 'inside diameter of a drum' },
  drumHeight: { ...length, required: true, meaning: 'inside height of a drum' },
  coneBottom: { ...length, required: true, meaning: 'bore of the drain at the cone’s bottom' },
  coneHeight: { ...length, required: true, meaning: 'height of the cone' },
  pieces: { kind: 'count', atLeast: 1, atMost: 24, whole: true, default: 1, meaning: 'pieces that make up a cone' },
  lap: { ...room, default: 0, meaning: 'width of the strip for the seam' },
  thickness: { ...room, default: 0, meaning: 'thickness of the sheet' },
  rivetSpacing: { ...length, default: 'coefficient', meaning: 'largest distance between rivets' },
  sheetLength: { ...length, required: true, meaning: 'length of a sheet' },
  sheetWidth: { ...length, required: true, meaning: 'width of a sheet' },
  gap: { ...room, default: 0, meaning: 'distance between pieces and from the sheet’s edge' },
  baseRise: { ...room, default: 0, meaning: 'height of the cone’s bottom above the drum floor' },
  mixParts: { ...mixParts, default: 'coefficient' },
  pipeSize: pipeInput,
  wallSeal: { choice: wallSeals, default: 'grommet', meaning: 'seal between pipe and drum wall' },
  containerHeight: { ...length, default: 'coefficient', meaning: 'height of the pail or container' },
  drainDrop: {
    ...room,
    default: 'coefficient',
    meaning: 'distance from the stand’s top down to the valve’s lowest point',
  },
  legs: { kind: 'count', atLeast: 1, atMost: 12, whole: true, default: 4, meaning: 'legs of each stand' },
} as const satisfies NamedInputs;
