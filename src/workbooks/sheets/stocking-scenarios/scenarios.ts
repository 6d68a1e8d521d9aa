import { numberFormats } from '../../../catalogue/number-formats';
import { type NamedInput, wordsOf } from '../../../catalogue/plan/named-input';
import { planInputs } from '../../../catalogue/plan/plan-inputs';
import { type InputKey, inputKeys, scenarioInputs } from '../../../catalogue/plan/scenario-inputs';
import { inputName } from '../../../catalogue/reading/input-table';
import type { SheetData } from '../../../hosts/workbook-model';
import { readProfile } from '../../../units/profile';
import { cautions } from '../cautions';
import { chooser } from '../chooser';
import { columnWidths, framed, print, unitOf, wrappedHeight } from '../frame';
import { type Likely, type LikelyBeside, readAs, unlikelyAmong } from '../likely';
import type { ReadyProfile, SheetDraft } from '../sheet-draft';
import { formatted, styles } from '../styles';

type Entry = number | string;
type Four = readonly [Entry, Entry, Entry, Entry];

/** The entries of four farms for one input. The input itself gives the name, unit, number format and choices. */
interface Input {
  readonly US: Four;
  readonly metric?: Four;
}

const same = (entry: Entry): Four => [entry, entry, entry, entry];

/** Three farms with settling drums, and a small one with gravel beds only. */
const inputs: Partial<Record<InputKey, Input>> = {
  fishCount: { US: [120, 350, 800, 100] },
  fishMass: { US: same(8), metric: same(225) },
  feedingRate: { US: [0.015, 0.015, 0.015, 0.01] },
  species: { US: same('tilapia') },
  protein: { US: same(0.32) },
  temperature: { US: same(77), metric: same(25) },
  coldestWater: { US: [70, 70, 72, 66], metric: [21, 21, 22, 19] },
  hottestWater: { US: same(84), metric: same(29) },
  ph: { US: same(7) },
  highestPh: { US: same(7.4) },
  tankVolume: { US: [400, 1100, 2500, 600], metric: [1500, 4200, 9500, 2300] },
  waterOut: { US: [25, 70, 160, 10], metric: [95, 265, 600, 40] },
  conversion: { US: same(1.9) },
  pumpFlow: { US: [10, 25, 50, 12], metric: [38, 94, 188, 45] },
  airSupply: { US: [0.3, 0.8, 1.6, 0.2], metric: [0.14, 0.36, 0.73, 0.09] },
  settler: { US: ['swirl', 'swirl', 'swirl', ''] },
  drumDiameter: { US: [22.5, 22.5, 22.5, ''], metric: [570, 570, 570, ''] },
  drums: { US: [1, 2, 4, 'none'] },
  pads: { US: [2, 4, 8, 'none'] },
  padArea: { US: [3, 3, 3, ''], metric: [0.28, 0.28, 0.28, ''] },
  mediaVolume: { US: [8, 24, 60, 'none'], metric: [230, 680, 1700, 'none'] },
  bedArea: { US: [100, 280, 640, 150], metric: [9, 26, 60, 14] },
  crop: { US: same('leafy') },
  bedDepth: { US: same(12), metric: same(300) },
  power: { US: [60, 140, 330, 45] },
  powerPrice: { US: same(0.16) },
  feedPrice: { US: same(1.1), metric: same(2.4) },
  nitrogenPrice: { US: same(0.9), metric: same(2) },
  phosphatePrice: { US: same(1.1), metric: same(2.4) },
  potashPrice: { US: same(0.7), metric: same(1.5) },
};

const keys = inputKeys.filter((key) => inputs[key] !== undefined);
const last = 4 + keys.length;
const rowOf = (key: InputKey): number => 5 + keys.indexOf(key);
/** The cells of the four farms for an input. */
const cellsOf = (key: InputKey): string => `C${rowOf(key)}:F${rowOf(key)}`;

/**
 * The smallest and the largest likely size. The largest feeding rates are those of SRAC Publication 282 (Rakocy):
 * 20 % of body mass a day for the smallest fry, 10 % from 5 g on. Twice less than the smallest rate of the trout chart of
 * Leitritz and Lewis (1980), and the others: common practice, no source.
 */
const likely: Partial<Record<InputKey, Likely | LikelyBeside>> = {
  fishMass: ['0.2 g', '20 kg'],
  feedingRate: [
    '0.2 %',
    { formula: `IF(IFERROR(${readAs('fish', cellsOf('fishMass'))}<${readAs('fish', '"5 g"')},FALSE),0.2,0.1)` },
  ],
  protein: ['20 %', '60 %'],
  temperature: ['1 °C', '40 °C'],
  coldestWater: ['1 °C', '40 °C'],
  hottestWater: ['1 °C', '40 °C'],
  tankVolume: ['50 L', '2000000 L'],
  pumpFlow: ['0.5 L/min', '100000 L/min'],
  airSupply: ['0.001 kg/h', '1000 kg/h'],
  drumDiameter: ['150 mm', '1500 mm'],
  padArea: ['0.01 m2', '20 m2'],
  mediaVolume: ['1 L', '1000000 L'],
  bedArea: ['0.1 m2', '100000 m2'],
  bedDepth: ['50 mm', '1000 mm'],
};

