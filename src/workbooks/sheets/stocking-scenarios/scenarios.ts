import type { SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formatted } from '../styles';

type Entry = number | string;
type Four = readonly [Entry, Entry, Entry, Entry];

interface Input {
  readonly name: string;
  readonly kind?: string;
  readonly format?: string;
  readonly US: Four;
  readonly metric?: Four;
}

const same = (entry: Entry): Four => [entry, entry, entry, entry];

/** Three farms with settling drums, and a small one whose gravel beds do it all. */
const inputs: readonly Input[] = [
  { name: 'fish count', US: [120, 350, 800, 100] },
  { name: 'fish mass', kind: 'fish', US: same(8), metric: same(225) },
  { name: 'feeding rate', format: '0.0%', US: [0.015, 0.015, 0.015, 0.01] },
  { name: 'species', US: same('tilapia') },
  { name: 'protein', format: '0%', US: same(0.32) },
  { name: 'temperature', kind: 'temperature', US: same(77), metric: same(25) },
  { name: 'coldest water', kind: 'temperature', US: [70, 70, 72, 66], metric: [21, 21, 22, 19] },
  { name: 'hottest water', kind: 'temperature', US: same(84), metric: same(29) },
  { name: 'pH', US: same(7) },
  { name: 'highest pH', US: same(7.4) },
  { name: 'tank volume', kind: 'volume', US: [400, 1100, 2500, 600], metric: [1500, 4200, 9500, 2300] },
  { name: 'pump flow', kind: 'flow', US: [10, 25, 50, 12], metric: [38, 94, 188, 45] },
  { name: 'air supply', kind: 'transfer', US: [0.3, 0.8, 1.6, 0.2], metric: [0.14, 0.36, 0.73, 0.09] },
  { name: 'settler', US: ['swirl', 'swirl', 'swirl', ''] },
  { name: 'drum diameter', kind: 'dimension', US: [22.5, 22.5, 22.5, ''], metric: [570, 570, 570, ''] },
  { name: 'drums', US: [1, 2, 4, 'none'] },
  { name: 'pads', US: [2, 4, 8, 'none'] },
  { name: 'pad area', kind: 'area', US: [3, 3, 3, ''], metric: [0.28, 0.28, 0.28, ''] },
  { name: 'media volume', kind: 'bulk', US: [8, 24, 60, 'none'], metric: [230, 680, 1700, 'none'] },
  { name: 'bed area', kind: 'area', US: [100, 280, 640, 150], metric: [9, 26, 60, 14] },
  { name: 'crop', US: same('leafy') },
  { name: 'bed depth', kind: 'dimension', US: same(12), metric: same(300) },
  { name: 'power', kind: 'power', US: [60, 140, 330, 45] },
  { name: 'power price', kind: 'price of energy', format: '0.000', US: same(0.16) },
  { name: 'feed price', kind: 'price of mass', format: '0.00', US: same(1.1), metric: same(2.4) },
  { name: 'nitrogen price', kind: 'price of mass', format: '0.00', US: same(0.9), metric: same(2) },
  { name: 'phosphate price', kind: 'price of mass', format: '0.00', US: same(1.1), metric: same(2.4) },
  { name: 'potash price', kind: 'price of mass', format: '0.00', US: same(0.7), metric: same(1.5) },
];

const titles = ['120 fish', '350 fish', '800 fish', '100, gravel beds'];
const last = 4 + inputs.length;
/** Names and one column a scenario, headings on top. */
export const scenarioRange = `Scenarios!$B$4:$F$${last}`;
export const scenarioTitles = 'Scenarios!$C$4:$F$4';
export const scenarioHeadings = 'Scenarios!$B$4:$F$4';

export function scenariosSheet(profile: ReadyProfile): SheetData {
  const widths = [12, 20, 18, 18, 18, 18];
  const draft = framed({
    name: 'Scenarios',
    title: 'Scenarios: one column a farm',
    step: 'Type over the numbers of a column, and its name. Blank is not given; none says that the stage is absent. Names may stand in any order and more of them added (see Inputs); equipment has no default.',
    caution: cautions.water,
    widths,
  });
  draft.put('A4', 'unit', 'heading').put('B4', 'input', 'heading').across('C4', titles, 'heading');
  inputs.forEach(({ name, kind, format, US, metric }, index) => {
    const row = 5 + index;
    const entries = profile === 'US' ? US : (metric ?? US);
    if (kind !== undefined) draft.put(`A${row}`, unitOf(kind), 'note');
    draft.put(`B${row}`, name, 'heading').across(`C${row}`, entries, format ? formatted('input', format) : 'input');
  });
  const rowOf = (name: string): number => 5 + inputs.findIndex((input) => input.name === name);
  draft
    .choice(
      `C${rowOf('species')}:F${rowOf('species')}`,
      ['tilapia', 'rainbow trout', 'channel catfish', 'common carp', 'warm-water', 'cool-water', 'cold-water'],
      'whose limits hold',
      false,
    )
    .choice(
      `C${rowOf('settler')}:F${rowOf('settler')}`,
      ['swirl', 'radial', 'mixed', 'ideal'],
      'or a share that you measured',
      false,
    )
    .choice(`C${rowOf('crop')}:F${rowOf('crop')}`, ['leafy', 'fruiting', 'raft'], 'or an areal rate of feed', false);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    frozenColumns: 2,
    tabColor: 'E0B400',
    print: print(profile, `A1:F${last}`, { landscape: false, fitToHeight: 1 }),
  });
}

/** Every input that a scenario may have, for those who want more rows. */
export function inputsSheet(profile: ReadyProfile): SheetData {
  const widths = [18, 14, 14, 20, 38, 90];
  const draft = framed({
    name: 'Inputs',
    title: 'Every input that a scenario may have',
    step: 'Nothing to type. Insert a row in Scenarios, write the name there as it stands here, and give it a figure in each column.',
    widths,
  });
  draft
    .fill('A4:F4', 'heading')
    .fill('A5:F70', 'result')
    .fill('D5:D70', formatted('result', '[>=10]0.0;[=0]0;0.0###'))
    .put('A4', '=SILT.PLAN.INPUTS(SiltUnits,TRUE)', 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '7F7F7F',
    print: print(profile, 'A1:F70'),
  });
}
