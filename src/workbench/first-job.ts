import type { SheetHost } from '../hosts/sheet-host';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import { firstJobName } from '../task-pane/first-job/job-name';
import { firstJobView } from '../task-pane/first-job/view';
import type { Pane } from '../task-pane/pane';
import { attempt, part } from './page-parts';
import { bringForward, focusPane } from './regions';

/** The button that begins a first job, and the way back to one in a workbook that is opened with it. */
export function leadToFirstJob(spreadsheet: Spreadsheet, host: SheetHost, mounted: Promise<Pane>): void {
  const show = async (): Promise<void> => {
    (await mounted).show(firstJobView.id);
    bringForward('pane');
  };
  const resume = async (): Promise<void> => {
    if ((await host.names()).some(({ name }) => name === firstJobName)) await show();
  };
  const begin = async (): Promise<void> => {
    await show();
    // Somebody who pressed the button by a key goes on from there; the grid between bar and pane uses Tab itself.
    focusPane();
  };
  part('first-job').addEventListener('click', () => void attempt('First job', begin));
  spreadsheet.onOpened(() => void attempt('First job', resume));
}
