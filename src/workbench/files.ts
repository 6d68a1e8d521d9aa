import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import type { WorkbookData } from '../hosts/workbook-model';
import { attempt, part } from './page-parts';

/** The library that reads and writes .xlsx is large, and is loaded when a file is first opened or saved. */
const xlsx = () => import(/* webpackChunkName: "xlsx" */ './xlsx');

/** The workbooks of the site, beside the page's own folder. */
const samplesFolder = '../sample-workbooks';
const firstSample = 'US/cone-cut-plan.xlsx';
const fileType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What the workbench starts with where there are no sample workbooks. */
const blank: WorkbookData = { sheets: [{ name: 'Sheet 1', cells: [] }] };

let fileName = 'workbook.xlsx';
/** The file that was opened, into which changes are saved; undefined for a workbook that was none. */
let openedFile: (() => Promise<Uint8Array>) | undefined;

function show(spreadsheet: Spreadsheet, workbook: WorkbookData, name: string, file: typeof openedFile): void {
  spreadsheet.open(workbook);
  fileName = name;
  openedFile = file;
  part('title').textContent = name;
}

async function openSample(spreadsheet: Spreadsheet, path: string): Promise<void> {
  // Beside each workbook the build leaves it as it is once read, so that a sample opens without the library.
  const response = await fetch(`${samplesFolder}/${path.replace(/\.xlsx$/, '.json')}`).catch(() => {
    throw new Error('the site does not answer; check the network, or start the workbench again, then choose it again');
  });
  if (!response.ok) throw new Error(`the sample is not on this site (${response.status}); choose another one`);
  const name = path.slice(path.lastIndexOf('/') + 1);
  show(spreadsheet, (await response.json()) as WorkbookData, name, () => sampleFile(path));
}

async function sampleFile(path: string): Promise<Uint8Array> {
  const response = await fetch(`${samplesFolder}/${path}`);
  if (!response.ok) throw new Error(`the sample ${path} is not there (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}

async function openFile(spreadsheet: Spreadsheet, file: File): Promise<void> {
  const { readWorkbook } = await xlsx();
  const bytes = new Uint8Array(await file.arrayBuffer());
  show(spreadsheet, await readWorkbook(bytes), file.name, async () => bytes);
}

/** The workbook of now as a file: what was changed, written into the file that was opened. */
async function currentFile(spreadsheet: Spreadsheet): Promise<Uint8Array> {
  // A cell that is still being typed into is part of what was typed.
  await spreadsheet.current().facade.endEditingAsync(true);
  const { saveIntoFile, writeWorkbook } = await xlsx();
  const file = await openedFile?.();
  const now = spreadsheet.save();
  return file === undefined ? writeWorkbook(now) : saveIntoFile(file, spreadsheet.opened(), now);
}

function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: fileType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

async function saveFile(spreadsheet: Spreadsheet): Promise<void> {
  download(await currentFile(spreadsheet), fileName);
}

async function saveValues(spreadsheet: Spreadsheet): Promise<void> {
  const { valuesOnlyFile } = await xlsx();
  download(valuesOnlyFile(await currentFile(spreadsheet)), fileName.replace(/(\.xls[xm])?$/i, ' values only$1'));
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

/** Ties the page's controls for files to the spreadsheet and opens the first workbook. */
export async function startFiles(spreadsheet: Spreadsheet): Promise<void> {
  const samples = part<HTMLSelectElement>('samples');
  const response = await fetch(`${samplesFolder}/list.json`);
  const paths: readonly string[] = response.ok ? await response.json() : [];
  for (const path of paths) samples.add(new Option(path.replace(/\.xlsx$/, '').replace('/', ': '), path));
  // The box names what is open, so that it goes back where a sample cannot be opened.
  let opened = '';
  const openChosen = async (path: string): Promise<void> => {
    if (await attempt(path, () => openSample(spreadsheet, path))) opened = path;
    samples.value = opened;
  };
  samples.addEventListener('change', () => {
    if (samples.value !== '') void openChosen(samples.value);
  });
  const openOwn = async (file: File): Promise<void> => {
    if (!(await attempt(file.name, () => openFile(spreadsheet, file)))) return;
    opened = '';
    samples.value = opened;
  };
  const open = part<HTMLInputElement>('open');
  open.addEventListener('change', () => {
    const file = open.files?.[0];
    if (file !== undefined) void openOwn(file);
    open.value = '';
  });
  part('save').addEventListener('click', () => void attempt('Save', () => saveFile(spreadsheet)));
  part('save-values').addEventListener('click', () => void attempt('Save values only', () => saveValues(spreadsheet)));
  part('undo').addEventListener('click', () => spreadsheet.current().facade.undo());
  part('redo').addEventListener('click', () => spreadsheet.current().facade.redo());
  takeDrops((file) => void openOwn(file));
  show(spreadsheet, blank, fileName, undefined);
  if (!paths.includes(firstSample)) return;
  await openChosen(firstSample);
  // A drum's row, which the pane draws. Nothing is scrolled: the grid cannot do that before it is on the page.
  spreadsheet.current().facade.getActiveSheet().getRange('A5').activate();
}
