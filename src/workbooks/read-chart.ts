import type { ChartData, ChartSeries, OtherChart } from '../hosts/workbook-model';
import { nodeAt, nodesNamed, type XmlNode } from './reading/xml-tree';

/** A chart of a file: of a kind that the model holds, or another by its name. */
export type FileChart = { readonly chart: Omit<ChartData, 'place'> } | { readonly other: OtherChart };

const inWords: Readonly<Record<string, string>> = {
  bar3D: '3-D bar',
  line3D: '3-D line',
  pie3D: '3-D pie',
  area3D: '3-D area',
  surface3D: '3-D surface',
  ofPie: 'pie of pie',
};

const settingOf = (node: XmlNode | undefined): string | undefined => node?.attributes.val;

/** The kind of a chart in words, and its type where the model knows the kind. */
function kindOf(groups: readonly XmlNode[]): { readonly kind: string; readonly type?: ChartData['type'] } {
  const [group, ...others] = groups;
  if (group === undefined) return { kind: 'newer' };
  if (others.length > 0) return { kind: 'combined' };
  const base = group.name.replace(/Chart$/, '');
  const type = base === 'bar' && settingOf(nodeAt(group, 'barDir')) !== 'bar' ? 'column' : base;
  const kind = inWords[type] ?? type;
  // A percentage is stacked too: the file says percentStacked.
  if (/stacked/i.test(settingOf(nodeAt(group, 'grouping')) ?? '')) return { kind: `stacked ${kind}` };
  return type === 'column' || type === 'bar' || type === 'line' || type === 'scatter' ? { kind, type } : { kind };
}

/** Typed text, or what the cell that a title refers to held when the file was saved. */
function titleText(title: XmlNode | undefined): string {
  const typed = nodesNamed(title, 't');
  const shown = typed.length > 0 ? typed : nodesNamed(nodeAt(title, 'tx'), 'v');
  return shown.map(({ text }) => text).join('');
}

const reference = (source: XmlNode | undefined): string | undefined => nodesNamed(source, 'f')[0]?.text;

function readSeries(series: XmlNode): ChartSeries[] {
  const values = reference(nodeAt(series, 'val') ?? nodeAt(series, 'yVal'));
  const categories = reference(nodeAt(series, 'cat') ?? nodeAt(series, 'xVal'));
  if (values === undefined) return [];
  const title = nodeAt(series, 'tx');
  const name = reference(title) ?? nodeAt(title, 'v')?.text ?? '';
  return [{ name, values, ...(categories === undefined ? {} : { categories }) }];
}

function formatOf(axis: XmlNode | undefined): string | undefined {
  const format = nodeAt(axis, 'numFmt')?.attributes;
  return format?.sourceLinked === '0' || format?.sourceLinked === 'false' ? format.formatCode : undefined;
}

/** Reads the part of a chart; its place stands in the drawing that shows it. */
export function readChart(part: XmlNode): FileChart {
  const chart = nodeAt(part, 'chart');
  const plot = nodeAt(chart, 'plotArea');
  const title = titleText(nodeAt(chart, 'title'));
  const groups = plot?.children.filter(({ name }) => name.endsWith('Chart')) ?? [];
  const { kind, type } = kindOf(groups);
  const [group] = groups;
  if (plot === undefined || group === undefined || type === undefined) return { other: { kind, title } };
  // A group names its axes in the order across, up.
  const [category, value] = group.children
    .filter(({ name }) => name === 'axId')
    .map((id) =>
      plot.children.find((axis) => /Ax$/.test(axis.name) && settingOf(nodeAt(axis, 'axId')) === settingOf(id)),
    );
  const words = {
    categoryTitle: titleText(nodeAt(category, 'title')) || undefined,
    valueTitle: reference(nodeAt(nodeAt(value, 'title'), 'tx')) ?? (titleText(nodeAt(value, 'title')) || undefined),
    categoryFormat: formatOf(category),
    valueFormat: formatOf(value),
  };
  return {
    chart: {
      type,
      title,
      series: group.children.filter(({ name }) => name === 'ser').flatMap(readSeries),
      ...Object.fromEntries(Object.entries(words).filter(([, word]) => word !== undefined)),
    },
  };
}
