/** A file for the browser to save. */
export interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly content: BlobPart;
}

/** Saves a file where the page may download. */
export function saveFile({ name, type, content }: SavedFile): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
