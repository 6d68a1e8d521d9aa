/**
 * The feed that crops need and their spacing.
 */

import { fao } from '../citations';
import { type Range, range } from '../numeric/range';
import { DAY } from '../numeric/time';
import { Refusal } from '../refusal';

/** A gram a square meter a day, in SI. */
const FEED = 1e-3 / DAY;

export interface CropGroup {
  readonly name: string;
  /** Feed per bed area, kg/m2/s. */
  readonly feed: Range;
  readonly source: string;
  readonly known: 'read' | 'memory';
}

const section = `${fao}, section 8.1`;

/**
 * Groups by how much feed a square meter of them takes; feed of 32 % protein. Sources differ 2.5-fold.
 *
 * Typical of leafy is what the worked example of the source takes, of fruiting and raft the middle; raft is leafy crops
 * on rafts. Basil in batches showed deficiency at 81.4, staggered at 99.6 none.
 */
export const cropGroups: readonly CropGroup[] = [
  { name: 'leafy', feed: range(40, 50, 50, FEED), source: section, known: 'read' },
  { name: 'fruiting', feed: range(50, 65, 80, FEED), source: section, known: 'read' },
  {
    name: 'raft',
    feed: range(60, 80, 100, FEED),
    source: 'Rakocy, Ten Guidelines for Aquaponic Systems (2007)',
    known: 'read',
  },
  {
    name: 'basil',
    feed: range(81.4, 99.6, 99.6, FEED),
    source: 'Rakocy et al. (2004), University of the Virgin Islands',
    known: 'read',
  },
];

export interface Crop {
  readonly name: string;
  readonly group: string;
  /** Plants to a square meter. */
  readonly plants: Range;
  readonly source: string;
  readonly known: 'read' | 'memory';
}

const crop = (name: string, group: string, low: number, typical: number, high: number): Crop => ({
  name,
  group,
  plants: range(low, typical, high),
  source: `${fao}, appendix 1`,
  known: 'memory',
});

/** Groups by their own density first, then single crops; leafy as the worked example takes it, raft as leafy. */
export const crops: readonly Crop[] = [
  { ...crop('leafy', 'leafy', 20, 25, 25), source: section, known: 'read' },
  { ...crop('fruiting', 'fruiting', 4, 6, 8), source: section, known: 'read' },
  { ...crop('raft', 'raft', 20, 25, 25), source: section, known: 'read' },
  { ...crop('basil', 'basil', 8, 20, 40), known: 'read' },
  { ...crop('lettuce', 'leafy', 20, 25, 25), source: 'Aqu@teach, plant selection', known: 'read' },
  crop('Swiss chard', 'leafy', 15, 16, 20),
  crop('parsley', 'leafy', 10, 12, 15),
  crop('head cabbage', 'leafy', 4, 6, 8),
  crop('tomato', 'fruiting', 3, 4, 5),
  crop('pepper', 'fruiting', 3, 4, 4),
  crop('cucumber', 'fruiting', 2, 4, 5),
  crop('eggplant', 'fruiting', 3, 4, 5),
  crop('cauliflower', 'fruiting', 3, 4, 5),
  crop('broccoli', 'fruiting', 3, 4, 5),
];

export const cropNames: readonly string[] = crops.map(({ name }) => name);

/** A crop or a group by its name in any spelling of case and spaces; undefined if there is none. */
export function findCrop(name: string): Crop | undefined {
  const wanted = name.trim().toLowerCase();
  return crops.find((one) => one.name.toLowerCase() === wanted);
}

/** A crop whose name is known to be in the table. */
export function cropNamed(name: string): Crop {
  const crop = findCrop(name);
  if (crop === undefined) throw new Refusal('crop', `${name} is not a crop of the table`);
  return crop;
}

/** Feed per bed area that a crop of the table takes, kg/m2/s. */
export function cropFeed(one: Crop): Range {
  const group = cropGroups.find(({ name }) => name === one.group);
  if (group === undefined) throw new Error(`${one.name} is in no group of crops`);
  return group.feed;
}
