/** The stages of the work, in the order of the day, by the family that a function's name begins with. */
export const stageTitles: Readonly<Record<string, string>> = {
  CONE: 'Cones: pattern, mix, seams',
  CUT: 'Cutting from sheets',
  TANK: 'Drums and their fittings',
  WATER: 'Water and its tests',
  STOCK: 'Fish and feed',
  LOAD: 'What feed becomes',
  SETTLE: 'Settling',
  SCREEN: 'Filter pads',
  FILTER: 'Biofilter',
  BED: 'Grow beds',
  HARVEST: 'Solids to the garden',
  PIPE: 'Pipes and pumps',
  AIR: 'Air',
  COST: 'Money',
  PLAN: 'The whole farm',
  UNIT: 'Units',
  REF: 'Figures behind the defaults',
};

export function familyOf(name: string): string {
  return name.split('.')[0] ?? name;
}
