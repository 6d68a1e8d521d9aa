import { CellAlertManagerService } from '@univerjs/sheets-ui';
import type { Spreadsheet } from './spreadsheet';

/** The key of the spreadsheet's popup about a cell in error. */
const formulaAlert = 'SHEET_FORMULA_ALERT';

/**
 * The popup about a cell in error shows its reason; the spreadsheet itself only knows the general meaning of the
 * code.
 */
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
