import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { totalOf } from './worth';

/** The share of your feed that becomes solids, from the pulls in the book. */
export function ownShareSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [44, 18, 46];
  const draft = framed({
    name: 'Solids share',
    title: 'Solids from your own feed, for a scenario',
    step: 'The solids share is the dry solids in this book, divided by the feed of the same days and by the share that your drums catch. Published figures differ by up to seventeen times, so use your own.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A5', withUnit('Dry solids pulled', 'mass'), 'heading')
    .put('B5', `=${totalOf('B')}`, formatted('result', formats.two))
    .put('C5', 'the total on the sheet Months', 'note')
    .put('A6', withUnit('Feed over the same days', 'mass'))
    .put('B6', us ? 250 : 110, 'input')
    .put('A7', 'Captured by the drums')
    .put('B7', 0.86, formatted('input', '0%'))
    .put('C7', 'of all solids at steady state: see LOAD.SHARES', 'note')
    .put('A8', 'Solids share', 'total')
    .put('B8', '=SILT.LOAD.SHARE(SiltUnits,B5,B6,IF(ISBLANK(B7),0,B7))', formatted('total', formats.share))
    .put('C8', 'type it in a scenario as solids share', 'note')
    .put('A9', 'Published, low and high')
    .put('B9', '=SILT.REF.VALUE(SiltUnits,"solids share","low")', formatted('result', formats.share))
    .put('C9', '=SILT.REF.VALUE(SiltUnits,"solids share","high")', formatted('result', formats.share))
    .wide(
      'A11:C11',
      'One season gives a share but not its error. The workbook Own figures takes weekly rows and shows how sure the share is.',
      'text',
      32,
    );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '8A6D3B',
    print: print(profile, 'A1:C11', { landscape: false, fitToHeight: 1, titleRows: '1:3' }),
  });
}
