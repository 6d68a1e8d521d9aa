/** The tables of a packet that are about all drums together. */
import type { PaperTable } from './paper-table';
import type { Job } from './read-job';

/** `Job packet: 1 drum`; the sheet of the drums too, if the workbook has several. */
export function packetTitle({ drums, set }: Job): string {
  const count = drums.length === 1 ? '1 drum' : `${drums.length} drums`;
  return `Job packet: ${count}${set === undefined ? '' : ` of the sheet ${set}`}`;
}

export function drumTable({ drums }: Job): PaperTable {
  return {
    name: 'Drums',
    columns: [
      { heading: 'drum', share: 14 },
      { heading: 'held', share: 16 },
      { heading: 'inside diameter', share: 20, kind: 'dimension' },
      { heading: 'cone height', share: 18, kind: 'dimension' },
      { heading: 'pieces', share: 8, kind: 'count' },
      { heading: 'base mix', share: 12, kind: 'bulk' },
      { heading: 'water held', share: 12, kind: 'volume' },
    ],
    rows: drums.map(({ name, held, diameter, coneHeight, patternCells, baseMix, water }) => [
      ...[name, held, diameter, coneHeight, patternCells[8] ?? '', baseMix, water],
    ]),
  };
}

/** An arbitrary day to count from. */
const dayCountedFrom = 45000;

/** The steps with the workbook's dates, or with days counted from the first leak test and room for dates. */
export function calendarTable(job: Job): PaperTable {
  const note = { heading: 'note', share: 40 };
  const step = { heading: 'step', share: 16 };
  if (job.calendar !== undefined) {
    return {
      ...{ name: 'Calendar', ticks: true, rows: job.calendar },
      columns: [step, { heading: 'date', share: 10, kind: 'date' }, note],
    };
  }
  return {
    name: 'Calendar: count the days from the first leak test and write in the dates',
    ticks: true,
    columns: [step, { heading: 'day', share: 6, kind: 'count' }, { heading: 'date', share: 10 }, note],
    rows: job
      .call('PLAN.DATES', dayCountedFrom)
      .map(([name = '', date = 0, words = '']) => [name, Number(date) - dayCountedFrom, '', words]),
  };
}

/** Where each piece goes, with the names of the drums. */
export function centersTable({ drums, planCells }: Job): PaperTable {
  const named = new Map(drums.map(({ row, name }) => [row, name]));
  return {
    name: 'Centers of the arcs, and lower-left corners of rectangles, from each sheet’s lower-left corner',
    columns: [
      { heading: 'sheet', share: 7, kind: 'count' },
      { heading: 'drum', share: 16 },
      { heading: 'piece', share: 7, kind: 'count' },
      { heading: 'center x', share: 20, kind: 'dimension' },
      { heading: 'center y', share: 20, kind: 'dimension' },
      { heading: 'direction', share: 12, kind: 'angle' },
    ],
    rows: planCells.map(([row = '', piece = '', sheet = '', x = '', y = '', direction = '']) => [
      ...[sheet, named.get(Number(row)) ?? row, piece, x, y, direction],
    ]),
  };
}
