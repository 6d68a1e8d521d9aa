import type { FunctionLibrary } from '../functions/function-library';
import { withMovedParts } from '../hosts/moved-parts';
import type { SheetHost } from '../hosts/sheet-host';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import type { WorkbookData } from '../hosts/workbook-model';
import { saveFile } from '../task-pane/save-file';
import { waitForResults } from '../task-pane/still-calculating';
import { valuesOnlyCopy, valuesOnlyName } from '../task-pane/values-only';
import { checkSize } from '../workbooks/reading/file-size';
import { askInPage } from './ask';
import type { Draft } from './drafts';
import { firstSample } from './first-sample';
import { attempt, notice, part } from './page-parts';
import { readFile } from './read-file';
import { type OpenFile, Unsaved } from './unsaved';

/** The library that writes .xlsx is large, and is loaded when a file is first saved. */
const xlsx = () => import(/* webpackChunkName: "xlsx" */ './xlsx');

/** The workbooks of the site, beside the page's own folder. */
const samplesFolder = '../sample-workbooks';
const fileType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The workbook at the start if there are no sample workbooks. */
const blank: WorkbookData = { sheets: [{ name: 'Sheet 1', cells: [] }] };

/** The paths of the samples under their folder; none if the site has none. */
async function listOfSamples(): Promise<readonly string[]> {
  const response = await fetch(`${samplesFolder}/list.json`);
  return response.ok ? ((await response.json()) as readonly string[]) : [];
}

/** Offers the samples by their titles, those of each folder as a group; a folder is named after its units. */
function listSamples(list: HTMLSelectElement, paths: readonly string[]): void {
  const titled = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
  const groups = new Map<string, HTMLOptGroupElement>();
  const alone: HTMLOptionElement[] = [];
  for (const path of paths) {
    const [name = path, folder] = path.split('/').reverse();
    const option = new Option(titled(name.replace(/\.xlsx$/, '').replaceAll('-', ' ')), path);
    if (folder === undefined) {
      alone.push(option);
      continue;
    }
    const group = groups.get(folder) ?? document.createElement('optgroup');
    groups.set(folder, group);
    group.label = titled(`${folder} units`);
    group.append(option);
  }
  list.append(...groups.values(), ...alone);
}

function sampleAt(path: string): OpenFile {
  return { name: path.slice(path.lastIndexOf('/') + 1), sample: path };
}

async function readSample(path: string): Promise<WorkbookData> {
  // The build also writes each sample as it is once read, so that it opens without the library. Without a
  // network only the first one is kept in that form; the others are read from their files.
  const data = await fetch(`${samplesFolder}/${path.replace(/\.xlsx$/, '.json')}`).catch(() => undefined);
  if (data?.ok) return (await data.json()) as WorkbookData;
  return readFile(path, await sampleFile(path));
}

async function sampleFile(path: string): Promise<Uint8Array> {
  const response = await fetch(`${samplesFolder}/${path}`).catch(() => {
    throw new Error('the site does not answer; check the network, or start the workbench again, then choose it again');
  });
  if (!response.ok) throw new Error(`the sample is not on this site (${response.status}); choose another one`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The present workbook as a file: the changes, written into the file that was opened. */
async function currentFile(spreadsheet: Spreadsheet, { file, sample, base }: OpenFile): Promise<Uint8Array> {
  const { saveIntoFile, writeWorkbook } = await xlsx();
  const before = file ?? (sample === undefined ? undefined : await sampleFile(sample));
  const now = spreadsheet.save();
  return before === undefined
    ? writeWorkbook(withMovedParts(now))
    : saveIntoFile(before, base ?? spreadsheet.opened(), now);
}

function download(bytes: Uint8Array, name: string): void {
  saveFile({ name, type: fileType, content: bytes as Uint8Array<ArrayBuffer> });
}

function takeDrops(take: (file: File) => void): void {
  const isFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
  window.addEventListener('dragover', (event) => {
    if (!isFile(event)) return;
    event.preventDefault();
    document.body.classList.add('dropping');
  });
  window.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) document.body.classList.remove('dropping');
  });
  window.addEventListener('drop', (event) => {
    document.body.classList.remove('dropping');
    const file = event.dataTransfer?.files[0];
    if (file === undefined) return;
    event.preventDefault();
    take(file);
  });
}

/** What the page begins with: the paths of all samples, and the first of them; none if the site has none. */
export interface FirstFiles {
  readonly paths: readonly string[];
  readonly first: WorkbookData | undefined;
}

/** Begins to load what the page begins with. */
export async function loadFirstFiles(): Promise<FirstFiles> {
  const paths = await listOfSamples();
  let first: WorkbookData | undefined;
  if (paths.includes(firstSample)) {
    await attempt(firstSample, async () => {
      first = await readSample(firstSample);
    });
  }
  return { paths, first };
}

