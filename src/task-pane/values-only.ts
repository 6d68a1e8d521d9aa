import type { FunctionLibrary } from '../functions/function-library';
import type { SheetHost } from '../hosts/sheet-host';
import { workbookDrawings } from './drawings/workbook-drawings';

/**
 * A copy of a workbook's file for people and programs without the add-in: results in place of formulas, and the drawings
 * as pictures on a sheet of their own. `host` reads the same workbook.
 */
export async function valuesOnlyCopy(
  file: Uint8Array,
  host: Pick<SheetHost, 'read' | 'readUsed' | 'names'>,
  functionLibrary: FunctionLibrary,
): Promise<Uint8Array<ArrayBuffer>> {
  const [{ toPicture }, { valuesOnlyFile }, { addPictures }] = await Promise.all([
    import(/* webpackChunkName: "values-only" */ '../drawing/picture/picture'),
    import(/* webpackChunkName: "values-only" */ '../workbooks/saving/values-only'),
    import(/* webpackChunkName: "values-only" */ '../workbooks/saving/add-pictures'),
  ]);
  const { drawings, count } = await workbookDrawings(host, functionLibrary);
  const pictures = await Promise.all(
    drawings.map(async (drawing) => ({
      title: drawing.title,
      description: [drawing.title, ...drawing.notes].join('. '),
      ...(await toPicture(drawing)),
    })),
  );
  const note = count > pictures.length ? `The first ${pictures.length} of ${count} drawings.` : undefined;
  return addPictures(valuesOnlyFile(file), pictures, note) as Uint8Array<ArrayBuffer>;
}

/** `pull log values only.xlsx` for `pull log.xlsx`. */
export function valuesOnlyName(name: string): string {
  return name.replace(/(\.xls[xm])?$/i, ' values only$1');
}
