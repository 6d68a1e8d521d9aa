/**
 * Builds dist/, the whole site, in three parts:
 *   add-in     what Excel loads: the functions' script, the pane, the icons, the manifest;
 *   workbench  the page with the embedded spreadsheet;
 *   site       after both, what is written or copied rather than compiled: functions' metadata, guide, reference,
 *              samples, licenses, the workbench's copies of the add-in's files; and the script that keeps the site
 *              for use without a network. A thread of its own writes the pages while the other parts are bundled.
 * The site's address is given by --env site=… or SILTSTEAD_SITE, and is localhost while developing; only manifest.xml
 * and functions.json hold it.
 */
const { createHash } = require('node:crypto');
const { readdirSync, readFileSync, rmSync } = require('node:fs');
const path = require('node:path');
const { EsbuildPlugin } = require('esbuild-loader');
const MinimizerPlugin = require('minimizer-webpack-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');
const { dropDescriptions } = require('./src/tools/build/drop-descriptions.cjs');
const { EmittedFiles } = require('./src/tools/build/emitted-files.cjs');
const { CollectLicenses, licenseTexts } = require('./src/tools/build/licenses.cjs');
const {
  characterClasses,
  lighterGrid,
  noOwnComputer,
  rangesOfFormulas,
} = require('./src/tools/build/lighter-grid.cjs');
const { lighterXlsx } = require('./src/tools/build/lighter-xlsx.cjs');
const { asSent, withPolicy } = require('./src/tools/build/page-policy.cjs');
const { PrecacheList } = require('./src/tools/build/precache-list.cjs');
const { ReadOnce } = require('./src/tools/build/read-once.cjs');
const { WrittenPages } = require('./src/tools/build/written-pages.cjs');

const developmentSite = 'https://localhost:3000';

const inProject = (...names) => path.resolve(__dirname, ...names);
const dist = inProject('dist');
const paneFolder = inProject('src/task-pane');

/** Every file of a folder with one of these endings, as [path under the folder, full path]. */
function filesIn(folder, ...endings) {
  return readdirSync(folder, { recursive: true })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => endings.some((ending) => name.endsWith(ending)))
    .sort()
    .map((name) => [name, path.join(folder, name)]);
}

const copies = (files, prefix = '') => files.map(([name, file]) => [prefix + name, readFileSync(file)]);
const pageAt = (file, policy) => withPolicy(readFileSync(file, 'utf8'), policy);

/** The manifest with the site's address, and with the version of package.json in the four parts that Excel wants. */
function manifestFor(site) {
  const { version } = JSON.parse(readFileSync(inProject('package.json'), 'utf8'));
  return readFileSync(inProject('manifest.xml'), 'utf8')
    .replaceAll(developmentSite, site)
    .replace(/<Version>[^<]*</, `<Version>${version}.0<`);
}

/** Types are checked by tsc on its own, so that the build only leaves them out. */
const typescript = { test: /\.ts$/, loader: 'esbuild-loader', options: { target: 'es2020' } };

/**
 * webpack's usual minimizer takes a minute and 3 GB for the embedded spreadsheet, esbuild seconds. The functions' script
 * is smaller by the slow way: functions stand whole in it, like beside like, which compresses better.
 */
const functionsFile = /^functions\.js$/;
const minimizer = [
  new MinimizerPlugin({
    include: functionsFile,
    // In a process beside the bundler.
    parallel: 1,
    extractComments: false,
    // Each of these makes the script smaller as it travels.
    minimizerOptions: {
      compress: {
        passes: 2,
        hoist_funs: true,
        inline: 1,
        lhs_constants: false,
        pure_getters: true,
        reduce_funcs: false,
        global_defs: {
          '@Number.POSITIVE_INFINITY': 'Infinity',
          '@Number.NEGATIVE_INFINITY': '-Infinity',
          '@Number.NaN': 'NaN',
        },
      },
    },
  }),
  new EsbuildPlugin({ exclude: functionsFile, target: 'es2020', css: true, legalComments: 'none' }),
];

/** What is the same in each part. */
function part(mode, { name, folder = '', ...more }) {
  return {
    name,
    mode,
    target: ['web', 'es2020'],
    context: __dirname,
    output: { path: path.join(dist, folder), filename: '[name].js', chunkFilename: '[name].[contenthash:8].js' },
    resolve: { extensions: ['.ts', '.js'] },
    // Each page's script is one file, whole, but for what it asks for by import().
    optimization: { splitChunks: false, runtimeChunk: false, minimizer },
    devtool: mode === 'production' ? false : 'source-map',
    performance: { hints: false },
    infrastructureLogging: { level: 'error' },
    stats: { preset: 'errors-warnings' },
    ...more,
  };
}

/** Takes away what an earlier build has left. */
class CleanFirst {
  apply(compiler) {
    const clean = () => rmSync(dist, { recursive: true, force: true });
    compiler.hooks.beforeRun.tap('CleanFirst', clean);
    let isFirst = true;
    compiler.hooks.watchRun.tap('CleanFirst', () => {
      if (isFirst) clean();
      isFirst = false;
    });
  }
}

