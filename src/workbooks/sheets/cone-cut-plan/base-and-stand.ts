import type { SheetData } from '../../../hosts/workbook-model';
import type { Kind } from '../../../units/kinds';
import { cautions, weightCautions } from '../cautions';
import { chooser } from '../chooser';
import { columnWidths, framed, print, unitOf, withUnit } from '../frame';
import { cautionWord, type Likely, likelyNote } from '../likely';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { mostDrums, ofUsed, settings } from './drums';
import { ofDrum, patternNames } from './patterns';

const last = 4 + mostDrums;
const total = last + 1;
/** How many drums have no base mix or no water, because they could not be calculated. */
const withoutFigure = `SUM((A5:A${last}<>"")*(1-ISNUMBER(B5:B${last})*ISNUMBER(C5:C${last})))`;

/** Light base mix behind each cone, water above it, and what to buy. */
export function baseMixSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [30, 16, 16, 40];
  const draft = framed({
    name: 'Base mix',
    title: 'Base mix behind the cones, and bags to buy',
    step: 'Wet mix lifts a cone. Fill the cone with water or put weights in it, pour in layers, and let each layer set.',
    caution: cautions.dust,
    widths,
  });
  draft
    .put('A4', 'Drum', 'heading')
    .put('B4', withUnit('Base mix', 'bulk'), 'heading')
    .put('C4', withUnit('Water held', 'volume'), 'heading')
    .height(4, 32)
    .fill(`A5:A${last}`, 'result')
    .fill(`B5:C${last}`, formatted('result', formats.two))
    .put('A5', `=${ofUsed('drum')}`, 'result')
    .put(
      'B5',
      `=SILT.CONE.BACKFILL(SiltUnits,${ofUsed('diameter')},${ofUsed('diameter')},${ofUsed('drain')},${ofUsed('height')},${settings.thickness},${settings.measured},$B$16)`,
      formatted('result', formats.two),
    )
    .put(
      'C5',
      `=SILT.TANK.VOLUME(SiltUnits,${ofUsed('diameter')},${ofUsed('depth')},${ofUsed('drain')},${ofUsed('height')})`,
      formatted('result', formats.one),
    )
    .fill(`C5:C${last}`, formatted('result', formats.one))
    .put(
      `A${total}`,
      `="All drums"&IF(${withoutFigure}=0,"",", "&${withoutFigure}&" left out")`,
      'total',
      'A drum that cannot be calculated is left out of the totals and of what to buy.',
    )
    .put(`B${total}`, `=SUM(IF(ISNUMBER(B5:B${last}),B5:B${last},0))`, formatted('total', formats.two))
    .put(`C${total}`, `=SUM(IF(ISNUMBER(C5:C${last}),C5:C${last},0))`, formatted('total', formats.one))
    .alarm(`A${total}`, `=${withoutFigure}>0`)
    .put('A15', 'How to mix it', 'section')
    .put('A16', 'Cone’s foot above the floor')
    .put('B16', us ? 1 : 25, 'input')
    .put('C16', unitOf('dimension'), 'note')
    .put('D16', 'room for the drain fitting', 'note')
    .put('A17', 'Parts of light aggregate')
    .put('B17', 6, 'input', 'By volume, to 1 part of cement. More parts: lighter, weaker, cheaper.')
    .put('C17', 'to 1 of cement', 'note')
    .put('D17', likelyNote('B17', undefined, ['1', '20'], ''), 'note')
    .put('A18', 'Spilled and left in the mixer')
    .put('B18', 0.1, formatted('input', '0%'))
    .put('D18', likelyNote('B18', undefined, ['0', '1'], 'of what the cones need'), 'note')
    .put('A19', 'Cement in a bag')
    .put('B19', us ? 94 : 25, 'input')
    .put('C19', unitOf('mass'), 'note')
    .put('A21', 'To buy for all drums', 'section')
    .fill('A22:C22', 'heading')
    .fill('A23:C23', formatted('total', formats.one))
    .fill('C23', formatted('total', formats.whole))
    .put('A22', `=SILT.CONE.MIX(SiltUnits,B${total},B17,B18,B19,TRUE)`, 'heading')
    .alarm('B17:B18', unlikely('D17'));
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '8A6D3B',
    print: print(profile, 'A1:D23', { landscape: false, fitToHeight: 1 }),
  });
}

