import type { WorkbookPackage } from './package';
import { childNamed, childrenNamed, elementTree } from './xml-elements';

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const arrays = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';
const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml';

/** The part that says what the flag of dynamic arrays means ([MS-XLSX] 2.2.3, the metadata type XLDAPR). */
const metadata = `${head}<metadata xmlns="${main}" xmlns:xda="${arrays}"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

/**
 * The number that marks a dynamic-array formula in the cells of this file; the part for it is added if there is none.
 */
export function arrayFlag(file: WorkbookPackage): string | undefined {
  const workbook = file.workbook();
  const known = file.relations(workbook).find(({ type }) => type.endsWith('/sheetMetadata'))?.target;
  const xml = known === undefined ? undefined : file.text(known);
  if (xml === undefined) {
    const path = 'xl/metadata.xml';
    file.set(path, metadata);
    file.setContentType(path, contentType);
    file.relate(workbook, 'sheetMetadata', path);
    return '1';
  }
  const root = elementTree(xml, 3);
  const type = childrenNamed(childNamed(root, 'metadataTypes'), 'metadataType').findIndex(
    ({ attributes }) => attributes.name === 'XLDAPR',
  );
  const records = childrenNamed(childNamed(root, 'cellMetadata'), 'bk');
  const at = records.findIndex((record) => record.children.some(({ attributes }) => attributes.t === String(type + 1)));
  return type < 0 || at < 0 ? undefined : String(at + 1);
}