/** What the functions' script is made of: the catalogue without what only people read, and everything else as it is. */
const functionsLayer = 'functions';
const functionsRules = [
  {
    issuerLayer: functionsLayer,
    ...typescript,
    test: /[\\/]cut-plan\.ts$/,
    options: { target: 'es2022' },
    // The search is a script of its own, which not every workbook needs.
    resolve: { alias: { './lay-pieces$': inProject('src/formulas/cut/lay-pieces-later.ts') } },
  },
  {
    issuerLayer: functionsLayer,
    test: /[\\/]src[\\/]catalogue[\\/].*\.ts$/,
    loader: 'ts-loader',
    options: {
      transpileOnly: true,
      instance: functionsLayer,
      getCustomTransformers: () => ({ before: [dropDescriptions] }),
    },
  },
  { ...typescript, issuerLayer: functionsLayer, options: { target: 'es2022' } },
];

function addIn(mode, site) {
  return part(mode, {
    name: 'add-in',
    entry: {
      functions: { import: './src/functions/associate.ts', layer: functionsLayer },
      'cut-plans': './src/functions/cut-plans.ts',
      'task-pane': './src/task-pane/main.ts',
      drawing: './src/task-pane/drawing-page.ts',
      'cut-search': './src/task-pane/drawings/cut-search-worker.ts',
      offline: './src/offline/register.ts',
      'daily/daily': './src/daily/main.ts',
      'reference/find': './src/manual/find-in-list.ts',
    },
    experiments: { layers: true },
    module: { rules: [{ oneOf: [...functionsRules, typescript] }] },
    plugins: [
      new CleanFirst(),
      new CollectLicenses(),
      lighterXlsx(),
      new EmittedFiles(() => [
        ...copies(filesIn(paneFolder, '.css').filter(([name]) => !name.includes('/'))),
        ...copies(filesIn(path.join(paneFolder, 'icons'), '.png'), 'icons/'),
        ['manifest.xml', manifestFor(site)],
        ['task-pane.html', pageAt(path.join(paneFolder, 'task-pane.html'), 'excel')],
        ['drawing.html', pageAt(path.join(paneFolder, 'drawing.html'), 'own')],
      ]),
    ],
  });
}

function workbench(mode) {
  return part(mode, {
    name: 'workbench',
    folder: 'workbench',
    entry: {
      'first-look': './src/workbench/first-look/main.ts',
      workbench: './src/workbench/main.ts',
      drawing: './src/task-pane/drawing-page.ts',
      'cut-search': './src/task-pane/drawings/cut-search-worker.ts',
      // A worker has no page into which it could put a script.
      'read-file': { import: './src/workbench/read-file-worker.ts', chunkLoading: 'import-scripts' },
    },
    module: {
      rules: [
        typescript,
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
        characterClasses,
        noOwnComputer,
        rangesOfFormulas,
      ],
    },
    plugins: [
      new MiniCssExtractPlugin(),
      new CollectLicenses(),
      ...lighterGrid(),
      lighterXlsx(),
      ...(mode === 'production' ? [new ReadOnce('workbench.js')] : []),
    ],
  });
}

/** Files of the add-in that the workbench has copies of, so that Excel never gets a file out of the workbench's cache. */
const shared = ['functions.js', 'cut-plans.js', 'drawing.html', 'task-pane.css', 'drawings.css'];

/** Cut plans hold only for the scripts that found them, so that their mark goes with them. */
const plansFile = 'workbench/cut-plans.json';
function markedPlans(plans, script) {
  const mark = createHash('sha256').update(script).digest('hex').slice(0, 16);
  return `{"script":"${mark}","plans":${plans}}`;
}

function wholeSite(mode, site) {
  const writtenPages = new WrittenPages(site);
  return part(mode, {
    name: 'site',
    dependencies: ['add-in', 'workbench'],
    entry: { 'service-worker': './src/offline/service-worker.ts' },
    module: { rules: [typescript] },
    plugins: [
      new CollectLicenses(),
      new EmittedFiles(async () => {
        const samples = filesIn(inProject('sample-workbooks'), '.xlsx');
        const written = await writtenPages.next();
        const script = ['functions.js', 'cut-plans.js']
          .map((name) => readFileSync(path.join(dist, name), 'utf8'))
          .join('');
        return [
          ...written.map(([name, content]) =>
            asSent([name, name === plansFile ? markedPlans(content, script) : content]),
          ),
          ...written.filter(([name]) => name === 'functions.json').map(([name, text]) => [`workbench/${name}`, text]),
          ...copies(
            shared.map((name) => [name, path.join(dist, name)]),
            'workbench/',
          ),
          ['daily/index.html', pageAt(inProject('src/daily/index.html'), 'own')],
          ['daily/daily.css', readFileSync(inProject('src/daily/daily.css'))],
          ['site.css', readFileSync(inProject('src/manual/site.css'))],
          ['site.webmanifest', readFileSync(inProject('src/offline/site.webmanifest'))],
          ...copies(samples, 'sample-workbooks/'),
          ['licenses.txt', licenseTexts(__dirname)],
        ];
      }),
      new PrecacheList({ script: 'service-worker.js', folder: dist }),
    ],
  });
}

module.exports = (env = {}, { mode = 'production' } = {}) => {
  const site = (env.site || process.env.SILTSTEAD_SITE || developmentSite).replace(/\/+$/, '');
  if (!site.startsWith('https://')) throw new Error(`the site is ${site}; Excel loads add-ins over https only`);
  return [addIn(mode, site), workbench(mode), wholeSite(mode, site)];
};
