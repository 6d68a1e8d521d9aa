import { nameInParts, type SheetsNow } from '../moved-parts';
import type { OpenWorkbook } from './spreadsheet';

/** The sheets of the open workbook as they are now, by the names that the parts of sheets have for them. */
export function sheetsNow({ facade, sources, moves }: OpenWorkbook): SheetsNow {
  const ids = new Map([...sources].map(([id, source]) => [nameInParts(source).toLowerCase(), id]));
  const idOf = (name: string): string => ids.get(name.toLowerCase()) ?? '';
  return {
    movesOf: (name) => moves.get(idOf(name)) ?? [],
    nameOf: (name) => facade.getWorkbook().getSheetBySheetId(idOf(name))?.getName(),
  };
}
