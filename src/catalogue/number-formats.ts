/** How figures are shown in a workbook, as spreadsheets write number formats. */
export const numberFormats = {
  whole: '#,##0',
  one: '#,##0.0',
  two: '#,##0.00',
  three: '#,##0.000',
  four: '#,##0.0000',
  share: '0.0%',
  money: '#,##0.00',
  price: '0.000',
  general: 'General',
} as const;

export type NumberFormat = keyof typeof numberFormats;
