/** The page that browser tests open: the pane beside a spreadsheet that lives in memory, or on its own. */
import { functionLibrary } from '../../src/functions/function-library';
import type { CellResult, WorkbookData } from '../../src/hosts/workbook-model';
import { mountPane, type Pane } from '../../src/task-pane/pane';
import { MemoryHost } from './memory-host';
import { hostOfData } from './workbook-host';

export interface PanePage {
  host: MemoryHost;
  pane: Pane;
  readonly functionNames: readonly string[];
  readonly open: (
    sheets?: Readonly<Record<string, Readonly<Record<string, CellResult>>>>,
    names?: Readonly<Record<string, string>>,
  ) => void;
  /** Opens a workbook, given as JSON, with the results that stand in it. */
  readonly openWorkbook: (json: string) => void;
  readonly openAlone: () => void;
  /** Calls a worksheet function as a cell does. */
  readonly call: (name: string, ...values: readonly unknown[]) => unknown[][];
}

declare global {
  interface Window {
    paneTest: PanePage;
  }
}

const root = document.getElementById('pane')!;

window.paneTest = {
  host: new MemoryHost(),
  pane: mountPane(root, { host: undefined, functionLibrary }),
  functionNames: functionLibrary.catalogue.map(({ name }) => name),
  open(sheets, names) {
    this.pane.close();
    this.host = new MemoryHost(sheets, names);
    this.pane = mountPane(root, { host: this.host, functionLibrary });
  },
  openWorkbook(json) {
    this.pane.close();
    this.host = hostOfData(JSON.parse(json) as WorkbookData);
    this.pane = mountPane(root, { host: this.host, functionLibrary });
  },
  openAlone() {
    this.pane.close();
    this.pane = mountPane(root, {
      host: undefined,
      functionLibrary,
      standing: 'This page has no spreadsheet beside it.',
    });
  },
  call(name, ...values) {
    const row = functionLibrary.catalogue.find((one) => one.name === name)!;
    return functionLibrary.adapt(row, (_, message) => new Error(message))(...values);
  },
};
