import type { SheetData } from '../../../hosts/workbook-model';
import { columnWidths, framed, print, unitOf, withUnit } from '../frame';
import { readAs } from '../likely';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { anyGiven } from './any-given';

const last = 40;

/** 2026-03-02 as a spreadsheet's day number. */
const firstDay = 46_083;

/** Days since the first weighing, mean mass of one in g, mean °C since the weighing before. */
const weighings: readonly (readonly [number, number, number])[] = [
  [0, 62, 26.5],
  [14, 83, 26.5],
  [28, 105, 27],
  [42, 135, 27.5],
  [56, 166, 27.5],
  [70, 203, 28],
];

const fahrenheit = (celsius: number): number => Math.round((celsius * 1.8 + 32) * 2) / 2;

/** The biomass is that of 215 fish at the first weighing and of 210 at the last: five died, of about 120 g each. */
const biomass = { fed: [95, 43], start: [29.6, 13.3], end: [94.5, 42.6], died: [1.3, 0.6] } as const;

/** Weighings, and the growth coefficient and the feed conversion that they give. */
export function fishSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [14, 16, 18, 3, 34, 14, 14];
  const draft = framed({
    name: 'Fish',
    title: 'How fast your fish grow, and how much they eat',
    step: 'One row per weighing: the date, the mean mass of one fish, and the mean water temperature since the row before; the first temperature is ignored. At the right, type feed and biomass over the same time.',
    widths,
  });
  draft
    .put('A4', 'yyyy-mm-dd', 'note')
    .put('B4', unitOf('fish'), 'note')
    .put('C4', unitOf('temperature'), 'note')
    .across('A5', ['Date', 'Mean mass of one fish', 'Temperature since last row'], 'heading')
    .height(5, 32)
    .fill(`A6:A${last}`, formatted('input', formats.date))
    .fill(`B6:C${last}`, 'input');
  weighings.forEach(([day, grams, celsius], index) => {
    draft
      .put(`A${6 + index}`, firstDay + day, formatted('input', formats.date))
      .put(`B${6 + index}`, us ? Math.round(grams * 0.3527396) / 10 : grams, 'input')
      .put(`C${6 + index}`, us ? fahrenheit(celsius) : celsius, 'input');
  });
  draft
    .fill('E5:G5', 'heading')
    .fill('E6:F6', formatted('total', formats.four))
    .fill('G6', 'total')
    .put(
      'E5',
      `=SILT.STOCK.COEFFICIENT(SiltUnits,FILTER(A6:C${last},${anyGiven(['A', 'B', 'C'], last)}),TRUE)`,
      'heading',
      'In the percent form that STOCK.GROW takes.',
    )
    .put('E9', 'Feed conversion', 'section')
    .put('E10', withUnit('Feed given', 'mass'))
    .put('F10', biomass.fed[us ? 0 : 1], 'input')
    .put('E11', withUnit('Biomass at the start', 'mass'))
    .put('F11', biomass.start[us ? 0 : 1], 'input')
    .put('E12', withUnit('Biomass at the end', 'mass'))
    .put('F12', biomass.end[us ? 0 : 1], 'input')
    .put('E13', withUnit('Fish taken out', 'mass'))
    .put('F13', 0, 'input')
    .put('E14', withUnit('Fish that died', 'mass'))
    .put('F14', biomass.died[us ? 0 : 1], 'input')
    .put('E15', 'Feed conversion', 'total')
    .put(
      'F15',
      `=SILT.STOCK.CONVERSION(SiltUnits,F10,${readAs('mass', 'F12')}-${readAs('mass', 'F11')}+IF(F13="",0,${readAs('mass', 'F13')}),F14)`,
      formatted('total', formats.two),
    );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: '1F7A8C',
    print: print(profile, `A1:G${last}`, { landscape: false, fitToHeight: 1, titleRows: '1:5' }),
  });
}

/** What the summary reads. */
export const fishFigures = {
  coefficient: 'Fish!E6',
  error: 'Fish!F6',
  weighings: 'Fish!G6',
  conversion: 'Fish!F15',
} as const;
