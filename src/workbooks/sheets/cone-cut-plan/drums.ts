import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, withUnit } from '../frame';
import { cautionWord, type Likely, likelyNote, readAs } from '../likely';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { drumWidths, noSuchWidth } from './drum-widths';

/** Room for this many drums. */
export const mostDrums = 8;
const last = 4 + mostDrums;

/** The cells of this sheet that hold the settings for every cone. */
export const settings = {
  thickness: 'Drums!$C$15',
  measured: 'Drums!$C$16',
  clearance: 'Drums!$C$17',
  sheetLength: 'Drums!$C$18',
  sheetWidth: 'Drums!$C$19',
  gap: 'Drums!$C$20',
} as const;

const columns = {
  drum: 'A',
  drain: 'F',
  height: 'G',
  pieces: 'H',
  lap: 'I',
  depth: 'J',
  diameter: 'K',
} as const;

export function drumColumn(name: keyof typeof columns): string {
  const letter = columns[name];
  return `Drums!$${letter}$5:$${letter}$${last}`;
}

/** The cells of a column for the drums that have a name. */
export function ofUsed(name: keyof typeof columns): string {
  return `FILTER(${drumColumn(name)},${drumColumn('drum')}<>"")`;
}

const tape = 'You can type text with a unit: 22 1/2 in, 57 1/2 cm. Type 0 1/2, not 1/2, because 1/2 becomes a date.';

const settingNotes: readonly (readonly [row: number, likely: Likely, meaning: string])[] = [
  [15, ['0.2 mm', '10 mm'], 'of the plastic or metal sheet that the cones are cut from'],
  [17, ['0 mm', '50 mm'], 'all around, between cone and drum, for sealant'],
  [18, ['300 mm', '12 m'], 'as sold; the pieces are placed along it'],
  [19, ['200 mm', '3 m'], 'as sold'],
  [20, ['0 mm', '100 mm'], 'also from the sheet’s edge; allows for the saw and an unsteady hand'],
];

/** What can be wrong with the sizes of a drum: the columns to color, and the word of the message that colors them. */
const faults = [
  { columns: ['C', 'D'], words: 'diameter' },
  { columns: ['D', 'D'], words: 'girth' },
  { columns: ['E', 'E'], words: 'wall' },
  { columns: ['F', 'F'], words: 'drain' },
  { columns: ['G', 'G'], words: 'cone' },
  { columns: ['H', 'H'], words: 'pieces' },
  { columns: ['I', 'I'], words: 'lap' },
  { columns: ['J', 'J'], words: 'water' },
] as const;

const ofRows = (letter: string): string => `${letter}5:${letter}${last}`;

function fromGirth(girth: string): string {
  return `SILT.TANK.GIRTH(SiltUnits,${girth},${ofRows('E')})`;
}

/**
 * The diameter of each drum: as typed, else from its girth. A girth or a wall beside a diameter is read too, so that one
 * that cannot be right is refused and not passed over in silence; a wall alone is read beside a girth that fits every wall.
 */
function diametersUsed(): string {
  const [diameter, girth, wall] = ['C', 'D', 'E'].map(ofRows);
  const beside = `IF((${girth}<>"")*(${girth}<>0),${fromGirth(girth ?? '')},IF(${wall}="",0,${fromGirth('"10 m"')}))`;
  // A diameter is read last, because the cause of an error is looked for in the last call first.
  return `IF(${diameter}="",IF(${girth}="","",${fromGirth(girth ?? '')}),IF(ISERROR(${beside}),${beside},SILT.UNIT.READ(SiltUnits,"dimension",${diameter})))`;
}

