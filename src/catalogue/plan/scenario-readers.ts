import { cropFeed, cropNames, findCrop } from '../../formulas/bed/crops';
import { findMedia, mediaNames } from '../../formulas/filter/media';
import type { ScenarioCrop, Settler } from '../../formulas/plan/plan-scenario';
import type { Kind } from '../../units/kinds';
import { nearest } from '../../units/nearest';
import type { Profile } from '../../units/profile';
import { readQuantity, wordGiven, wordQuantity } from '../../units/quantity';
import { wordList, wordText } from '../../units/text';
import { Unreadable } from '../../units/unreadable';
import type { CellValue } from '../argument';
import type { ReaderInput } from './named-input';

const settlers = ['swirl', 'radial', 'mixed', 'ideal'] as const;

/** Whether text is a word and not a figure with a unit. */
function isWord(value: CellValue): value is string {
  return typeof value === 'string' && !/\d/.test(value);
}

/** The refusal of a word that is not in the list. */
function unknownWord(value: string, words: readonly string[], or: string): Unreadable {
  const near = words.length > 6 ? `nearest are ${wordList(nearest(value, words))}` : `give ${wordList(words)}`;
  return new Unreadable(`${wordText(value)} is not allowed; ${near}, or ${or}`);
}

function figureAbove0(kind: Kind, value: CellValue, profile: Profile, or: string): number {
  const si = readQuantity(profile, kind, value);
  if (si > 0) return si;
  const given = wordGiven(profile, kind, value);
  throw new Unreadable(`${given} is not allowed; give more than ${wordQuantity(profile, kind, 0)}, or ${or}`);
}

/** A settler by name, or the share that it captures. */
export const settlerInput = {
  kind: 'share',
  accepts: 'choice or share',
  words: settlers,
  default: 'swirl',
  coefficient: 'swirl capture',
  meaning:
    'swirl or radial, with measured shares; mixed or ideal, calculated from settling; or the share that yours captures',
  reader: (value: CellValue, profile: Profile): Settler => {
    if (isWord(value)) {
      const word = settlers.find((one) => one === value.trim().toLowerCase());
      if (word !== undefined) return word;
      throw unknownWord(value, settlers, 'a share');
    }
    const share = readQuantity(profile, 'share', value);
    if (share >= 0 && share <= 1) return share;
    throw new Unreadable(
      `${wordGiven(profile, 'share', value)} is not allowed; give a share from 0 to 1, or ${wordList(settlers)}`,
    );
  },
} as const satisfies ReaderInput;

/** A medium by name, or its specific surface. */
export const mediaInput = {
  kind: 'surface',
  accepts: 'choice or surface',
  words: mediaNames,
  default: 'gravel',
  coefficient: 'surface of gravel',
  meaning: `media of the biofilter or, without one, of the beds: ${mediaNames.join(', ')}; or a specific surface`,
  reader: (value: CellValue, profile: Profile): number => {
    if (!isWord(value)) return figureAbove0('surface', value, profile, 'a medium by name');
    const medium = findMedia(value);
    if (medium !== undefined) return medium.surface.typical;
    throw unknownWord(value, mediaNames, 'a specific surface');
  },
} as const satisfies ReaderInput;

/** A crop by name, or the feed that it uses. */
export const cropInput = {
  kind: 'areal rate',
  accepts: 'choice or areal rate',
  words: cropNames,
  default: 'leafy',
  coefficient: 'feed on leafy',
  meaning: `what grows in the beds: ${cropNames.join(', ')}; or the feed a day per unit of bed`,
  reader: (value: CellValue, profile: Profile): ScenarioCrop => {
    if (!isWord(value)) {
      return { feed: figureAbove0('areal rate', value, profile, 'a crop by name'), plants: undefined };
    }
    const crop = findCrop(value);
    if (crop !== undefined) return { feed: cropFeed(crop).typical, plants: crop.plants.typical };
    throw unknownWord(value, cropNames, 'an areal rate');
  },
} as const satisfies ReaderInput;
