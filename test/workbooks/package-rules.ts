import { overlaps, parseRange } from '../../src/hosts/address';
import { all, type Element, openPackage, type Package, storedCells } from './package-parts';

/** Elements of a worksheet in the order that ECMA-376 part 1, 18.3.1.99 (CT_Worksheet) asks for. */
const worksheetOrder =
  `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios
  autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks
  printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing
  legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst`.split(/\s+/);
const cellTypes = new Set([undefined, 'n', 's', 'str', 'b', 'e', 'inlineStr', 'd']);
const errorValues = new Set(['#DIV/0!', '#N/A', '#NAME?', '#NULL!', '#NUM!', '#REF!', '#VALUE!']);

function folderOf(part: string): string[] {
  return part.split('/').slice(0, -1);
}

function resolved(from: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const path = folderOf(from);
  for (const step of target.split('/')) step === '..' ? path.pop() : path.push(step);
  return path.join('/');
}

/** Open Packaging Conventions (ECMA-376 part 2): every part has a type, every relationship a target, every id is found. */
function packageFaults(file: Package): string[] {
  const faults: string[] = [];
  const types = file.xml('[Content_Types].xml');
  const overrides = new Set(all(types, 'Override').map(({ attributes }) => attributes.PartName));
  const defaults = new Set(all(types, 'Default').map(({ attributes }) => attributes.Extension));
  for (const name of file.names)
    if (name !== '[Content_Types].xml' && !overrides.has(`/${name}`) && !defaults.has(name.split('.').at(-1)))
      faults.push(`${name} has no content type`);
  for (const name of overrides) if (!file.has(name!.slice(1))) faults.push(`${name} has a content type but is missing`);
  for (const rels of file.names.filter((name) => name.endsWith('.rels'))) {
    const owner = rels.replace('_rels/', '').replace(/\.rels$/, '');
    const ids = new Set<string>();
    for (const { attributes } of all(file.xml(rels), 'Relationship')) {
      if (ids.has(attributes.Id!)) faults.push(`${rels}: ${attributes.Id} twice`);
      ids.add(attributes.Id!);
      if (attributes.TargetMode !== 'External' && !file.has(resolved(owner, attributes.Target!)))
        faults.push(`${rels}: ${attributes.Target} is missing`);
    }
    if (!file.has(owner) || !owner.endsWith('.xml')) continue;
    const used = usedIds(file.xml(owner));
    for (const id of used) if (!ids.has(id)) faults.push(`${owner}: ${id} leads nowhere`);
  }
  return faults;
}

function usedIds(element: Element): string[] {
  const own = Object.entries(element.attributes).filter(([name]) => /^r:(id|embed|link)$/.test(name));
  return [...own.map(([, id]) => id), ...element.children.flatMap(usedIds)];
}

