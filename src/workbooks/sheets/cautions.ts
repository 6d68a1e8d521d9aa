/** What can hurt, a sentence or two for each kind of work, shown beside the step. */
export const cautions = {
  drums:
    'Know what a drum held and use only food-grade ones; never heat or cut a closed drum or one that held anything flammable; hot plastic burns and gives off fumes. The maker’s sheet comes first.',
  dust: 'Silica and light-aggregate dust harm lungs and wet cement burns skin: mask, gloves, goggles. Fresh cement raises pH, so leach and test before fish. The maker’s sheet comes first.',
  metals:
    'Zinc, brass and copper harm fish; sealant must be safe for fish, and most kinds do not bond to polyethylene. Ask the maker.',
  weight:
    'A full drum weighs about a quarter of a tonne: stand and floor must carry it, nobody stands under it while it fills, and it is shored before it is moved. Local code and a licensed trade decide.',
  electricity:
    'Ground-fault protection on every circuit, drip loops on every cord, power off before hands go in. Local code and a licensed electrician decide.',
  solids:
    'Raw fish solids on food crops: keep the waiting rule, wash the harvest, wear gloves. Wet solids kept in a closed space give off hydrogen sulfide, which kills. Local rules come first.',
  water:
    'Ammonia and loss of oxygen kill fish: have backup air within half the oxygen time. Dissolve caustics first and add them slowly, with goggles and gloves.',
} as const;
