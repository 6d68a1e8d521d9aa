/** Serves the site and builds it again on every change; open pages of the workbench reload themselves: `npm run dev`. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { serveSite } from '../../command-line/serve-site';

async function main(): Promise<void> {
  const { address } = await serveSite({ folder: 'dist', port: 4610, morePorts: 20 });
  process.stdout.write(`The workbench, built again on every change: ${address}workbench/  (stop it with Ctrl+C)\n`);
  const webpack = spawn(
    process.execPath,
    [join('node_modules', 'webpack', 'bin', 'webpack.js'), '--watch', '--mode', 'development'],
    { stdio: 'inherit' },
  );
  webpack.on('close', (code) => process.exit(code ?? 0));
  process.on('SIGINT', () => webpack.kill());
}

main().catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
