/** Draws patterns, cut plans and drums from the command line: `npm run -s draw -- --units US --top 22.5 … pattern.pdf`. */
import type { Drawing } from '../drawing/drawing-model';
import { stacked } from '../drawing/stacked';
import { type PaperName, papers } from '../drawing/tiling';
import { requestedDrawings } from './draw-drawings';
import { DrawMistake, type DrawRequest, drawUsage, readDrawRequest } from './draw-request';
import { UnreadableDrawn } from './draw-workbook';
import { printSafely } from './print-safely';
import { userPath } from './user-path';
import { withinLimits } from './within-limits';
import { checkOutput, writeWhole } from './write-file';

/** The whole file is made before anything is written. */
async function contents(drawings: readonly Drawing[], request: DrawRequest): Promise<string | Uint8Array> {
  if (request.format === 'pdf') {
    const paper = paperOf(request, drawings[0]?.units);
    const { toPdf } = await import('../drawing/pdf');
    return toPdf(drawings, { paper, ...(request.onePage ? { fullSize: false } : {}) });
  }
  const together = stacked(request.given.name ?? 'Patterns', drawings);
  if (request.format === 'dxf') return (await import('../drawing/dxf')).toDxf(together);
  return (await import('../drawing/svg')).toSvg(together, { standalone: true });
}

async function packet(request: DrawRequest): Promise<Uint8Array> {
  const { requestedPacket } = await import('./draw-packet');
  return requestedPacket(request, namedPaper(request));
}

function paperOf(request: DrawRequest, units: Drawing['units'] | undefined): PaperName {
  return namedPaper(request) ?? (units === 'US' ? 'Letter' : 'A4');
}

function namedPaper({ given }: DrawRequest): PaperName | undefined {
  if (given.paper === undefined) return undefined;
  const name = (Object.keys(papers) as PaperName[]).find((one) => one.toLowerCase() === given.paper?.toLowerCase());
  if (name === undefined) throw new DrawMistake(`--paper: ${given.paper} is not known; give A4 or Letter`);
  return name;
}

/** A sentence about the finished file, for the person who prints or cuts it. */
function describeFile(file: string | Uint8Array, { format }: DrawRequest): string {
  if (typeof file === 'string') return `written as ${format.toUpperCase()}`;
  if (format === 'xlsx') return 'written as a workbook of values';
  const pages =
    Buffer.from(file)
      .toString('latin1')
      .match(/\/Type *\/Page\b/g)?.length ?? 0;
  // Full size brings a page map, so a single page is a drawing fitted to the paper.
  return pages === 1
    ? '1 page, fitted to the paper'
    : `${pages} pages, full size: print at 100 % and measure the check bars`;
}

const outputOf = ({ file }: DrawRequest) => ({ path: userPath(file), named: file });

async function draw(request: DrawRequest): Promise<void> {
  const file =
    request.what === 'packet' ? await packet(request) : await contents(await requestedDrawings(request), request);
  await writeWhole(outputOf(request), file);
  process.stdout.write(`${request.file}: ${describeFile(file, request)}\n`);
}

async function main(): Promise<void> {
  printSafely();
  try {
    const request = readDrawRequest(process.argv.slice(2));
    if (request === undefined) {
      process.stdout.write(drawUsage);
      return;
    }
    const { workbook, prices } = request.given;
    const output = outputOf(request);
    checkOutput(
      output,
      [workbook, prices].flatMap((input) => (input === undefined ? [] : [userPath(input)])),
    );
    await (workbook === undefined ? draw(request) : withinLimits(workbook, () => draw(request), output));
  } catch (thrown) {
    process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = thrown instanceof UnreadableDrawn ? 2 : 1;
  }
}

void main();
