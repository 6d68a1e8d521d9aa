/** Stands for the reader of font files, which measures text only where somebody hands such files to the renderer. */
export function parse() {
  throw new Error('font files are not read');
}
