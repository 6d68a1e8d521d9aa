import type { SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { totalOf } from './worth';

/** The share of your feed that becomes solids, from what the book says was drawn off. */
export function ownShareSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [44, 18, 44];
  const draft = framed({
    name: 'Solids share',
    title: 'Solids from your own feed, for a scenario',
    step: 'All dry solids of the book, over the feed of the same days and the share of solids that your drums take. Published figures differ up to seventeen times, so yours is worth more than any of them.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A5', withUnit('Dry solids drawn off', 'mass'), 'heading')
    .put('B5', `=${totalOf('B')}`, formatted('result', formats.two))
    .put('C5', 'the total of Months', 'note')
    .put('A6', withUnit('Feed over the same days', 'mass'))
    .put('B6', us ? 250 : 110, 'input')
    .put('A7', 'Captured by the drums')
    .put('B7', 0.86, formatted('input', '0%'))
    .put('C7', 'of all solids at steady state, not a pass: LOAD.SHARES', 'note')
    .put('A8', 'Solids share', 'total')
    .put('B8', '=SILT.LOAD.SHARE(SiltUnits,B5,B6,B7)', formatted('total', formats.share))
    .put('C8', 'the scenario input solids share', 'note')
    .put('A9', 'Published, low and high')
    .put('B9', '=SILT.REF.VALUE(SiltUnits,"solids share","low")', formatted('result', formats.share))
    .put('C9', '=SILT.REF.VALUE(SiltUnits,"solids share","high")', formatted('result', formats.share))
    .wide(
      'A11:C11',
      'One season gives a share without an error. The workbook Own figures takes it week by week and says how sure it is.',
      'text',
      32,
    );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '8A6D3B',
    print: print(profile, 'A1:C11', { landscape: false, fitToHeight: 1, titleRows: '1:3' }),
  });
}
