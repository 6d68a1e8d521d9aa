/** What needs the .xlsx library, in one piece that the page loads when it first opens or saves a file. */
export { readWorkbook } from '../workbooks/read-xlsx';
export { checkSize } from '../workbooks/reading/file-size';
export { saveIntoFile } from '../workbooks/saving/save-into-file';
export { writeWorkbook } from '../workbooks/write-xlsx';