/** Ties the page's controls for files to the spreadsheet and opens the first workbook. */
export function startFiles(
  spreadsheet: Spreadsheet,
  host: SheetHost,
  functionLibrary: FunctionLibrary,
  { paths, first }: FirstFiles,
): Unsaved {
  const unsaved = new Unsaved(spreadsheet);
  const samples = part<HTMLSelectElement>('samples');
  listSamples(samples, paths);

  const show = (workbook: WorkbookData, open: OpenFile, isDraft = false): void => {
    spreadsheet.open(workbook);
    unsaved.opened(open, isDraft);
  };
  const save = async (): Promise<void> => {
    // Formulas in the file would have the results from before the last change.
    const isCalculated = await host.settled?.().then(
      () => true,
      () => false,
    );
    download(await currentFile(spreadsheet, unsaved.openedFile()), unsaved.openedFile().name);
    unsaved.saved();
    // Work is never held back.
    if (isCalculated === false) notice('The file was saved before its formulas were calculated: save it again later.');
  };
  const saveValues = async (): Promise<void> => {
    await waitForResults(host);
    const file = await currentFile(spreadsheet, unsaved.openedFile());
    download(await valuesOnlyCopy(file, host, functionLibrary), valuesOnlyName(unsaved.openedFile().name));
  };
  /** Whether the open workbook may be replaced: it is saved, or the user agrees. */
  const mayReplace = async (): Promise<boolean> => {
    await spreadsheet.current().facade.endEditingAsync(true);
    if (!unsaved.hasChanges()) return true;
    const sentence = `${unsaved.openedFile().name} has changes that are not saved. Save them first?`;
    const answer = await askInPage(sentence, ['Save, then open the other', 'Open without saving', 'Stay here']);
    if (answer === 'Save, then open the other') return attempt('Save', save);
    return answer === 'Open without saving';
  };
  /** Opens another workbook. If that fails, the list still names the one that is open. */
  const replaceBy = async (what: string, open: () => Promise<void>): Promise<boolean> => {
    const { opening } = document.body.dataset;
    if (opening !== undefined) {
      notice(`${opening} is still being opened; then try ${what} again.`);
      return false;
    }
    document.body.dataset.opening = what;
    const isOpen = (await mayReplace()) && (await attempt(what, open));
    samples.value = unsaved.openedFile().sample ?? '';
    delete document.body.dataset.opening;
    return isOpen;
  };
  const openSample = (path: string): Promise<boolean> =>
    replaceBy(path, async () => show(await readSample(path), sampleAt(path)));
  const openFile = (file: File): Promise<boolean> =>
    replaceBy(file.name, async () => {
      checkSize(file.size);
      const bytes = new Uint8Array(await file.arrayBuffer());
      show(await readFile(file.name, bytes), { name: file.name, file: bytes });
    });

  samples.addEventListener('change', () => {
    if (samples.value !== '') void openSample(samples.value);
    else samples.value = unsaved.openedFile().sample ?? '';
  });
  const open = part<HTMLInputElement>('open');
  open.addEventListener('change', () => {
    const file = open.files?.[0];
    if (file !== undefined) void openFile(file);
    open.value = '';
  });
  part('save').addEventListener('click', () => void attempt('Save', save));
  part('save-values').addEventListener('click', () => void attempt('Save values only', saveValues));
  part('undo').addEventListener('click', () => spreadsheet.current().facade.undo());
  part('redo').addEventListener('click', () => spreadsheet.current().facade.redo());
  takeDrops((file) => void openFile(file));
  if (first === undefined) show(blank, { name: 'workbook.xlsx' });
  else {
    show(first, sampleAt(firstSample));
    samples.value = firstSample;
    // Selects a drum's row, which the pane draws. It does not scroll, because the grid cannot before it is on the page.
    spreadsheet.current().facade.getActiveSheet().getRange('A5').activate();
  }
  const openDraft = (draft: Draft): Promise<boolean> =>
    replaceBy(draft.name, async () => {
      show(draft.workbook, draft, true);
      await unsaved.takeOver(draft);
    });
  // Not waited for: whether another page is still open can take a while to know.
  void attempt('Drafts', async () => {
    await unsaved.start();
    offerDrafts(await unsaved.left(), unsaved, openDraft);
    document.body.dataset.drafts = 'known';
  });
  return unsaved;
}

/** Offers unsaved drafts, the newest first, until each is opened or deleted. */
function offerDrafts(left: readonly Draft[], unsaved: Unsaved, open: (draft: Draft) => Promise<boolean>): void {
  const [draft, ...others] = left;
  const bar = part('draft');
  bar.hidden = draft === undefined;
  if (draft === undefined) return;
  const more = others.length === 0 ? '' : ` (and ${others.length} more)`;
  part('draft-text').textContent =
    `Work on ${draft.name} that was not saved is kept here since ${new Date(draft.kept).toLocaleString()}${more}.`;
  const next = (): void => offerDrafts(others, unsaved, open);
  part('draft-open').onclick = async () => {
    if (await open(draft)) next();
  };
  part('draft-delete').onclick = async () => {
    if (await attempt(draft.name, () => unsaved.remove(draft))) next();
  };
}
