/** What needs the .xlsx library, in one piece that is loaded when a file is first opened or saved. */
export { readWorkbook } from '../workbooks/read-xlsx';
export { saveIntoFile } from '../workbooks/saving/save-into-file';
export { writeWorkbook } from '../workbooks/write-xlsx';
