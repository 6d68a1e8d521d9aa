import type { ChartData, SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted, styles } from '../styles';

/** A year of weeks. */
const last = 62;

export type Reading = 'date' | 'temperature' | 'pH' | 'ammonia' | 'nitrite' | 'nitrate' | 'oxygen' | 'alkalinity';
const columns: Readonly<Record<Reading, string>> = {
  date: 'A',
  temperature: 'B',
  pH: 'C',
  ammonia: 'D',
  nitrite: 'E',
  nitrate: 'F',
  oxygen: 'G',
  alkalinity: 'H',
};

export function testColumn(reading: Reading): string {
  return `Tests!$${columns[reading]}$6:$${columns[reading]}$${last}`;
}

/** The reading of the test chosen on the sheet Verdict; `-`, which means not measured, if its cell is empty. */
export function readingAt(reading: Reading): string {
  return `IF(ISBLANK(INDEX(${testColumn(reading)},Verdict!$C$5)),"-",INDEX(${testColumn(reading)},Verdict!$C$5))`;
}

/** 2026-03-02 as a spreadsheet's day number. */
const firstWeek = 46_083;

/** Twelve weeks: °C, pH, ammonia, nitrite, nitrate as N, oxygen, alkalinity, all mg/L; null is not measured. */
const weeks: readonly (readonly [number, ...(number | null)[]])[] = [
  [21, 7.4, 0.4, 0.05, 6, 6.8, 90],
  [21.5, 7.4, 0.5, 0.06, 8, 6.7, 86],
  [22, 7.3, 0.6, 0.08, 10, 6.6, 80],
  [22.5, 7.3, 0.9, 0.1, 12, 6.4, 74],
  [23, 7.6, 1.6, 0.18, 14, 6.1, 66],
  [23.5, 7.8, 2.2, null, 17, 5.9, 88],
  [24, 7.5, 1.6, 0.26, 20, 5.8, 70],
  [24.5, 7.1, 1.1, 0.2, 23, 5.9, 56],
  [25, 7.1, 0.8, 0.12, 25, 5.8, 60],
  [25, 7.3, 0.6, 0.09, 28, null, 72],
  [25.5, 7.4, 0.5, 0.07, 30, 5.7, 78],
  [26, 7.4, 0.5, 0.06, 33, 5.6, 80],
];

const unitStyle = { ...styles.note, wrap: true, vertical: 'top' } as const;

const tooMuch = 'too much un-ionized';
const species = 'Verdict!$B$4';
const noSpecies = 'no limits: choose a species in Verdict';
/** More, in mg/L, is a slip of the decimal point or of the unit: tanks with pure oxygen stay below it. */
const impossibleOxygen = '25';
/** Limits of the chosen species, as STOCK.SPECIES gives them on the sheet Verdict. */
const speciesLimit = {
  survivesFrom: 'Verdict!$I$9',
  survivesTo: 'Verdict!$J$9',
  oxygenFloor: 'Verdict!$M$9',
  ammonia: 'Verdict!$N$9',
  nitrite: 'Verdict!$P$9',
  phFrom: 'Verdict!$R$9',
  phTo: 'Verdict!$S$9',
} as const;

/** A limit that WATER.CHECK gives beside a reading. */
function checkedLimit(reading: string, side: 'low' | 'high'): string {
  const column = side === 'low' ? 'C' : 'D';
  return `IFERROR(INDEX(Verdict!$${column}$9:$${column}$19,MATCH("${reading}",Verdict!$A$9:$A$19,0)),"")`;
}

/** The words of a verdict, and the input column that they color. */
const judged = [
  { column: 'D', words: tooMuch },
  { column: 'D', words: 'ammonia too' },
  { column: 'C', words: 'pH too' },
  { column: 'G', words: 'oxygen too' },
  { column: 'E', words: 'nitrite too' },
  { column: 'F', words: 'nitrate too' },
  { column: 'B', words: 'temperature too' },
  { column: 'H', words: 'alkalinity too' },
] as const;

/** One verdict per row, by the limits of the species on the sheet Verdict, with the most dangerous reading first. */
function verdicts(): string {
  const verdictWhere = (reading: Reading, side: '<' | '>', bound: string, words: string): string => {
    const typed = testColumn(reading);
    // Read as a temperature, so that a change of units finds and converts the typed numbers.
    const values = reading === 'temperature' ? `IFERROR(SILT.UNIT.READ(SiltUnits,"temperature",${typed}),"")` : typed;
    return `IF(ISNUMBER(${typed})*ISNUMBER(${bound})*(${values}${side}${bound}),"${words}, ","")`;
  };
  const unionized = `J6:J${last}`;
  const allowed = 'Verdict!$B$6';
  const parts = [
    `IF((${species}="")+ISERROR(Verdict!$H$8)>0,"${noSpecies}, ","")`,
    `IF(ISNUMBER(${unionized})*(${unionized}>${allowed}),"${tooMuch}, ","")`,
    verdictWhere('oxygen', '<', speciesLimit.oxygenFloor, 'oxygen too low'),
    verdictWhere('oxygen', '>', impossibleOxygen, 'oxygen too high to be right'),
    verdictWhere('ammonia', '>', speciesLimit.ammonia, 'ammonia too high'),
    verdictWhere('nitrite', '>', speciesLimit.nitrite, 'nitrite too high'),
    verdictWhere('pH', '<', speciesLimit.phFrom, 'pH too low'),
    verdictWhere('pH', '>', speciesLimit.phTo, 'pH too high'),
    verdictWhere('temperature', '<', speciesLimit.survivesFrom, 'temperature too low'),
    verdictWhere('temperature', '>', speciesLimit.survivesTo, 'temperature too high'),
    verdictWhere('nitrate', '>', checkedLimit('nitrate', 'high'), 'nitrate too high'),
    verdictWhere('alkalinity', '<', checkedLimit('alkalinity', 'low'), 'alkalinity too low'),
    `IF(ISTEXT(${testColumn('nitrite')})+ISTEXT(${testColumn('nitrate')})+ISTEXT(${testColumn('oxygen')}),"text is judged in Verdict, ","")`,
    `IF(ISTEXT(${testColumn('date')}),"the date cannot be read, ","")`,
  ].join('&');
  const withinLimits = `IF(ISNUMBER(${unionized}),IF(${unionized}>${allowed}/2,"watch","within limits"),"ammonia not judged")`;
  const measuredCount = (['temperature', 'pH', 'ammonia', 'nitrite', 'nitrate', 'oxygen', 'alkalinity'] as const)
    .map((reading) => `(${testColumn(reading)}<>"")`)
    .join('+');
  return `LET(words,${parts},IF((${measuredCount})=0,"",IF(words="",${withinLimits},LEFT(words,LEN(words)-2))))`;
}

