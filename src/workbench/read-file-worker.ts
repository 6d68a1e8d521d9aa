/** Reads a workbook's file beside the page, so that the page answers meanwhile whatever the file holds. */
import type { ReadAnswer } from './read-file';

addEventListener('message', ({ data }: MessageEvent<Uint8Array>) => {
  void answerTo(data).then((answer) => postMessage(answer));
});

async function answerTo(file: Uint8Array): Promise<ReadAnswer> {
  try {
    const { readWorkbook } = await import(/* webpackChunkName: "xlsx" */ './xlsx');
    return { workbook: await readWorkbook(file) };
  } catch (thrown) {
    return { refused: thrown instanceof Error ? thrown.message : String(thrown) };
  }
}
