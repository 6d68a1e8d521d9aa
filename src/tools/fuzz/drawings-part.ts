import { readPatterns } from '../../catalogue/reading/read-patterns';
import { readRequest } from '../../command-line/calc-request';
import { readDrawRequest } from '../../command-line/draw-request';
import type { Drawing } from '../../drawing/drawing-model';
import { drumSectionDrawing } from '../../drawing/drum-section-drawing';
import { toDxf } from '../../drawing/dxf';
import { patternDrawing } from '../../drawing/pattern-drawing';
import { toPdf } from '../../drawing/pdf';
import { toSvg } from '../../drawing/svg';
import { readProfile } from '../../units/profile';
import type { FuzzLog } from './fuzz-log';
import { Random } from './random';
import { patternRows } from './tables';

const names: readonly string[] = ['Drum 2', '', '<b>Fern</b>', 'a'.repeat(300), 'Ö½∅', ')(\\', '\u0000\u001f', '%%EOF'];
const leaks = /\bNaN\b|\bInfinity\b|\bundefined\b/;

/** Draws that many patterns and drums of random sizes and names, each as SVG, DXF or PDF. */
export function drawings(seed: number, count: number, log: FuzzLog): void {
  const random = new Random(seed);
  for (let i = 0; i < count; i++) {
    const drawing = random.chance(0.6) ? patternCall(random, log) : drumCall(random, log);
    if (drawing === undefined) continue;
    const format = random.pick(['svg', 'dxf', 'pdf'] as const);
    const file = guarded(log, `as ${format}`, () => writeFormat(drawing, format, random));
    if (file !== undefined && leaks.test(file))
      log.fault({ name: `drawing as ${format}`, title: drawing.title }, 'holds a figure that is none');
  }
}

function patternCall(random: Random, log: FuzzLog): Drawing | undefined {
  const profile = readProfile(random.pick(['US', 'metric']));
  const rows = patternRows(random, profile, 1);
  const name = random.pick(names);
  return guarded(log, { name: 'pattern drawing', rows, title: name }, () => {
    const [pattern] = readPatterns('pattern', rows as (string | number)[][], profile);
    return pattern === undefined ? undefined : patternDrawing({ pattern, profile, name });
  });
}

function drumCall(random: Random, log: FuzzLog): Drawing | undefined {
  const profile = readProfile(random.pick(['US', 'metric']));
  const drumDiameter = random.magnitude(0.05, 3);
  const input = {
    profile,
    drumDiameter,
    depth: random.magnitude(0.01, 3),
    coneHeight: random.pick([0, random.magnitude(0.01, 1)]),
    coneBottom: random.between(0, drumDiameter),
    rise: random.pick([0, random.between(0, 0.3)]),
    stand: random.pick([0, random.between(0, 2)]),
    name: random.pick(names),
  };
  return guarded(log, { ...input, name: 'drum section', title: input.name, profile: profile.text }, () =>
    drumSectionDrawing(input),
  );
}

function writeFormat(drawing: Drawing, format: 'svg' | 'dxf' | 'pdf', random: Random): string {
  if (format === 'svg') return toSvg(drawing, { standalone: random.chance(0.5) });
  if (format === 'dxf') return toDxf(drawing);
  toPdf(drawing, { paper: random.pick(['A4', 'Letter']), fullSize: random.chance(0.5) });
  return '';
}

const words = [
  '--json',
  '--workbook',
  '--units',
  'US',
  'metric',
  '--top',
  '22.5',
  '--bottom',
  '-4',
  '--height',
  '',
  'pattern.pdf',
  'x.dxf',
  '--',
  '-',
  '--paper',
  'A4',
  '--drum',
  '--depth',
  '--range',
  "'Patterns'!B5:K7",
  '=1+1',
  '=SILT.CONE.ANGLE("US",22.5,4,9.25)',
  '--name',
  '<b>',
  '--help',
  '--one-page',
  '--column',
  '--sheet-length',
  '--plan',
  'ä ö.svg',
  '\u0000',
  '--scenarios',
  '--gap=0',
  '__proto__',
] as const;

/** Reads that many command lines of random words; each fault must be a sentence. */
export function commandLines(seed: number, count: number, log: FuzzLog): void {
  const random = new Random(seed);
  for (let i = 0; i < count; i++) {
    const line = Array.from({ length: random.whole(0, 12) }, () => random.pick(words));
    guarded(log, { name: 'draw', line }, () => readDrawRequest(line), ['DrawMistake']);
    guarded(log, { name: 'calc', line }, () => readRequest(line));
  }
}

/** Runs something that may be refused with a message but must not fail in another way. */
export function guarded<V>(
  log: FuzzLog,
  call: unknown,
  run: () => V,
  refusals: readonly string[] = ['Refusal', 'ArgumentError', 'DrawingTooLarge'],
): V | undefined {
  log.before(call);
  try {
    return run();
  } catch (error) {
    const { name, message } = error instanceof Error ? error : { name: 'what is no error', message: String(error) };
    if (!refusals.includes(name)) log.fault(call, `threw ${name}: ${message.slice(0, 200)}`);
    else if (message === '' || leaks.test(message)) log.fault(call, `says: ${message}`);
    return undefined;
  }
}
