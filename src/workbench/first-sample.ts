/** The workbook that the workbench opens with, under the folder of sample workbooks. */
export const firstSample = 'US/cone-cut-plan.xlsx';
