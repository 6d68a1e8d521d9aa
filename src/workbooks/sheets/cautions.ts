import type { ReadyProfile } from './sheet-draft';

function weightCaution(fullDrum: string): string {
  return `A full drum weighs about ${fullDrum}; the stand and the floor must carry it. Never be under a drum while it fills, and shore it before you move it. Local code and a licensed tradesperson decide.`;
}

/** The weight caution on a sheet, in the unit of the sheet's profile. */
export const weightCautions: Readonly<Record<ReadyProfile, string>> = {
  US: weightCaution('500 lb'),
  metric: weightCaution('230 kg'),
};

/** What can hurt, in a few sentences for each kind of work, shown beside the step. */
export const cautions = {
  drums:
    'Use only food-grade drums, and know what each one held. Never heat or cut a closed drum, or one that held anything flammable; hot plastic burns and gives off fumes. The maker’s sheet comes first.',
  dust: 'Silica dust and light-aggregate dust harm the lungs, and wet cement burns skin: wear a respirator made for dust, gloves and goggles. Fresh cement raises pH: leach it and test the water before you add fish. The maker’s sheet comes first.',
  metals:
    'Zinc, brass and copper harm fish. Use a sealant that is safe for fish; most kinds do not bond to polyethylene. Ask the maker.',
  weight: weightCaution('500 lb (230 kg)'),
  electricity:
    'Use ground-fault protection on every circuit and a drip loop on every cord. Switch the power off before you put a hand in the water. Local code and a licensed electrician decide.',
  solids:
    'Raw fish solids on food crops: keep the waiting rule, wash the harvest, wear gloves. Wet solids in a closed space give off hydrogen sulfide, which kills. Local rules come first.',
  water:
    'Ammonia and lack of oxygen kill fish: backup air must start within half the oxygen time. Dissolve caustics first and add them slowly; wear goggles and gloves.',
} as const;
