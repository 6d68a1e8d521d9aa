import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chromium } from 'playwright-core';
import { findBrowser } from './find-browser';
import { staticSite } from './static-site';
import { textTable } from './text-table';

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

/** How long a fresh page takes, from its opening to the answer of the first function. */
export async function startTable(): Promise<string> {
  const site = staticSite('dist');
  const server = createServer((request, response) => {
    if (request.url !== '/first.html') return site(request, response);
    response.writeHead(200, { 'Content-Type': 'text/html' }).end(page);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/first.html`;
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    chromiumSandbox: process.getuid?.() !== 0,
  });
  try {
    const times: number[] = [];
    for (let i = 0; i < openings; i++) {
      // A context of its own has an empty cache.
      const context = await browser.newContext();
      const opened = await context.newPage();
      await opened.goto(address);
      const handle = await opened.waitForFunction(() => (window as { first?: unknown }).first);
      const first = (await handle.jsonValue()) as First;
      if (Math.abs(first.angle - 45) > 1e-9) throw new Error(`the first function answered ${first.angle}, not 45`);
      times.push(first.milliseconds);
      await context.close();
    }
    times.sort((a, b) => a - b);
    const named = { fastest: times[0]!, median: times[Math.floor(openings / 2)]!, slowest: times.at(-1)! };
    return textTable(
      ['opening', 'ms'],
      Object.entries(named).map(([name, time]) => [name, time.toFixed(0)]),
    );
  } finally {
    await browser.close();
    server.close();
  }
}
