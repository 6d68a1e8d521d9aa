import type { SheetHost } from '../../hosts/sheet-host';
import type { PaneContext } from '../view';

/** The guide is only shown where there is a spreadsheet. */
export interface GuideContext extends PaneContext {
  readonly host: SheetHost;
}