/** The mistakes in the row of each drum; blank if there are none. */
function drumFaults(profile: ReadyProfile): string {
  const us = profile === 'US';
  const column = ofRows;
  const size = (letter: string): string => `IFERROR(${readAs('dimension', column(letter))},-1)`;
  const bound = (text: string): string => readAs('dimension', `"${text}"`);
  const diameter = `IF(ISNUMBER(${column('K')}),${column('K')},9.9E+99)`;
  const caution = (condition: string, words: string): string => `IF(${condition},"${words} ","")`;
  const unread = (letter: string): string => `(${column(letter)}<>"")*(${size(letter)}=-1)`;
  const givenAnd = (letter: string, condition: string): string => `(${column(letter)}<>"")*(${condition})`;
  const missingOrZero = (letter: string): string => `(${column(letter)}="")+(${size(letter)}=0)>0`;
  const isUnused = ['A', 'C', 'D', 'E', 'F', 'J'].map((letter) => `(${column(letter)}="")`).join('*');
  return `IF(${isUnused},"",${[
    caution(`${column('A')}=""`, 'Give the drum a name.'),
    caution(`(${column('C')}="")*(${column('D')}="")`, 'Give the diameter, or the girth.'),
    caution(unread('C'), `The inside diameter cannot be read: give a length such as ${us ? '22 1/2 in' : '575 mm'}.`),
    caution(unread('D'), `The girth cannot be read: give a length such as ${us ? '72 in' : '1830 mm'}, or clear it.`),
    caution(unread('E'), `The wall cannot be read: give a length such as ${us ? '0 1/8 in' : '3 mm'}, or clear it.`),
    caution(
      `ISERROR(${column('K')})*(${['C', 'D', 'E'].map(unread).join('+')}=0)`,
      'There is no diameter: see column K, and check the girth and the wall.',
    ),
    caution(
      `(${column('C')}<>"")*IFERROR(ABS(${fromGirth(column('D'))}-${diameter})>${diameter}/20,FALSE)`,
      'The girth gives another diameter: clear the one that is wrong.',
    ),
    caution(
      `ISNUMBER(${column('K')})*((${diameter}<${bound(`${1000 * drumWidths.least} mm`)})+(${diameter}>${bound(`${1000 * drumWidths.most} mm`)}))`,
      noSuchWidth,
    ),
    caution(missingOrZero('F'), 'A drain of 0 lets nothing out.'),
    caution(unread('F'), 'The drain bore cannot be read.'),
    caution(givenAnd('F', `${size('F')}>=${diameter}`), 'The drain is as wide as the drum.'),
    caution(
      givenAnd('F', `(${size('F')}>0)*(${size('F')}<${bound('10 mm')})`),
      'The drain is very narrow: check the number and its unit.',
    ),
    caution(missingOrZero('G'), 'Give the cone’s height.'),
    caution(unread('G'), 'The height of the cone cannot be read.'),
    caution(givenAnd('G', `${size('G')}>${diameter}`), 'The cone is taller than the drum is wide.'),
    // A fifth of the width is a wall of some 25 degrees.
    caution(
      givenAnd(
        'G',
        `(${size('G')}>0)*(${size('G')}<${diameter}/5)*(${diameter}<=${bound(`${1000 * drumWidths.most} mm`)})`,
      ),
      'The cone is very flat: check the number and its unit.',
    ),
    caution(
      givenAnd('H', `IFERROR((${column('H')}<1)+(${column('H')}<>INT(${column('H')}))>0,TRUE)`),
      'The pieces must be a whole number, 1 or more.',
    ),
    caution(unread('I'), 'The lap cannot be read.'),
    caution(givenAnd('I', `${size('I')}>${diameter}/4`), 'The lap is too wide: check the number and its unit.'),
    caution(unread('J'), 'The depth of water cannot be read.'),
    caution(
      givenAnd('J', `${size('J')}>${bound('3 m')}`),
      'No drum holds water this deep: check the number and its unit.',
    ),
  ].join('&')})`;
}

