import type { Drawing } from '../../drawing/drawing-model';
import type { PaperName } from '../../drawing/tiling';
import type { Progress } from '../work';

export type Format = 'pdf' | 'dxf' | 'svg';

export interface FileWish {
  readonly format: Format;
  readonly paper: PaperName;
  /** Full size over as many pages as it takes, or fitted to one page; for PDF. */
  readonly fullSize: boolean;
}

export interface DrawingFile {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
}

const types: Readonly<Record<Format, string>> = {
  pdf: 'application/pdf',
  dxf: 'image/vnd.dxf',
  svg: 'image/svg+xml',
};

/** Makes the file; its writer is loaded with the first one. It is made whole or not at all. */
export async function drawingFile(
  drawings: readonly Drawing[],
  { format, paper, fullSize }: FileWish,
  { step }: Pick<Progress, 'step'>,
): Promise<DrawingFile> {
  await step(0);
  const content = await fileContent(drawings, format, paper, fullSize, step);
  await step(1);
  return { name: `${nameOf(drawings)}.${format}`, type: types[format], content };
}

async function fileContent(
  drawings: readonly Drawing[],
  format: Format,
  paper: PaperName,
  fullSize: boolean,
  step: Progress['step'],
): Promise<string | Uint8Array<ArrayBuffer>> {
  if (format === 'pdf') {
    const { toPdf } = await import(/* webpackChunkName: "pdf-writer" */ '../../drawing/pdf');
    await step(0.3);
    return toPdf(drawings, { paper, fullSize }) as Uint8Array<ArrayBuffer>;
  }
  const { stacked } = await import(/* webpackChunkName: "stacked" */ '../../drawing/stacked');
  const together = stacked('Patterns', drawings);
  await step(0.3);
  if (format === 'svg') {
    const { toSvg } = await import('../../drawing/svg');
    return toSvg(together, { standalone: true });
  }
  const { toDxf } = await import(/* webpackChunkName: "dxf-writer" */ '../../drawing/dxf');
  await step(0.6);
  return toDxf(together);
}

/** `fern-cone-pattern`: a name that every file system accepts. */
function nameOf(drawings: readonly Drawing[]): string {
  const [first] = drawings;
  const title = drawings.length === 1 && first !== undefined ? first.title.replace(/, cut .*$/, '') : 'patterns';
  const plain = title.normalize('NFKD').replace(/[^A-Za-z0-9]+/g, '-');
  return (
    plain
      .replace(/^-+|-+$/g, '')
      .slice(0, 60)
      .toLowerCase() || 'drawing'
  );
}