/** Likely sizes of the stand, from row 16 down. */
const standNotes: readonly (readonly [kind: Kind, likely: Likely, meaning: string])[] = [
  ['dimension', ['50 mm', '1200 mm'], 'under the valve'],
  ['dimension', ['0 mm', '1000 mm'], ''],
  ['dimension', ['0 mm', '500 mm'], 'to take it out'],
  ['density', ['200 kg/m3', '2500 kg/m3'], 'wet'],
  ['mass', ['1 kg', '60 kg'], ''],
];

/** A condition: the note in a cell is a caution. */
function unlikely(note: string): string {
  return `=LEFT(${note},${cautionWord.length})="${cautionWord}"`;
}

/** A column of the sheet Base mix, for the drums that have a name. */
function heldBy(column: 'B' | 'C'): string {
  return `FILTER('Base mix'!$${column}$5:$${column}$${last},'Base mix'!$A$5:$A$${last}<>"")`;
}

/** The height of the stand, the load per leg, and where inlet and outlet go. */
export function standSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [30, 16, 16, 16, 16, 30];
  const draft = framed({
    name: 'Stand and ports',
    title: 'Stand, load per leg, inlet and outlet',
    step: 'The pail under the valve sets the height of the stand. Legs share the load only on firm, level ground: build each leg for the load it has if two legs carry everything.',
    caution: weightCautions[profile],
    widths,
  });
  draft
    .put('A4', 'Drum', 'heading')
    .fill('B4:F4', 'heading')
    .height(4, 32)
    .fill(`A5:A${last}`, 'result')
    .fill(`B5:F${last}`, formatted('result', formats.one))
    .put('A5', `=${ofUsed('drum')}`, 'result')
    .put('B4', `=SILT.TANK.WEIGHT(SiltUnits,${heldBy('C')},${heldBy('B')},$B$19,$B$20,$B$21,TRUE)`, 'heading')
    .put('A15', 'The stand', 'section')
    .put('A16', 'Height of the pail')
    .put('B16', us ? 14.5 : 370, 'input')
    .put('C16', unitOf('dimension'), 'note')
    .put('A17', 'Valve below the stand’s top')
    .put('B17', us ? 6 : 150, 'input')
    .put('C17', unitOf('dimension'), 'note')
    .put('A18', 'Room above the pail')
    .put('B18', us ? 2 : 50, 'input')
    .put('C18', unitOf('dimension'), 'note')
    .put('A19', 'Base mix as poured')
    .put(
      'B19',
      us ? 40 : 650,
      'input',
      'Type the wet density: light mix as poured weighs about 1.5 times as much as dry.',
    )
    .put('C19', unitOf('density'), 'note')
    .put('A20', 'Empty drum')
    .put('B20', us ? 22 : 10, 'input')
    .put('C20', unitOf('mass'), 'note')
    .put('A21', 'Legs')
    .put('B21', 4, 'input')
    .put('A22', withUnit('Height of the stand', 'dimension'), 'total')
    .put('B22', '=SILT.TANK.STAND(SiltUnits,B16,B17,B18)', formatted('total', formats.one))
    .put('A24', 'Inlet and outlet', 'section')
    .put('A25', 'Drum (number or name)')
    .fill('A26:D26', 'heading')
    .height(26, 32)
    .fill('A27:A28', 'result')
    .fill('B27:D28', formatted('result', formats.one))
    .put(
      'A26',
      `=SILT.TANK.PORTS(SiltUnits,${ofDrum('depth', '$C$25')},SILT.UNIT.READ(SiltUnits,"dimension",${ofDrum('height', '$C$25')})+SILT.UNIT.READ(SiltUnits,"dimension",'Base mix'!B16),B22,TRUE)`,
      'heading',
    )
    .wide('A30:E30', `CAUTION: ${cautions.metals}`, 'caution', 32);
  standNotes.forEach(([kind, likely, meaning], index) => {
    draft.put(`D${16 + index}`, likelyNote(`B${16 + index}`, kind, likely, meaning), 'note');
  });
  draft.alarm('B16:B20', unlikely('D16'));
  chooser(draft, {
    what: 'drum',
    list: patternNames,
    typed: 'B25',
    place: 'C25',
    shown: 'D25',
    listed: 'B24',
    first: 1,
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '8A6D3B',
    print: print(profile, 'A1:F30', { fitToHeight: 1 }),
  });
}
