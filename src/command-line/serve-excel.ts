/** Serves dist over https for Excel and says how to load it there: `npm run start:excel`. */
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { getHttpsServerOptions } from 'office-addin-dev-certs';
import { caCertificatePath, localhostCertificatePath, localhostKeyPath } from 'office-addin-dev-certs/lib/defaults';
import { buildSite } from './build-site';
import { serveSite } from './serve-site';

const port = 3000;
const site = `https://localhost:${port}`;

const steps = `
Siltstead is served at ${site}. Leave this running, and load the manifest:
  ${resolve('dist/manifest.xml')}

Excel on the web (free; sign in at office.com and open a workbook)
  1. Open ${site}/task-pane.html in the same browser once; accept the certificate if you are asked.
     Where the browser asks whether Excel's page may reach your local network, press Allow.
  2. Home > Add-ins > More Settings > Upload My Add-in; choose the manifest.

Windows
  1. Share a folder of your own: its Properties > Sharing > Share; note the network path that it shows.
  2. Put the manifest into it.
  3. Excel: File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs; type the network
     path, press Add catalog, tick Show in Menu, press OK and start Excel again.
  4. Home > Add-ins > Advanced > SHARED FOLDER; choose Siltstead.

Mac
  1. Copy the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder if it is not there).
  2. Start Excel again and open a workbook; Home > Add-ins lists Siltstead.

Then type =SILT.CONE.ANGLE("US",22.5,4,9.25) into a cell. Stop with Ctrl+C.
`;

interface Certificate {
  readonly cert: Buffer;
  readonly key: Buffer;
}

/** A certificate for localhost, trusted if the system allows it; otherwise the user is told that it is not trusted. */
async function certificate(): Promise<Certificate> {
  try {
    return await getHttpsServerOptions();
  } catch (thrown) {
    if (!existsSync(localhostCertificatePath) || !existsSync(localhostKeyPath)) throw thrown;
    process.stderr.write(
      `${thrown instanceof Error ? thrown.message.trim() : String(thrown)}
The certificate could not be made trusted. Excel on the web works once the browser has accepted it; for Excel on
Windows or Mac trust this authority by hand: ${caCertificatePath}
`,
    );
    return { cert: readFileSync(localhostCertificatePath), key: readFileSync(localhostKeyPath) };
  }
}

async function serve(): Promise<void> {
  await buildSite();
  await serveSite({ folder: 'dist', port, certificate: await certificate() });
  process.stdout.write(steps);
}

serve().catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
