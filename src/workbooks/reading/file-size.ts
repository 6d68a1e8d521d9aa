/** The file is too large or too unusual to read; the message says where. */
export class RefusedWorkbook extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'RefusedWorkbook';
  }
}

/** Far above any workbook of a farm, far below what would stop a computer. */
const mostBytes = 64e6;

/** Refuses a file by its size alone, before it is read, because it may be larger than memory. */
export function checkSize(bytes: number): void {
  if (bytes > mostBytes) throw new RefusedWorkbook('the file is larger than 64 MB');
}