const countRow = rowOf('fishCount');

/** The columns of the farms that are named by their fish. */
const counted = ['C', 'D', 'E'];
const titles = [...counted.map(titleOf), '100, gravel beds'];

/** A title that follows the count, so that no column of 800 fish is called 120; the second of equal ones says so. */
function titleOf(column: string): string {
  const count = `${column}${countRow}`;
  const soFar = `$${counted[0]}${countRow}:${count}`;
  const which = `IF(COUNTIF(${soFar},${count})>1," ("&COUNTIF(${soFar},${count})&")","")`;
  return `=IF(ISNUMBER(${count}),${count}&" fish"&${which},"farm "&COLUMNS(${soFar}))`;
}
const symbols = readProfile('metric').units;

/** Names and one column per scenario, with headings. */
export const scenarioRange = `Scenarios!$B$4:$F$${last}`;
const scenarioTitles = 'Scenarios!$C$4:$F$4';
const scenarioHeadings = 'Scenarios!$B$4:$F$4';

/** The names of inputs, and the column of the scenario whose place a cell holds. */
export function chosenScenario(place: string): string {
  const places = `SEQUENCE(1,COLUMNS(${scenarioHeadings}),0)`;
  return `FILTER(${scenarioRange},(${places}=0)+(${places}=${place}))`;
}

/** The cells in which a sheet's scenario is chosen: typed in B4, its place in C4. */
export function putScenarioChooser(draft: SheetDraft): void {
  chooser(draft, {
    what: 'scenario',
    list: scenarioTitles,
    typed: 'B4',
    place: 'C4',
    shown: 'D4',
    listed: 'A5',
    first: 2,
  });
}

export function scenariosSheet(profile: ReadyProfile): SheetData {
  const widths = [9, 18, 13, 13, 13, 13, 1, 42];
  const draft = framed({
    name: 'Scenarios',
    title: 'Scenarios: one column per farm',
    step: 'Type over the numbers and the name of a column. Leave a cell empty if the value is not given; type none if the farm does not have that stage. Rows can be in any order, and you can add more (see Inputs). Equipment has no default.',
    caution: cautions.water,
    widths,
  });
  draft.put('A4', 'unit', 'heading').put('B4', 'input', 'heading').across('C4', titles, 'heading');
  // Titles may take two lines, so that what to check is in view beside the task pane.
  draft.put('H4', 'What to check', 'heading').height(4, 32);
  keys.forEach((key) => {
    const row = rowOf(key);
    const spec: NamedInput = scenarioInputs[key];
    const { US, metric = US } = inputs[key] ?? { US: same('') };
    // Some rows have two lines.
    const middle = { vertical: 'middle' } as const;
    if ('kind' in spec && symbols[spec.kind].symbol !== '') {
      draft.put(`A${row}`, unitOf(spec.kind), { ...styles.note, ...middle });
    }
    const style = spec.format === undefined ? styles.input : formatted('input', numberFormats[spec.format]);
    draft
      .put(`B${row}`, inputName(scenarioInputs, key), 'heading')
      .across(`C${row}`, profile === 'US' ? US : metric, { ...style, ...middle });
    const sizes = likely[key];
    if ('kind' in spec && sizes !== undefined) {
      draft
        .put(`H${row}`, unlikelyAmong(cellsOf(key), '$C$4:$F$4', spec.kind, sizes), {
          ...styles.note,
          ...middle,
          fontSize: 9,
          wrap: true,
        })
        // A sentence takes two lines beside the task pane.
        .height(row, 26)
        .alarm(`C${row}:F${row}`, `=ISNUMBER(SEARCH(C$4,$H${row}))`);
    }
    const words = wordsOf(spec);
    if (words.length > 0) draft.choice(`C${row}:F${row}`, words, spec.meaning, 'choice' in spec);
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    frozenColumns: 2,
    tabColor: 'E0B400',
    print: print(profile, `A1:H${last}`, { fitToHeight: 1 }),
  });
}

/** Every input that a scenario can have, for users who need more rows. */
export function inputsSheet(profile: ReadyProfile): SheetData {
  const widths = [23, 18, 13, 18, 48, 62];
  const [, , , , sourceWidth = 0, meaningWidth = 0] = widths;
  const listed = 4 + inputKeys.length;
  const draft = framed({
    name: 'Inputs',
    title: 'Every input that a scenario can have',
    step: 'No input needed on this sheet. To use an input, insert a row in Scenarios, type the name exactly as it is here, and type a value in each column.',
    widths,
  });
  draft
    .fill('A4:F4', 'heading')
    .fill(`A5:F${listed}`, 'tall')
    .fill(`D5:D${listed}`, formatted('tall', '[>=10]0.0;[=0]0;0.0###'))
    .fill(`E5:F${listed}`, { ...styles.tall, wrap: true })
    .put('A4', '=SILT.PLAN.INPUTS(SiltUnits,TRUE)', 'heading');
  planInputs(readProfile(profile)).forEach(({ source, meaning }, index) => {
    const texts = [
      [source, sourceWidth],
      [meaning, meaningWidth],
    ] as const;
    draft.height(5 + index, wrappedHeight(texts));
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '7F7F7F',
    print: print(profile, `A1:F${listed}`),
  });
}
