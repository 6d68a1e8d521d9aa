/** What a nitrogen compound is measured as: the nitrogen in it, or the whole ion or molecule. */
export type NitrogenForm = 'N' | 'NO3' | 'NO2' | 'NH3' | 'NH4';

const N = 14.007;
const O = 15.999;
const H = 1.008;

/** Mass of nitrogen in a mass of each form, from the abridged standard atomic weights (IUPAC 2021): N 14.007, O 15.999, H 1.008. */
export const nitrogenShare: Readonly<Record<NitrogenForm, number>> = {
  N: 1,
  NO3: N / (N + 3 * O),
  NO2: N / (N + 2 * O),
  NH3: N / (N + 3 * H),
  NH4: N / (N + 4 * H),
};

const words: Readonly<Record<string, NitrogenForm>> = {
  n: 'N',
  nitrogen: 'N',
  tan: 'N',
  no3: 'NO3',
  nitrate: 'NO3',
  no2: 'NO2',
  nitrite: 'NO2',
  nh3: 'NH3',
  ammonia: 'NH3',
  nh4: 'NH4',
  ammonium: 'NH4',
};

const FORM = '(n|tan|nitrogen|no3|no2|nh3|nh4|nitrate|nitrite|ammonia|ammonium)[-+]?([- ]?n(?:itrogen)?)?';
const behind = new RegExp(String.raw`[ (](?:as )?${FORM}\)?$`, 'i');
const inside = new RegExp(`g[ -]${FORM} ?/`, 'i');

/** Takes `as NO3`, `NO3-N` or `mg NO3/L` out of tidied text and says which form it names. */
export function splitNitrogenForm(text: string): { readonly text: string; readonly as?: NitrogenForm } {
  const found = behind.exec(text) ?? inside.exec(text);
  if (!found) return { text };
  const [whole, word = '', asNitrogen] = found;
  const put = whole.endsWith('/') ? 'g/' : '';
  return {
    text: (text.slice(0, found.index) + put + text.slice(found.index + whole.length)).trim(),
    as: asNitrogen === undefined ? (words[word.toLowerCase()] ?? 'N') : 'N',
  };
}