function cellFaults(file: Package, part: string, tables: readonly string[]): string[] {
  const sheet = file.xml(part);
  const faults: string[] = [];
  const strings = all(file.xml('xl/sharedStrings.xml'), 'si').length;
  const styles = all(all(file.xml('xl/styles.xml'), 'cellXfs')[0]!, 'xf').length;
  const metadata = file.has('xl/metadata.xml')
    ? all(all(file.xml('xl/metadata.xml'), 'cellMetadata')[0]!, 'bk').length
    : 0;
  let lastRow = 0;
  for (const row of all(sheet, 'row')) {
    if (Number(row.attributes.r) <= lastRow) faults.push(`${part}: row ${row.attributes.r} is out of order`);
    lastRow = Number(row.attributes.r);
    let lastColumn = -1;
    for (const { attributes } of row.children) {
      const at = parseRange(attributes.r!)!;
      if (at.row + 1 !== lastRow || at.column <= lastColumn) faults.push(`${part}: ${attributes.r} is out of order`);
      lastColumn = at.column;
      if (Number(attributes.s ?? 0) >= styles) faults.push(`${part}: ${attributes.r} has no such style`);
      if (attributes.cm !== undefined && Number(attributes.cm) > metadata)
        faults.push(`${part}: ${attributes.r} has no such metadata`);
    }
  }
  const cells = storedCells(sheet);
  const spills = cells.filter(({ ref }) => ref?.includes(':'));
  for (const { address, type, value, formula, ref, element } of cells) {
    if (!cellTypes.has(type)) faults.push(`${part}: ${address} is of type ${type}`);
    if (type === 's' && Number(value) >= strings) faults.push(`${part}: ${address} has no such text`);
    if (type === 'e' && !errorValues.has(value ?? '')) faults.push(`${part}: ${address} holds ${value}`);
    if ((type === undefined || type === 'n') && value !== undefined && !Number.isFinite(Number(value)))
      faults.push(`${part}: ${address} is no number: ${value}`);
    if (formula === undefined) continue;
    if (value === undefined) faults.push(`${part}: ${address} has no cached value`);
    if (/SILT\./.test(formula.replace(/"[^"]*"/g, '')))
      faults.push(`${part}: ${address} calls SILT. by its typed name`);
    if (/_xldudf_/.test(formula) && element.attributes.cm === undefined)
      faults.push(`${part}: ${address} lacks the dynamic-array flag`);
    if (ref !== undefined && !ref.startsWith(address)) faults.push(`${part}: ${address} spills to ${ref}`);
  }
  spills.forEach((one, index) => {
    const range = parseRange(one.ref!)!;
    for (const other of spills.slice(index + 1))
      if (overlaps(range, parseRange(other.ref!)!)) faults.push(`${part}: spills ${one.ref} and ${other.ref} overlap`);
    for (const table of tables)
      if (overlaps(range, parseRange(table)!)) faults.push(`${part}: ${one.ref} spills into the table ${table}`);
    for (const other of cells)
      if (other !== one && other.formula !== undefined && overlaps(range, parseRange(other.address)!))
        faults.push(`${part}: ${other.address} stands in the spill ${one.ref}`);
  });
  return faults;
}

function sheetFaults(file: Package, part: string): string[] {
  const sheet = file.xml(part);
  const places = sheet.children.map(({ name }) => worksheetOrder.indexOf(name));
  const faults = places.every((place, index) => place >= 0 && (index === 0 || place >= places[index - 1]!))
    ? []
    : [`${part}: its elements are out of order`];
  const merges = all(sheet, 'mergeCell').map(({ attributes }) => attributes.ref!);
  merges.forEach((merge, index) => {
    for (const other of merges.slice(index + 1))
      if (overlaps(parseRange(merge)!, parseRange(other)!))
        faults.push(`${part}: merges ${merge} and ${other} overlap`);
  });
  // Excel's own limits: 255 characters in a list or message, 32 in a title.
  for (const rule of all(sheet, 'dataValidation')) {
    if ((rule.attributes.promptTitle ?? '').length > 32 || (rule.attributes.errorTitle ?? '').length > 32)
      faults.push(`${part}: a title of ${rule.attributes.sqref} is too long`);
    if ((rule.attributes.prompt ?? '').length > 255 || (rule.attributes.error ?? '').length > 225)
      faults.push(`${part}: a message of ${rule.attributes.sqref} is too long`);
    for (const formula of rule.children) if (formula.text.length > 255) faults.push(`${part}: a list is too long`);
  }
  return faults;
}

function tableFaults(file: Package, part: string): { readonly faults: string[]; readonly ranges: string[] } {
  const faults: string[] = [];
  const ranges: string[] = [];
  const rels = part.replace(/([^/]+)$/, '_rels/$1.rels');
  if (!file.has(rels)) return { faults, ranges };
  const texts = all(file.xml('xl/sharedStrings.xml'), 'si').map((item) =>
    all(item, 't')
      .map(({ text }) => text)
      .join(''),
  );
  const cells = new Map(storedCells(file.xml(part)).map((cell) => [cell.address, cell]));
  for (const { attributes } of all(file.xml(rels), 'Relationship')) {
    if (!attributes.Type!.endsWith('/table') || !file.has(resolved(part, attributes.Target!))) continue;
    const table = file.xml(resolved(part, attributes.Target!));
    const ref = table.attributes.ref!;
    ranges.push(ref);
    const { row, column } = parseRange(ref)!;
    all(table, 'tableColumn').forEach((heading, index) => {
      const address = `${String.fromCharCode(65 + column + index)}${row + 1}`;
      const cell = cells.get(address);
      const text = cell?.type === 's' ? texts[Number(cell.value)] : cell?.value;
      if (text !== heading.attributes.name)
        faults.push(`${part}: ${address} is not the heading ${heading.attributes.name}`);
    });
  }
  return { faults, ranges };
}

function workbookFaults(file: Package): string[] {
  const workbook = file.xml('xl/workbook.xml');
  const faults: string[] = [];
  if (all(workbook, 'calcPr').some(({ attributes }) => attributes.fullCalcOnLoad !== undefined))
    faults.push('it asks to be computed anew when opened');
  const names = new Set<string>();
  for (const { name } of file.sheets) {
    if (name.length > 31 || /[[\]:*?/\\]/.test(name)) faults.push(`${name} is no sheet name`);
    if (names.has(name.toLowerCase())) faults.push(`${name} stands twice`);
    names.add(name.toLowerCase());
  }
  const defined = all(workbook, 'definedName').map(
    ({ attributes }) => `${attributes.name}/${attributes.localSheetId ?? ''}`,
  );
  if (new Set(defined.map((name) => name.toLowerCase())).size !== defined.length)
    faults.push('a name is defined twice');
  for (const { attributes } of all(workbook, 'definedName'))
    if (names.has(attributes.name!.toLowerCase())) faults.push(`the name ${attributes.name} is also a sheet’s`);
  return faults;
}

/** What the file does against ECMA-376 and against what Excel is known to refuse; nothing where all is well. */
export function rulesBroken(bytes: Uint8Array): string[] {
  const file = openPackage(bytes);
  return [
    ...packageFaults(file),
    ...workbookFaults(file),
    ...file.sheets.flatMap(({ part }) => {
      const { faults, ranges } = tableFaults(file, part);
      return [...faults, ...sheetFaults(file, part), ...cellFaults(file, part, ranges)];
    }),
  ];
}
