import { HostError } from '../sheet-host';
import { run } from './run';

/** As large as Excel hands over at once. */
const sliceSize = 4_194_304;
/** How many bytes are turned into text at once; more than some engines take as arguments would end the call. */
const textStep = 32_768;

function settled<T>(call: (done: (result: Office.AsyncResult<T>) => void) => void): Promise<T> {
  return new Promise((resolve, reject) => {
    call(({ status, value, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
      else reject(new HostError('failed', `Excel did not give the file: ${error.message}`));
    });
  });
}

/** The open workbook as an .xlsx file, with what is not saved yet and the results as they stand. */
export async function readFile(): Promise<Uint8Array> {
  const file = await settled<Office.File>((done) =>
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize }, done),
  );
  try {
    const slices: Uint8Array[] = [];
    for (let at = 0; at < file.sliceCount; at++) {
      const { data } = await settled<Office.Slice>((done) => file.getSliceAsync(at, done));
      slices.push(new Uint8Array(data));
    }
    const bytes = new Uint8Array(slices.reduce((size, slice) => size + slice.length, 0));
    let size = 0;
    for (const slice of slices) {
      bytes.set(slice, size);
      size += slice.length;
    }
    return bytes;
  } finally {
    // Excel keeps only two such files open.
    file.closeAsync();
  }
}

/** Opens a file as a new workbook, which the user saves as any other. */
export async function openAsNew(file: Uint8Array): Promise<void> {
  let text = '';
  for (let at = 0; at < file.length; at += textStep) text += String.fromCharCode(...file.subarray(at, at + textStep));
  await run(() => Excel.createWorkbook(btoa(text)));
}
