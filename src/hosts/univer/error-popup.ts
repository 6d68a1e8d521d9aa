import { CellAlertManagerService } from '@univerjs/sheets-ui';
import type { Spreadsheet } from './spreadsheet';

/** The key under which the spreadsheet speaks about a cell in error that is pointed at. */
const formulaAlert = 'SHEET_FORMULA_ALERT';

/** Pointing at a cell in error shows why, where the spreadsheet itself only knows what the code means in general. */
export function showReasonsOnHover(spreadsheet: Spreadsheet): void {
  const alerts = spreadsheet.injector.get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    if (alert.key !== formulaAlert) return show(alert);
    const { facade, reader } = spreadsheet.current();
    const sheet = facade.getWorkbook().getSheetBySheetId(alert.location.subUnitId);
    const value = sheet ? reader.read(sheet, alert.location.row, alert.location.col).value : '';
    if (typeof value !== 'object') return show(alert);
    return show({ ...alert, title: value.error.code, message: value.error.message, width: 340 });
  };
}
