import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { textTable } from '../../command-line/text-table';
import { verdictText } from './bench-wanted';

/** What Excel loads at its start, and how much of it is allowed, in bytes. */
const loaded = [
  { file: 'functions.js', packed: 80_000 },
  { file: 'cut-plans.js', packed: 18_000 },
  { file: 'functions.json', plain: 125_000 },
  { file: 'task-pane.js', packed: 90_000 },
  { file: 'task-pane.html' },
  { file: 'task-pane.css' },
];

const kilobytes = (bytes: number) => (bytes / 1000).toFixed(1);

/** Sizes of the built site on disk and compressed. */
export function sizeTable(): string {
  const rows = loaded.map(({ file, packed, plain }) => {
    const content = readFileSync(`dist/${file}`);
    const travels = gzipSync(content, { level: 9 }).length;
    const wanted = packed !== undefined ? judgedSize(travels, packed, ' gzipped') : judgedSize(content.length, plain);
    return [file, kilobytes(content.length), kilobytes(travels), wanted];
  });
  return textTable(['file', 'kB', 'kB gzipped', 'wanted'], rows);
}

function judgedSize(bytes: number, most: number | undefined, how = ''): string {
  return most === undefined ? '' : verdictText(bytes / 1000, { atMost: most / 1000 }, `kB${how}`);
}
