import { table } from '../table';
import { callResult, formatValue } from './formula-result';

/** A class's readings: the last bore cannot belong to its girth. */
const readings = [
  { drum: 'Fern', bore: '22 1/2 in', drain: '4 in', height: '9 1/4 in' },
  { drum: 'Moss', bore: '21 3/4 in', drain: '4 in', height: '9 in' },
  { drum: 'Sedge', bore: '570 mm', drain: '100 mm', height: '235 mm' },
  { drum: 'Rush', bore: '29 in', girth: '72 in', drain: '4 in', height: '9 1/2 in' },
] as const;

/** Text for a string inside a formula; the inch mark is not used. */
const wallAngle = ({ bore, drain, height }: (typeof readings)[number]): string =>
  formatValue(callResult(`=SILT.CONE.ANGLE("US","${bore}","${drain}","${height}")`)[0]?.[0], 4);

function readingRow(reading: (typeof readings)[number]): string {
  const bore = 'girth' in reading ? `${reading.bore} (girth ${reading.girth})` : reading.bore;
  return `<tr><th scope="row">${reading.drum}</th><td>${bore}</td><td>${reading.drain}</td><td>${reading.height}</td><td></td></tr>`;
}

/** A worksheet with readings, one of them impossible, the answers, and the log of the leak test. */
export function classKit(): string {
  const possible = readings.filter((reading) => !('girth' in reading));
  const widest = formatValue(callResult('=SILT.TANK.GIRTH("US","72 in")')[0]?.[0]);
  const answers = possible.map((reading) => `${reading.drum}: ${wallAngle(reading)} degrees`).join('; ');
  const blank = '<tr><td></td><td></td><td></td><td></td><td></td></tr>';
  return `<h2>Class kit: the worksheet</h2>
<p>Hand out these readings. One of them cannot be right: find it before you type it. Then find each wall angle, and say which cones let sludge slide.</p>
${table(['drum', 'bore', 'drain', 'cone height', 'wall angle'], readings.map(readingRow))}
<details><summary>Answers</summary><p>Rush: a tape around a drum that reads 72 in goes with a bore of ${widest} in at most, and the wall of the drum takes some of that. The wall angles of the others: ${answers}.</p></details>
<h2>Class kit: the leak-test log</h2>
${table(['date and hour', 'filled to', 'level below the rim', 'drips seen', 'who'], Array(6).fill(blank))}`;
}

export const noHost = `<h2>No web host at hand</h2>
<p>The site is a folder of files; a server only has to send them, from any folder and any address.</p>
<ul>
<li><strong>A school’s own server.</strong> Unpack the zip of a release and copy its folder <code>site</code> to the server. Give the class the address of the folder <code>workbench</code> in it.</li>
<li><strong>One computer.</strong> Unpack the zip, open a terminal in the folder <code>site</code>, and start any program that serves a folder, such as <code>python3 -m http.server</code>. On that computer the workbench is then at <code>http://127.0.0.1:8000/workbench/</code>, and it keeps working without a network.</li>
<li><strong>A room with one computer that serves.</strong> The others open the address of that computer. They need it all the time, because browsers keep a site for use without a network only if it comes over https.</li>
</ul>
<p>Opening the files straight from a disk or a stick does not work: browsers do not let a page from a disk load its own parts.</p>`;
