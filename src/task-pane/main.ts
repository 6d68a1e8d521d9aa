/** The task pane's page: beside the sheet in Excel, or opened by itself. */
import type { FunctionLibraryHolder } from '../functions/function-library';
import { findExcel } from '../hosts/excel/find-excel';
import type { SheetHost } from '../hosts/sheet-host';
import { make, replace } from './dom';
import { firstJobView } from './first-job/view';
import { mountPane, type Pane } from './pane';
import { readWorkbookUnits } from './workbook-units';

const aloneSentence =
  'This page has no spreadsheet beside it: you can look up and calculate functions here; reading or changing a sheet needs Excel.';

/** How long the page waits for Excel before it appears without it; if Excel answers later, it is used from then on. */
const patienceMs = 1500;

function start(root: HTMLElement): void {
  const { siltstead: functionLibrary } = globalThis as FunctionLibraryHolder;
  if (functionLibrary === undefined) {
    replace(
      root,
      make(
        'p',
        {},
        'The function script functions.js did not load; reload the pane, or check that its site can be reached.',
      ),
    );
    return;
  }
  // The pane calculates at once what is looked at; a cell that needs the search says itself that it could not be loaded.
  functionLibrary.loadCutSearch().catch(() => undefined);
  let pane: Pane | undefined;
  const alone = (): void => {
    pane ??= mountPane(root, { host: undefined, functionLibrary, standing: aloneSentence });
  };
  const timer = setTimeout(alone, patienceMs);
  void findExcel().then((host) => {
    clearTimeout(timer);
    if (host === undefined) return alone();
    pane?.close();
    pane = mountPane(root, { host, functionLibrary });
    void leadNewcomer(host, pane);
  });
}

/** Shows the first job in a workbook that has no units yet, which is one that nobody has used the add-in in. */
async function leadNewcomer(host: SheetHost, pane: Pane): Promise<void> {
  const { units } = await readWorkbookUnits(host).catch(() => ({ units: true }));
  if (units === undefined) pane.show(firstJobView.id);
}

const root = document.getElementById('pane');
if (root !== null) start(root);
