/** A step of the build: tells the service worker which files to keep, each with a mark of its content. */
const { createHash } = require('node:crypto');
const { readdirSync, readFileSync } = require('node:fs');
const path = require('node:path');
const webpack = require('webpack');

/**
 * What Excel loads comes from the network alone, so that it never gets a mixture of two versions. Samples are
 * kept as files; of their built data, only what the workbench starts with. Reference pages are kept once looked at.
 */
const kept =
  /^(index\.html|(privacy|support|changes)\.html|site\.css|offline\.js|site\.webmanifest|licenses\.txt|icons\/.+|(workbench|guide|daily)\/.+|sample-workbooks\/(list\.json|US\/cone-cut-plan\.json|(US|metric)\/.+\.xlsx))$/;

const marked = (url, content) => ({ url, revision: createHash('sha256').update(content).digest('hex').slice(0, 16) });

class PrecacheList {
  constructor({ script, folder }) {
    this.script = script;
    this.folder = folder;
  }

  apply(compiler) {
    const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
    compiler.hooks.thisCompilation.tap('PrecacheList', (compilation) => {
      compilation.hooks.processAssets.tap({ name: 'PrecacheList', stage }, (assets) => {
        const list = new Map();
        for (const [name, source] of Object.entries(assets)) list.set(name, source.buffer());
        // What the earlier parts have written.
        for (const entry of readdirSync(this.folder, { recursive: true, withFileTypes: true })) {
          const file = path.join(entry.parentPath, entry.name);
          const name = path.relative(this.folder, file).replaceAll('\\', '/');
          if (entry.isFile() && !list.has(name)) list.set(name, readFileSync(file));
        }
        const entries = [...list.keys()]
          .filter((name) => kept.test(name) && !name.endsWith('.map'))
          .sort()
          .map((name) => marked(name, list.get(name)));
        compilation.updateAsset(this.script, (source) => {
          const text = source.source().toString();
          if (!text.includes('self.__filesToKeep'))
            throw new Error(`${this.script} has no place for its list of files`);
          return new webpack.sources.RawSource(text.replace('self.__filesToKeep', () => JSON.stringify(entries)));
        });
      });
    });
  }
}

module.exports = { PrecacheList };