/** The measured drums, the cones to go into them, and the sheet stock. */
export function drumsSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [16, 16, 11, 10, 8, 9, 9, 8, 8, 11, 10, 10, 60];
  const draft = framed({
    name: 'Drums',
    title: 'Measured drums, and the cone that goes into each',
    step: 'Type one row per drum: a name, then its inside diameter. If you can only measure around the outside, type its girth and wall instead. Then type the drain, the cone’s height and its pieces. For more than eight drums, insert these sheets once more.',
    caution: cautions.drums,
    widths,
  });
  draft
    .across('A4', ['Drum', 'What it held'], 'heading')
    .put('C4', withUnit('Inside diameter', 'dimension'), 'heading', tape)
    .put(
      'D4',
      withUnit('Girth', 'dimension'),
      'heading',
      'Measured with a tape around the outside, where the inside diameter cannot be measured.',
    )
    .put('E4', withUnit('Wall', 'dimension'), 'heading')
    .put('F4', withUnit('Drain bore', 'dimension'), 'heading')
    .put('G4', withUnit('Cone height', 'dimension'), 'heading', 'The height for 45 degrees is at the right.')
    .put(
      'H4',
      'Pieces',
      'heading',
      'Equal pieces that make the cone. More pieces fit smaller sheets, but each adds a seam.',
    )
    .put('I4', withUnit('Lap', 'dimension'), 'heading')
    .put('J4', withUnit('Water above cone', 'dimension'), 'heading')
    .put('K4', withUnit('Diameter used', 'dimension'), 'heading')
    .put('L4', withUnit('Height for 45°', 'dimension'), 'heading')
    .put('M4', 'What to check', 'heading')
    .height(4, 48)
    .fill(`A5:J${last}`, 'input')
    .fill(`K5:L${last}`, formatted('result', formats.two))
    .across('A5', ['Fern', 'pickled olives', us ? '22 1/2 in' : '57 1/2 cm', '', ''], 'input')
    .across('F5', us ? [4, 9.25, 1, 0.75, 20] : [100, 240, 1, 20, 500], 'input')
    .across('A6', ['Moss', 'apple syrup', us ? 21.75 : 555, '', ''], 'input')
    .across('F6', us ? [4, 9, 2, 0.75, 20] : [100, 230, 2, 20, 500], 'input')
    .across('A7', ['Sedge', 'vinegar', '', us ? 72 : 1830, us ? 0.125 : 3], 'input')
    .across('F7', us ? [4, 9.5, 1, 0.75, 19.5] : [100, 240, 1, 20, 490], 'input')
    .put('K5', `=${diametersUsed()}`, formatted('result', formats.two))
    .put(
      'L5',
      `=IF(A5:A${last}="","",SILT.CONE.HEIGHT(SiltUnits,K5:K${last},F5:F${last},45))`,
      formatted('result', formats.two),
    )
    .put('M5', `=${drumFaults(profile)}`, 'note')
    .wide(
      `A${last + 1}:K${last + 1}`,
      `=IF(TEXTJOIN("",TRUE,M5:M${last})="","","Check "&TEXTJOIN(" ",TRUE,IF(M5:M${last}="","",A5:A${last}&": "&M5:M${last})))`,
      'alarm',
      32,
    )
    .choice(`H5:H${last}`, ['1', '2', '3', '4', '6', '8'], 'Equal pieces that make the cone', false);

  for (const { columns: at, words } of faults)
    draft.alarm(`${at[0]}5:${at[1]}${last}`, `=ISNUMBER(SEARCH("${words}",$M5))`);

  draft
    .put('A14', 'For every cone', 'section')
    .across('A15', ['Sheet thickness', ''], 'label')
    .put('C15', us ? 0.0625 : 1.5, 'input')
    .put('D15', '=SILT.UNIT.LABEL(SiltUnits,"dimension")', 'note')
    .put('A16', 'What you measured')
    .put('C16', 'fit', 'input', 'fit: the cone’s rim must go into the drum, and its foot must end at the drain’s bore.')
    .put('E16', 'the surface that you measured on: fit, inside, outside or middle', 'note')
    .put('A17', 'Gap at the rim')
    .put('C17', us ? 0.125 : 3, 'input')
    .put('D17', '=SILT.UNIT.LABEL(SiltUnits,"dimension")', 'note')
    .put('A18', 'Length of a sheet')
    .put('C18', us ? 96 : 2000, 'input')
    .put('D18', '=SILT.UNIT.LABEL(SiltUnits,"dimension")', 'note')
    .put('A19', 'Width of a sheet')
    .put('C19', us ? 48 : 1000, 'input')
    .put('D19', '=SILT.UNIT.LABEL(SiltUnits,"dimension")', 'note')
    .put('A20', 'Gap between pieces')
    .put('C20', us ? 0.25 : 5, 'input')
    .put('D20', '=SILT.UNIT.LABEL(SiltUnits,"dimension")', 'note')
    .choice('C16', ['fit', 'inside', 'outside', 'middle'], 'The surface of which you measured diameters and height');
  for (const [row, likely, meaning] of settingNotes) {
    draft
      .put(`E${row}`, likelyNote(`C${row}`, 'dimension', likely, meaning), 'note')
      .alarm(`C${row}`, `=LEFT(E${row},${cautionWord.length})="${cautionWord}"`);
  }
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: 'E0B400',
    // What to check is printed in the row under the drums; a column for it would make all the rest too small to read.
    print: print(profile, 'A1:L20', { fitToHeight: 1 }),
  });
}
