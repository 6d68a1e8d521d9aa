/**
 * Feeding rates of rainbow trout by temperature and size.
 *
 * Source: Leitritz and Lewis, Trout and Salmon Culture (University of California, 1980), as North Carolina State
 * University extension prints it. Fish are sorted by number to the pound; inches are only the chart's label. The two
 * entries at 67 and 68 °F for 1 to 2 inches (9.1 and 9.4, a jump of 1.3 after steps of 0.2 or 0.3) look misprinted and
 * are left out.
 */

/** kg in a pound, exactly. */
const POUND = 0.45359237;
const MISPRINT = undefined;

/**
 * Fish to the pound at the lower end of each class but the first: a class begins where fish reach 1 / this of a pound.
 */
const fishToThePound = [2542, 304, 88.3, 37.8, 19.7, 11.6, 7.35, 4.94, 3.47, 2.53];

/** Mass of one fish at which each class after the first begins, kg. */
export const classMasses: readonly number[] = fishToThePound.map((number) => POUND / number);

export const classLengths: readonly string[] = [
  'under 1 inch',
  '1 to 2 inches',
  '2 to 3 inches',
  '3 to 4 inches',
  '4 to 5 inches',
  '5 to 6 inches',
  '6 to 7 inches',
  '7 to 8 inches',
  '8 to 9 inches',
  '9 to 10 inches',
  'over 10 inches',
];

/** Temperature of the first row, °F; a row a degree. */
export const firstFahrenheit = 36;

/** Per cent of body mass a day; a row a degree, a column a class. */
// biome-ignore format: a printed chart, line by line
export const percentADay: readonly (readonly (number | undefined)[])[] = [
  [2.7, 2.2, 1.7, 1.3, 1.0, 0.8, 0.7, 0.6, 0.5, 0.5, 0.4], // 36 °F
  [2.7, 2.3, 1.8, 1.4, 1.1, 0.9, 0.7, 0.6, 0.5, 0.5, 0.4], // 37 °F
  [2.9, 2.4, 2.0, 1.5, 1.2, 0.9, 0.8, 0.7, 0.6, 0.5, 0.5], // 38 °F
  [3.0, 2.5, 2.2, 1.7, 1.3, 0.9, 0.8, 0.7, 0.6, 0.6, 0.5], // 39 °F
  [3.2, 2.6, 2.2, 1.7, 1.3, 1.0, 0.9, 0.8, 0.7, 0.6, 0.5], // 40 °F
  [3.3, 2.8, 2.2, 1.8, 1.4, 1.1, 0.9, 0.8, 0.7, 0.6, 0.5], // 41 °F
  [3.5, 2.8, 2.4, 1.8, 1.4, 1.2, 0.9, 0.8, 0.7, 0.6, 0.5], // 42 °F
  [3.6, 3.0, 2.5, 1.9, 1.4, 1.2, 1.0, 0.9, 0.8, 0.7, 0.6], // 43 °F
  [3.8, 3.1, 2.5, 2.0, 1.5, 1.3, 1.0, 0.9, 0.8, 0.8, 0.6], // 44 °F
  [4.0, 3.3, 2.7, 2.1, 1.6, 1.3, 1.1, 1.0, 0.9, 0.8, 0.7], // 45 °F
  [4.1, 3.4, 2.8, 2.2, 1.7, 1.4, 1.2, 1.0, 0.9, 0.8, 0.7], // 46 °F
  [4.3, 3.6, 3.0, 2.3, 1.7, 1.4, 1.2, 1.0, 0.9, 0.8, 0.7], // 47 °F
  [4.5, 3.8, 3.0, 2.4, 1.8, 1.5, 1.3, 1.1, 1.0, 0.9, 0.8], // 48 °F
  [4.7, 3.9, 3.2, 2.5, 1.9, 1.5, 1.3, 1.1, 1.0, 0.9, 0.8], // 49 °F
  [5.2, 4.3, 3.4, 2.7, 2.0, 1.7, 1.4, 1.2, 1.1, 1.0, 0.9], // 50 °F
  [5.4, 4.5, 3.5, 2.8, 2.1, 1.7, 1.5, 1.3, 1.1, 1.0, 0.9], // 51 °F
  [5.4, 4.5, 3.6, 2.8, 2.1, 1.7, 1.5, 1.3, 1.1, 1.0, 0.9], // 52 °F
  [5.6, 4.7, 3.8, 2.9, 2.2, 1.8, 1.5, 1.3, 1.1, 1.1, 1.0], // 53 °F
  [5.8, 4.9, 3.9, 3.0, 2.3, 1.9, 1.6, 1.4, 1.3, 1.1, 1.0], // 54 °F
  [6.1, 5.1, 4.2, 3.2, 2.4, 2.0, 1.6, 1.4, 1.3, 1.1, 1.0], // 55 °F
  [6.3, 5.3, 4.3, 3.3, 2.5, 2.0, 1.7, 1.5, 1.3, 1.2, 1.0], // 56 °F
  [6.7, 5.5, 4.5, 3.5, 2.6, 2.1, 1.8, 1.5, 1.4, 1.2, 1.1], // 57 °F
  [7.0, 5.8, 4.8, 3.6, 2.7, 2.2, 1.9, 1.6, 1.4, 1.3, 1.2], // 58 °F
  [7.3, 6.0, 5.0, 3.7, 2.8, 2.3, 1.9, 1.7, 1.5, 1.3, 1.2], // 59 °F
  [7.5, 6.3, 5.1, 3.9, 3.0, 2.4, 2.0, 1.7, 1.5, 1.4, 1.3], // 60 °F
  [7.8, 6.5, 5.3, 4.1, 3.1, 2.5, 2.0, 1.8, 1.6, 1.4, 1.3], // 61 °F
  [8.1, 6.7, 5.5, 4.3, 3.2, 2.6, 2.1, 1.8, 1.6, 1.5, 1.4], // 62 °F
  [8.4, 7.0, 5.7, 4.5, 3.4, 2.7, 2.1, 1.9, 1.7, 1.5, 1.4], // 63 °F
  [8.7, 7.2, 5.9, 4.7, 3.5, 2.8, 2.2, 1.9, 1.7, 1.6, 1.5], // 64 °F
  [9.0, 7.5, 6.1, 4.9, 3.6, 2.9, 2.2, 2.0, 1.8, 1.6, 1.5], // 65 °F
  [9.3, 7.8, 6.3, 5.1, 3.8, 3.0, 2.3, 2.0, 1.8, 1.6, 1.6], // 66 °F
  [9.6, MISPRINT, 6.6, 5.3, 3.9, 3.1, 2.4, 2.1, 1.9, 1.7, 1.6], // 67 °F
  [9.9, MISPRINT, 6.9, 5.5, 4.0, 3.2, 2.5, 2.1, 2.0, 1.8, 1.7], // 68 °F
];
