/** A step of the build: files of the site that are copied or written rather than compiled. */
const path = require('node:path');
const webpack = require('webpack');

/** Emits what a function gives as [name, content] once it is asked, which may be a promise. */
class EmittedFiles {
  constructor(files) {
    this.files = files;
  }

  apply(compiler) {
    const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
    compiler.hooks.thisCompilation.tap('EmittedFiles', (compilation) => {
      compilation.hooks.processAssets.tapPromise({ name: 'EmittedFiles', stage }, async () => {
        // While watching, whatever changes in the sources may change these files.
        compilation.contextDependencies.add(path.join(compiler.context, 'src'));
        for (const [name, content] of await this.files()) {
          // Said to be minimized already, so that they come out as they are written.
          compilation.emitAsset(name, new webpack.sources.RawSource(content), { minimized: true });
        }
      });
    });
  }
}

module.exports = { EmittedFiles };
