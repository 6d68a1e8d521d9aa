import type { RequestListener } from 'node:http';
import { siteListener } from '../../command-line/serve-site';
import { textTable } from '../../command-line/text-table';
import { inBrowser, whileServing } from './bench-browser';
import { timesRow } from './bench-wanted';

/** A page that does what Excel does: a stand-in for its global, the metadata, the script, then the first call. */
const page = `<!doctype html>
<title>first function</title>
<script>
  const functions = new Map();
  const CustomFunctions = {
    associate: (id, implementation) => functions.set(id, implementation),
    Error: class extends Error {
      constructor(code, message) {
        super(message);
        this.code = code;
      }
    },
  };
  const metadata = fetch('functions.json').then((response) => response.json());
</script>
<script src="functions.js"></script>
<script>
  metadata.then(({ functions: described }) => {
    const { id } = described.find(({ name }) => name === 'CONE.ANGLE');
    const [[angle]] = functions.get(id)('US', 22.5, 4, 9.25);
    window.first = { angle, described: described.length, milliseconds: performance.now() };
  });
</script>
`;

interface First {
  readonly angle: number;
  readonly described: number;
  readonly milliseconds: number;
}

const openings = 9;

/** How long a fresh page takes, from its opening to the result of the first function. */
export function startTable(): Promise<string> {
  const site = siteListener('dist');
  const listener: RequestListener = (request, response) => {
    if (request.url !== '/first.html') return site(request, response);
    response.writeHead(200, { 'Content-Type': 'text/html' }).end(page);
  };
  return whileServing(listener, (address) =>
    inBrowser(async (browser) => {
      const times: number[] = [];
      for (let i = 0; i < openings; i++) {
        // A context of its own has an empty cache.
        const context = await browser.newContext();
        const opened = await context.newPage();
        await opened.goto(`${address}first.html`);
        const handle = await opened.waitForFunction(() => (window as { first?: unknown }).first);
        const first = (await handle.jsonValue()) as First;
        if (Math.abs(first.angle - 45) > 1e-9) throw new Error(`the first function gave ${first.angle}, not 45`);
        times.push(first.milliseconds);
        await context.close();
      }
      return textTable(
        ['from', 'median, ms', 'slowest, ms', 'wanted'],
        [timesRow('a fresh page to the first answer', times, { below: 150 })],
      );
    }),
  );
}
