/** Builds what has changed and serves the site: `npm start`. */
import { buildSite } from './build-site';
import { serveSite } from './serve-site';

const defaultPort = 4610;

async function main(): Promise<void> {
  try {
    await buildSite();
    const port = Number(process.env.PORT ?? defaultPort);
    const { address } = await serveSite({ folder: 'dist', port, morePorts: 20 });
    process.stdout.write(`
The site is at ${address}  (stop it with Ctrl+C)
The workbench: ${address}workbench/
`);
  } catch (thrown) {
    process.stderr.write(`\n${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 1;
  }
}

void main();
