import { type Entry, type Reading, readings } from './entries';

export const labels: Readonly<Record<Reading, string>> = {
  temperature: 'Temperature',
  ph: 'pH',
  ammonia: 'Ammonia (as N)',
  nitrite: 'Nitrite (as N)',
  nitrate: 'Nitrate (as N)',
  oxygen: 'Oxygen',
  alkalinity: 'Alkalinity (as CaCO3)',
};

/** An entry as a line of the list. */
export function entryText(entry: Entry): string {
  if (entry.kind === 'pull')
    return `${entry.date}: pulled ${entry.volume}${entry.solids && `, solids ${entry.solids}`}`;
  const taken = readings.filter((reading) => entry.values[reading] !== '');
  return `${entry.date}: ${taken.map((reading) => `${labels[reading]} ${entry.values[reading]}`).join(', ')}`;
}

/** What a file has added. */
export function addedSentence(inFile: number, fresh: number): string {
  const added = `${fresh} new ${fresh === 1 ? 'entry' : 'entries'}`;
  return fresh === inFile ? `${added}.` : `${added}; the other ${inFile - fresh} of the file were already here.`;
}
