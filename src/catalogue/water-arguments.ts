/** Arguments that many functions share, in the ranges of the water formulas. */
export const temperature = { kind: 'temperature', atLeast: 0, atMost: 40, meaning: 'water temperature' } as const;
export const salinity = {
  kind: 'salinity',
  atLeast: 0,
  atMost: 40,
  default: 0,
  meaning: 'practical salinity; 0 for fresh water',
} as const;
/** Water temperature in pipes and air lines, with a default. */
export const usualTemperature = { ...temperature, default: 20 } as const;
export const elevation = {
  kind: 'run',
  atLeast: -500,
  atMost: 5000,
  default: 0,
  meaning: 'height above sea level',
} as const;
export const ph = { kind: 'number', above: 0, below: 14, meaning: 'pH' } as const;
