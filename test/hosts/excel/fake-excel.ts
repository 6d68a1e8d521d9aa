/**
 * A small Excel behind Excel's own manners: whatever is asked for waits for the next sync, a property can be read only
 * after it was loaded and synced, and the first request that fails stops the rest of its batch, with those before it done.
 */
import { parseRange } from '../../../src/hosts/address';
import { FakeNames, type StoredName } from './fake-names';
import { ExcelError, Proxied } from './fake-proxies';
import { FakeRange } from './fake-range';
import type { FakeSheet, Place } from './fake-sheet';
import { FakeWorksheets } from './fake-worksheets';

export { FakeSheet } from './fake-sheet';

export class FakeContext {
  readonly excel: FakeExcel;
  private waiting: (() => void)[] = [];
  constructor(excel: FakeExcel) {
    this.excel = excel;
  }
  queue(request: () => void): void {
    this.waiting.push(request);
  }
  async sync(): Promise<void> {
    this.excel.syncs += 1;
    // Requests may make further ones, such as the items of a collection.
    for (let request = this.waiting.shift(); request !== undefined; request = this.waiting.shift()) {
      try {
        if (this.excel.isEditing) throw new ExcelError('InvalidOperationInCellEditMode');
        request();
      } catch (error) {
        this.waiting = [];
        throw error;
      }
    }
  }
  get workbook(): unknown {
    const context = this;
    return {
      worksheets: new FakeWorksheets(this, () => this.excel.sheets),
      names: new FakeNames(this, () => this.excel.names),
      getSelectedRange: () =>
        new FakeRange(this, () => {
          if (this.excel.selected === undefined) throw new ExcelError('InvalidSelection');
          return this.excel.selected;
        }),
      application: new FakeApplication(this, () => this.excel),
      get onSelectionChanged(): unknown {
        return context.excel.event(context, 'selected');
      },
    };
  }
}

class FakeApplication extends Proxied<FakeExcel> {
  protected override fetch(excel: FakeExcel, property: string): unknown {
    return property === 'calculationState' ? excel.calculationState : undefined;
  }
  get calculationState(): unknown {
    return this.get('calculationState');
  }
}

export class FakeExcel {
  calculationState: 'Done' | 'Calculating' = 'Done';
  /** How the workbook was last told to start the add-in. */
  startup: string | undefined;
  sheets: FakeSheet[];
  names: StoredName[] = [];
  selected: Place | undefined;
  isEditing = false;
  version = 1.18;
  syncs = 0;
  cellsRead = 0;
  readonly opened: string[] = [];
  /** The workbook's file in the slices that it is handed over in, or the message of a refusal. */
  file: readonly (readonly number[])[] | string = [];
  openFiles = 0;
  /** New workbooks, by their files. */
  readonly created: Uint8Array[] = [];
  private readonly heard = new Map<string, Set<() => Promise<void>>>();

  constructor(...sheets: FakeSheet[]) {
    this.sheets = sheets;
    this.select(sheets[0]!, 'A1');
  }

  select(sheet: FakeSheet, address: string): void {
    this.selected = { sheet, ...parseRange(address)! };
  }

  event(context: FakeContext, name: string): unknown {
    return {
      add: (listener: () => Promise<void>) => {
        const listeners = this.heard.get(name) ?? new Set();
        this.heard.set(name, listeners);
        context.queue(() => listeners.add(listener));
        return { context, remove: () => context.queue(() => listeners.delete(listener)) };
      },
    };
  }

  async happen(name: string): Promise<void> {
    for (const listener of this.heard.get(name) ?? []) await listener();
  }

  listeners(name: string): number {
    return this.heard.get(name)?.size ?? 0;
  }

  /** Puts the globals in place that Excel's own library leaves in a page. */
  install(): void {
    const globals = globalThis as { Excel?: unknown; Office?: unknown };
    globals.Excel = {
      createWorkbook: async (base64: string) => this.created.push(new Uint8Array(Buffer.from(base64, 'base64'))),
      run: async (first: unknown, second?: unknown) => {
        const batch = (second ?? first) as (context: FakeContext) => Promise<unknown>;
        const context = second === undefined ? new FakeContext(this) : (first as FakeContext);
        const answer = await batch(context);
        await context.sync();
        return answer;
      },
    };
    globals.Office = {
      PlatformType: { PC: 'PC', OfficeOnline: 'OfficeOnline', Mac: 'Mac' },
      HostType: { Excel: 'Excel' },
      FileType: { Compressed: 'compressed' },
      AsyncResultStatus: { Succeeded: 'succeeded' },
      onReady: async () => ({ host: 'Excel', platform: 'PC' }),
      StartupBehavior: { load: 'Load', none: 'None' },
      addin: {
        setStartupBehavior: async (behavior: string) => {
          this.startup = behavior;
        },
      },
      context: {
        platform: 'PC',
        document: {
          getFileAsync: (_type: string, _options: unknown, done: (result: unknown) => void) => this.give(done),
        },
        officeTheme: { isDarkTheme: true },
        requirements: {
          isSetSupported: (set: string, version: string) =>
            set === 'OpenBrowserWindowApi' ||
            set === 'SharedRuntime' ||
            Number(version.replace(/^1\.(\d)$/, '1.0$1')) <= this.padded(),
        },
        ui: { openBrowserWindow: (address: string) => this.opened.push(address) },
      },
    };
  }

  private give(done: (result: unknown) => void): void {
    const { file } = this;
    if (typeof file === 'string') {
      done({ status: 'failed', error: { message: file } });
      return;
    }
    this.openFiles += 1;
    const getSliceAsync = (at: number, take: (result: unknown) => void) =>
      take({ status: 'succeeded', value: { data: file[at] } });
    const closeAsync = () => {
      this.openFiles -= 1;
    };
    done({ status: 'succeeded', value: { sliceCount: file.length, getSliceAsync, closeAsync } });
  }

  private padded(): number {
    return Number(String(this.version).replace(/^1\.(\d)$/, '1.0$1'));
  }
}