/** The charts show the weeks of the sample rows. */
const charted = (letter: string): string => `Tests!$${letter}$6:$${letter}$${5 + weeks.length}`;

function chart(title: string, place: string, letters: readonly string[], more: Partial<ChartData>): ChartData {
  return {
    type: 'line',
    title,
    place,
    series: letters.map((letter) => ({
      name: `Tests!$${letter}$5`,
      categories: charted('A'),
      values: charted(letter),
    })),
    categoryFormat: 'd mmm',
    ...more,
  };
}

/** The weekly tests, and the un-ionized part of each ammonia reading. */
export function testsSheet(profile: ReadyProfile): SheetData {
  // The verdict is beside the typed readings, so that a window of 1280 pixels shows it whole.
  const widths = [11, 14, 6, 11, 8, 8, 9, 11, 40, 12, 11];
  const draft = framed({
    name: 'Tests',
    title: 'Weekly water tests',
    step: 'One row per test. Leave the cell empty if you did not take a reading. Nitrogen readings are as N; for another form type text, such as 40 mg/L as NO3. The verdict uses the limits of the species chosen in Verdict; look there for what to do.',
    caution: cautions.water,
    widths,
  });
  const anyBlank = (...readings: Reading[]): string =>
    readings.map((reading) => `(${testColumn(reading)}="")`).join('+');
  const missing = anyBlank('ammonia', 'pH', 'temperature');
  draft
    .fill('A4:K4', unitStyle)
    .put('A4', 'yyyy-mm-dd', unitStyle)
    .put('B4', unitOf('temperature'), unitStyle)
    .put('H4', unitOf('alkalinity'), unitStyle)
    .height(4, 32);
  for (const column of 'DEFGJK') draft.put(`${column}4`, unitOf('concentration'), unitStyle);
  draft
    .across(
      'A5',
      [
        'Date',
        'Temperature',
        'pH',
        'Ammonia N',
        'Nitrite N',
        'Nitrate N',
        'Oxygen',
        'Alkalinity',
        'Verdict',
        'Un-ionized N',
        'Ammonia N limit',
      ],
      'heading',
    )
    .height(5, 48)
    .fill(`A6:A${last}`, formatted('input', formats.date))
    .fill(`B6:H${last}`, 'input')
    .fill(`I6:I${last}`, 'result')
    .fill(`J6:J${last}`, formatted('result', '0.0000'))
    .fill(`K6:K${last}`, formatted('result', formats.two));
  weeks.forEach(([celsius, ...readings], index) => {
    const row = 6 + index;
    const temperature = profile === 'US' ? Math.round(celsius * 1.8 + 32) : celsius;
    draft
      .put(`A${row}`, firstWeek + 7 * index, formatted('input', formats.date))
      .put(`B${row}`, temperature, 'input')
      .across(
        `C${row}`,
        readings.map((reading) => reading ?? ''),
        'input',
      );
  });
  draft
    .put('I6', `=${verdicts()}`, 'result')
    .put(
      'J6',
      `=IF(${missing},"",SILT.WATER.AMMONIA(SiltUnits,${testColumn('ammonia')},${testColumn('pH')},${testColumn('temperature')}))`,
      formatted('result', '0.0000'),
    )
    .put(
      'K6',
      `=IF(${anyBlank('pH', 'temperature')},"",SILT.WATER.LIMIT(SiltUnits,Verdict!$B$6,${testColumn('pH')},${testColumn('temperature')}))`,
      formatted('result', formats.two),
    );
  for (const { column, words } of judged)
    draft.alarm(`${column}6:${column}${last}`, `=ISNUMBER(SEARCH("${words}",$I6))`);
  draft
    .alarm(`J6:J${last}`, `=ISNUMBER(SEARCH("${tooMuch}",$I6))`)
    .alarm(`I6:I${last}`, `=OR(ISNUMBER(SEARCH("too ",I6)),ISNUMBER(SEARCH("${noSpecies}",I6)))`)
    .alarm(`A6:A${last}`, '=ISNUMBER(SEARCH("the date cannot",$I6))');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    frozenColumns: 1,
    tabColor: 'E0B400',
    charts: [
      chart('Ammonia and nitrite', 'M4:U19', ['D', 'E'], { valueTitle: 'mg/L as N', valueFormat: '0.0' }),
      chart('Un-ionized ammonia', 'M21:U36', ['J'], { valueTitle: 'mg/L as N', valueFormat: '0.000' }),
    ],
    print: print(profile, `A1:K${last}`, { titleRows: '1:5' }),
  });
}
