/** Arguments, sources and cautions that the HARVEST functions share. */
export const naylor = 'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999)';
export const oxides = 'NMSU Guide H-120: P2O5 is 2.29 times P, K2O 1.2 times K; atomic masses, IUPAC';
export const balance = 'Mass balance';
export const ownTest = 'Nutrients in fish solids differ several-fold from farm to farm: have your own tested.';
export const rawCare =
  'Raw fish solids on food crops: keep the waiting time, wash what you eat and wear gloves. Wet solids stored in a closed space give off hydrogen sulfide. Local rules decide.';

export const dry = { kind: 'mass', atLeast: 0, meaning: 'dry solids, over any period' } as const;
export const slurrySolids = { kind: 'share', above: 0, meaning: 'solids in the slurry, by mass' } as const;

export const nutrientColumns = {
  nitrogen: { kind: 'portion', heading: 'N' },
  phosphate: { kind: 'portion', heading: 'P2O5' },
  potash: { kind: 'portion', heading: 'K2O' },
} as const;
