/** Diameters that a drum can have, in meters; outside them a number or its unit is wrong. */
export const drumWidths = { least: 0.15, most: 1.5 } as const;

export const noSuchWidth = 'No drum has this diameter: check the number and its unit.';
