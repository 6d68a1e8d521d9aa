import { markup } from '../stored-value';
import { WorkbookPackage } from './package';
import { appended, applyEdits, attributesText, childNamed, elementTree, prefixOf } from './xml-elements';

export interface SheetPicture {
  readonly png: Uint8Array;
  /** Pixels; the sheet shows it at half of that. */
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What the picture shows, for people who do not see it. */
  readonly description: string;
}

const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const officeRelations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const drawings = 'http://schemas.openxmlformats.org/drawingml/2006';
const types = 'application/vnd.openxmlformats-officedocument';

/** Screen pixels of a row of 15 points, and the most that a picture takes, so that a printed page has room for it. */
const rowPixels = 20;
const mostPixels = 900;
/** English metric units of the file format in a screen pixel. */
const unitsPerPixel = 9525;

interface Placed extends SheetPicture {
  /** The row of the title, counted from 0; the picture begins in the next. */
  readonly row: number;
  readonly shown: { readonly width: number; readonly height: number };
}

function placed(pictures: readonly SheetPicture[], firstRow: number): readonly Placed[] {
  let row = firstRow;
  return pictures.map((picture) => {
    const scale = Math.min(0.5, mostPixels / picture.width, mostPixels / picture.height);
    const shown = { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) };
    const here = row;
    row += Math.ceil(shown.height / rowPixels) + 3;
    return { ...picture, row: here, shown };
  });
}

function cellRow(row: number, text: string): string {
  return `<row r="${row + 1}"><c r="A${row + 1}" t="inlineStr"><is><t xml:space="preserve">${markup(text)}</t></is></c></row>`;
}

/** A sheet with a title above each picture; each picture begins a printed page. */
function sheetXml(pictures: readonly Placed[], note: string | undefined, drawingId: string): string {
  const rows = [
    ...(note === undefined ? [] : [cellRow(0, note)]),
    ...pictures.map(({ row, title }) => cellRow(row, title)),
  ].join('');
  const later = pictures.slice(1);
  const breaks = later.map(({ row }) => `<brk id="${row}" max="16383" man="1"/>`).join('');
  return [
    `${xmlHead}<worksheet xmlns="${main}" xmlns:r="${officeRelations}">`,
    '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>',
    '<sheetViews><sheetView showGridLines="0" workbookViewId="0"/></sheetViews>',
    '<sheetFormatPr defaultRowHeight="15" customHeight="1"/>',
    `<sheetData>${rows}</sheetData>`,
    '<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.5" header="0.3" footer="0.3"/>',
    '<pageSetup fitToHeight="0"/>',
    later.length === 0
      ? ''
      : `<rowBreaks count="${later.length}" manualBreakCount="${later.length}">${breaks}</rowBreaks>`,
    `<drawing r:id="${drawingId}"/></worksheet>`,
  ].join('');
}

function anchorXml({ row, shown, title, description }: Placed, index: number, id: string): string {
  const size = `cx="${shown.width * unitsPerPixel}" cy="${shown.height * unitsPerPixel}"`;
  const about = attributesText({ id: String(index + 2), name: title, descr: description });
  return [
    `<xdr:oneCellAnchor><xdr:from><xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row + 1}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext ${size}/>`,
    `<xdr:pic><xdr:nvPicPr><xdr:cNvPr${about}/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>`,
    `<xdr:blipFill><a:blip r:embed="${id}"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>`,
    `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr>`,
    '</xdr:pic><xdr:clientData/></xdr:oneCellAnchor>',
  ].join('');
}

function freeSheetName(file: WorkbookPackage): string {
  const taken = new Set(file.sheets().map(({ name }) => name.toLowerCase()));
  let name = 'Drawings';
  for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `Drawings ${number}`;
  return name;
}

/** The workbook with the pictures on a new sheet after the others; `note` stands above them. */
export function addPictures(bytes: Uint8Array, pictures: readonly SheetPicture[], note?: string): Uint8Array {
  if (pictures.length === 0) return bytes;
  const file = new WorkbookPackage(bytes);
  const [workbook, name] = [file.workbook(), freeSheetName(file)];
  const on = placed(pictures, note === undefined ? 0 : 2);
  const part = file.freeName('xl/drawings/drawing1.xml');
  // The part must be there before its own references are noted.
  file.set(part, '');
  const anchors = on.map((picture, index) => {
    const image = file.freeName('xl/media/image1.png');
    file.set(image, picture.png);
    file.setContentType(image, 'image/png');
    return anchorXml(picture, index, file.relate(part, 'image', image));
  });
  const open = `<xdr:wsDr xmlns:xdr="${drawings}/spreadsheetDrawing" xmlns:a="${drawings}/main" xmlns:r="${officeRelations}">`;
  file.set(part, `${xmlHead}${open}${anchors.join('')}</xdr:wsDr>`);
  file.setContentType(part, `${types}.drawing+xml`);
  const sheet = file.freeName('xl/worksheets/sheet1.xml');
  file.set(sheet, '');
  file.set(sheet, sheetXml(on, note, file.relate(sheet, 'drawing', part)));
  file.setContentType(sheet, `${types}.spreadsheetml.worksheet+xml`);
  const id = file.relate(workbook, 'worksheet', sheet);
  const xml = file.needed(workbook);
  const list = childNamed(elementTree(xml, 2), 'sheets');
  if (list === undefined) return bytes;
  const sheetId = String(1 + Math.max(0, ...list.children.map(({ attributes }) => Number(attributes.sheetId))));
  const entry = { name, sheetId, 'xmlns:r': officeRelations, 'r:id': id };
  const element = `<${prefixOf(list)}sheet${attributesText(entry)}/>`;
  file.set(workbook, applyEdits(xml, [appended(xml, list, element)]));
  return file.toBytes();
}
