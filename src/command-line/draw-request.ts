import { parseArgs } from 'node:util';

export const drawUsage = `usage: npm run -s draw -- --units UNITS WHAT FILE.pdf (or .dxf, .svg)
  a cone      --top 22.5 --bottom 4 --height 9.25
              [--pieces N] [--lap L] [--thickness T] [--measured fit] [--clearance C]
  a workbook  --workbook FILE.xlsx --range 'Patterns!B5:K7'  pattern rows, as last calculated
  a cut plan  the same with --sheet-length L --sheet-width W [--gap G]; --plan RANGE takes a plan from the workbook
  a train     --workbook FILE.xlsx --scenarios 'Scenarios!B4:F32' [--column N]  one scenario, the first where left out
  a drum      --drum 22.5 --depth 24 [--cone-height H] [--cone-top D] [--cone-bottom D] [--rise R] [--stand S]
              [--drum-height H] [--container H] [--drain-drop D]
  a packet    --packet --workbook FILE.xlsx  the papers of a job, from a workbook like the ready-made Cone cut plan
              [--prices FILE.xlsx]  a workbook with the ready-made Materials sheets; their prices give packs and costs
              a file name that ends with .xlsx gives the packet as a workbook of values
  --units     US or metric, with exceptions if any; left out, the workbook's SiltUnits cell
  --name      what the drawing is called
  --paper     A4 or Letter, for PDF; A4 under metric, Letter under US where left out
  --one-page  a PDF that fits one page instead of full size
`;

const text = { type: 'string' } as const;

const options = {
  units: text,
  name: text,
  paper: text,
  'one-page': { type: 'boolean' },
  packet: { type: 'boolean' },
  help: { type: 'boolean' },
  top: text,
  bottom: text,
  height: text,
  pieces: text,
  lap: text,
  thickness: text,
  measured: text,
  clearance: text,
  workbook: text,
  prices: text,
  range: text,
  plan: text,
  scenarios: text,
  column: text,
  'sheet-length': text,
  'sheet-width': text,
  gap: text,
  drum: text,
  depth: text,
  'cone-height': text,
  'cone-top': text,
  'cone-bottom': text,
  rise: text,
  stand: text,
  'drum-height': text,
  container: text,
  'drain-drop': text,
} as const;

export type DrawOption = Exclude<keyof typeof options, 'one-page' | 'packet' | 'help'>;
export type Format = 'pdf' | 'dxf' | 'svg' | 'xlsx';

export interface DrawRequest {
  readonly given: Readonly<Partial<Record<DrawOption, string>>>;
  readonly onePage: boolean;
  readonly file: string;
  readonly format: Format;
  readonly what: 'cone' | 'workbook' | 'drum' | 'packet';
}

/** The command line is not a drawing that can be made; the message says what is wrong with it. */
export class DrawMistake extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'DrawMistake';
  }
}

/** Reads the command line; undefined where only help was asked for. */
export function readDrawRequest(args: readonly string[]): DrawRequest | undefined {
  const { values, positionals } = parsed(args);
  if (values.help) return undefined;
  const [file, ...more] = positionals;
  if (file === undefined)
    throw new DrawMistake('give the file to write, such as pattern.pdf; --help shows what can be drawn');
  if (more.length > 0) throw new DrawMistake(`give one file to write; ${positionals.join(' and ')} were given`);
  const { 'one-page': onePage = false, packet = false, help: _help, ...given } = values;
  const format = /\.(pdf|dxf|svg|xlsx)$/i.exec(file)?.[1]?.toLowerCase();
  if (packet) {
    if (format !== 'pdf' && format !== 'xlsx') {
      throw new DrawMistake(`${file}: a packet is a PDF file or a workbook; end its name with .pdf or .xlsx`);
    }
    return { given, onePage, file, format, what: 'packet' };
  }
  if (format === undefined || format === 'xlsx') {
    throw new DrawMistake(`${file}: end the file name with .pdf, .dxf or .svg`);
  }
  const kinds = { workbook: given.workbook, drum: given.drum, cone: given.top };
  const [asked, ...others] = (['workbook', 'drum', 'cone'] as const).filter((what) => kinds[what] !== undefined);
  if (asked === undefined || others.length > 0) {
    throw new DrawMistake(
      'choose one thing to draw: --top, --bottom and --height, or --workbook and --range, or --drum',
    );
  }
  return { given, onePage, file, format: format as Format, what: asked };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (thrown) {
    const [first = ''] = String(thrown instanceof Error ? thrown.message : thrown).split(/\. |\n/);
    const unclear = /^Option '(--[a-z-]+)' argument is ambiguous/.exec(first);
    if (unclear !== null)
      throw new DrawMistake(`${unclear[1]}: give a value; one that begins with - is written ${unclear[1]}=-2`);
    throw new DrawMistake(first);
  }
}
