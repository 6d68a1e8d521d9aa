import { rangeName } from '../../hosts/address';
import type { ChartData, OtherChart } from '../../hosts/workbook-model';
import { readChart } from '../read-chart';
import { WorkbookPackage } from '../saving/package';
import { nodeAt, nodesNamed, type XmlNode, xmlTree } from './xml-tree';

export interface SheetCharts {
  readonly charts: readonly ChartData[];
  readonly otherCharts: readonly OtherChart[];
}

const emuPerPixel = 914_400 / 96;
/** A cell of usual size, for drawings that give a size in place of the last cell. */
const usualCell = { width: 64 * emuPerPixel, height: 20 * emuPerPixel };

const numberIn = (node: XmlNode | undefined): number => Number(node?.text ?? 0);

function placeOf(anchor: XmlNode): string {
  const [from, to, size] = [nodeAt(anchor, 'from'), nodeAt(anchor, 'to'), nodeAt(anchor, 'ext')?.attributes];
  const [row, column] = [numberIn(nodeAt(from, 'row')), numberIn(nodeAt(from, 'col'))];
  const rows = to === undefined ? Number(size?.cy) / usualCell.height : numberIn(nodeAt(to, 'row')) - row;
  const columns = to === undefined ? Number(size?.cx) / usualCell.width : numberIn(nodeAt(to, 'col')) - column;
  const count = (cells: number): number => Math.max(1, Math.round(cells) || 1);
  return rangeName({ row, column, rows: count(rows), columns: count(columns) });
}

function chartsOf(file: WorkbookPackage, sheet: string): SheetCharts {
  const charts: ChartData[] = [];
  const otherCharts: OtherChart[] = [];
  const drawings = file.relations(sheet).filter(({ type }) => type.endsWith('/drawing'));
  for (const { target: drawing } of drawings) {
    const parts = new Map(file.relations(drawing).map(({ id, target, type }) => [id, { target, type }]));
    for (const anchor of xmlTree(file.needed(drawing)).children) {
      for (const { attributes } of nodesNamed(anchor, 'chart')) {
        const part = parts.get(attributes.id ?? '');
        const text = part?.type.endsWith('/chart') ? file.text(part.target) : undefined;
        const read = text === undefined ? { other: { kind: 'newer', title: '' } } : readChart(xmlTree(text));
        if ('chart' in read) charts.push({ ...read.chart, place: placeOf(anchor) });
        else otherCharts.push(read.other);
      }
    }
  }
  return { charts, otherCharts };
}

/**
 * The charts of each sheet by its name. They are read from their own parts, because the file library finds only those of
 * programs that write the same prefixes and addresses as it does.
 */
export function chartsInFile(bytes: Uint8Array): ReadonlyMap<string, SheetCharts> {
  try {
    const file = new WorkbookPackage(bytes);
    return new Map(file.sheets().map(({ name, path }) => [name, chartsOf(file, path)]));
  } catch {
    // Whatever is damaged there, the cells can still be read, and saving leaves charts as they are.
    return new Map();
  }
}
