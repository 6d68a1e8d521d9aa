/**
 * Builds dist/, everything that Excel loads: the script and the metadata of the functions, the pane's pages, the
 * reference pages, the icons and the manifest. The site's address is SILTSTEAD_SITE, and localhost while developing.
 */
const { existsSync, readdirSync, readFileSync } = require('node:fs');
const path = require('node:path');
const { require: requireTypeScript } = require('tsx/cjs/api');
const webpack = require('webpack');
const { dropDescriptions } = require('./src/tools/build/drop-descriptions.cjs');

const developmentSite = 'https://localhost:3000';
const site = (process.env.SILTSTEAD_SITE ?? developmentSite).replace(/\/+$/, '');

const paneFolder = path.resolve(__dirname, 'src/task-pane');
const iconFolder = path.resolve(paneFolder, 'icons');

/** A page's script has the page's name in dist; a page whose script is not written yet comes without it. */
const pages = {
  'task-pane': './src/task-pane/main.ts',
  drawing: './src/task-pane/drawing-page.ts',
};
const written = Object.entries(pages).filter(([, file]) => existsSync(path.resolve(__dirname, file)));

/** Types are checked by tsc on its own, which is faster than checking them here a second time. */
const typescript = (more) => ({ test: /\.ts$/, loader: 'ts-loader', options: { transpileOnly: true, ...more } });
const functionsLayer = 'functions';
const transformers = () => ({ before: [dropDescriptions] });

/** Functions stand whole, one behind the other: like beside like takes 400 bytes less once compressed. */
const minify = { compress: { passes: 2, hoist_funs: true, reduce_funcs: false } };

/** Pages of our own carry no script and no style inside themselves, and are held to that by their browser. */
const officeLibrary = 'https://appsforoffice.microsoft.com';
const policy = [
  "default-src 'none'",
  `script-src 'self' ${officeLibrary}`,
  "style-src 'self'",
  "img-src 'self' data: blob:",
  `connect-src 'self' ${officeLibrary}`,
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** What is not bundled: each file of dist that is copied or written rather than compiled. */
class SiteFiles {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap('SiteFiles', (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: 'SiteFiles', stage }, () => {
        // Said to be minimized already, so that pages come out as they are written.
        const emit = (name, content) =>
          compilation.emitAsset(name, new webpack.sources.RawSource(content), { minimized: true });
        for (const [name, content] of this.written()) emit(name, content);
        for (const [name, file] of this.copied()) emit(name, readFileSync(file));
        emit('manifest.xml', this.manifest());
        emit('licenses.txt', this.licenses(compilation));
        for (const [name, file] of this.found(paneFolder, '.html')) emit(name, this.page(file));
      });
    });
  }

  written() {
    const { siteFiles } = requireTypeScript('./src/manual/site-files.ts', __filename);
    return siteFiles(site);
  }

  copied() {
    return [
      ...this.found(paneFolder, '.css'),
      ...this.found(iconFolder, '.png').map(([name, file]) => [`icons/${name}`, file]),
      ['reference/reference.css', path.resolve(__dirname, 'src/manual/reference.css')],
    ];
  }

  found(folder, extension) {
    const names = readdirSync(folder).filter((name) => name.endsWith(extension));
    return names.map((name) => [name, path.join(folder, name)]);
  }

  /** Our own license, and that of each package of which a page's script holds a part, as their licenses ask. */
  licenses(compilation) {
    const folders = new Set([path.resolve(__dirname)]);
    for (const module of compilation.modules) {
      const [folder] =
        /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec((module.resource ?? '').replaceAll('\\', '/')) ?? [];
      if (folder) folders.add(folder);
    }
    const texts = [...folders].map((folder) => {
      const { name } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
      const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
      if (file === undefined) throw new Error(`${name} is bundled but brings no license`);
      return `${name}\n\n${readFileSync(path.join(folder, file), 'utf8').trim()}\n`;
    });
    return texts.sort().join(`\n${'-'.repeat(72)}\n\n`);
  }

  manifest() {
    return readFileSync(path.resolve(__dirname, 'manifest.xml'), 'utf8').replaceAll(developmentSite, site);
  }

  page(file) {
    return readFileSync(file, 'utf8').replace(
      '<meta charset="utf-8">',
      (charset) => `${charset}\n  <meta http-equiv="Content-Security-Policy" content="${policy}">`,
    );
  }
}

module.exports = (_, { mode = 'production' }) => {
  if (!site.startsWith('https://')) throw new Error(`SILTSTEAD_SITE is ${site}; Excel loads add-ins over https only`);
  return {
    mode,
    target: ['web', 'es2020'],
    entry: {
      functions: { import: './src/functions/associate.ts', layer: functionsLayer },
      ...Object.fromEntries(written),
    },
    output: { path: path.resolve(__dirname, 'dist'), filename: '[name].js', chunkFilename: '[name].js', clean: true },
    resolve: { extensions: ['.ts', '.js'] },
    module: {
      rules: [
        {
          oneOf: [
            {
              issuerLayer: functionsLayer,
              ...typescript({ instance: functionsLayer, getCustomTransformers: transformers }),
            },
            typescript(),
          ],
        },
      ],
    },
    experiments: { layers: true },
    // Excel does not wait for anything: each page's script is one file, whole, but for what it asks for by import().
    optimization: { splitChunks: false, runtimeChunk: false, minimizeOptions: { javascript: minify } },
    devtool: mode === 'production' ? false : 'source-map',
    performance: { hints: false },
    plugins: [new SiteFiles()],
    stats: { preset: 'errors-warnings' },
  };
};
