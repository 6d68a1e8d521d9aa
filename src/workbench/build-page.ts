import { build } from 'esbuild';

/** The page's script and style, by the name under which they are served. */
export type PageFiles = ReadonlyMap<string, Uint8Array>;

/** Bundles the workbench page in memory; the spreadsheet comes along as it is in its packages. */
export async function buildPage(): Promise<PageFiles> {
  const { outputFiles } = await build({
    entryPoints: { main: 'src/workbench/main.ts' },
    outdir: 'page',
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    minify: true,
    conditions: ['browser'],
    define: { 'process.env.NODE_ENV': '"production"', global: 'globalThis' },
    loader: { '.svg': 'dataurl', '.woff2': 'dataurl', '.png': 'dataurl' },
    logLevel: 'error',
  });
  return new Map(outputFiles.map((file) => [file.path.replaceAll('\\', '/').split('/').at(-1)!, file.contents]));
}
