/**
 * What crops want of a feed and how close they stand.
 */
import type { Range } from './range';

const FEED = 1e-3 / 86400;

export interface CropGroup {
  readonly name: string;
  /** Feed per bed area, kg/m2/s. */
  readonly feed: Range;
  readonly source: string;
  readonly known: 'read' | 'memory';
}

const feed = (low: number, typical: number, high: number): Range => ({
  low: low * FEED,
  typical: typical * FEED,
  high: high * FEED,
});

const fao = 'Somerville et al., FAO Fisheries Technical Paper 589 (2014), section 8.1';

/** Groups by how much feed a square metre of them takes; feed of 32 % protein. Authorities differ 2.5 times. */
export const cropGroups: readonly CropGroup[] = [
  { name: 'leafy', feed: feed(40, 50, 50), source: `${fao}, whose worked example takes 50`, known: 'read' },
  { name: 'fruiting', feed: feed(50, 65, 80), source: `${fao}; typical is the middle`, known: 'read' },
  {
    name: 'raft',
    feed: feed(60, 80, 100),
    source: 'Rakocy, Losordo and Masser, SRAC Publication 454, leafy crops on rafts; typical is the middle',
    known: 'memory',
  },
  {
    name: 'basil',
    feed: feed(81.4, 99.6, 99.6),
    source:
      'Rakocy et al. (2004), University of the Virgin Islands: 81.4 in batches showed deficiency, 99.6 staggered did not',
    known: 'read',
  },
];

export interface Crop {
  readonly name: string;
  readonly group: string;
  /** Plants to a square metre. */
  readonly plants: Range;
  readonly source: string;
  readonly known: 'read' | 'memory';
}

const crop = (name: string, group: string, low: number, typical: number, high: number): Crop => ({
  name,
  group,
  plants: { low, typical, high },
  source: 'Somerville et al., FAO Fisheries Technical Paper 589 (2014), appendix 1',
  known: 'memory',
});

/** The two groups by their own density first, then single crops. */
export const crops: readonly Crop[] = [
  { ...crop('leafy', 'leafy', 20, 25, 25), source: `${fao}, whose worked example takes 25`, known: 'read' },
  { ...crop('fruiting', 'fruiting', 4, 6, 8), source: `${fao}; typical is the middle`, known: 'read' },
  { ...crop('raft', 'raft', 20, 25, 25), source: `${fao}, as leafy`, known: 'read' },
  crop('basil', 'basil', 8, 20, 40),
  crop('lettuce', 'leafy', 20, 25, 25),
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

/** A crop or a group by its name, however it is written; undefined where there is none. */
export function findCrop(name: string): Crop | undefined {
  const wanted = name.trim().toLowerCase();
  return crops.find((one) => one.name.toLowerCase() === wanted);
}

/** Feed per bed area that a crop of the table takes, kg/m2/s. */
export function cropFeed(one: Crop): Range {
  return cropGroups.find(({ name }) => name === one.group)!.feed;
}
