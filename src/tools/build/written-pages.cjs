/** The pages that are written rather than compiled, from a thread beside the bundler, which has a processor to itself. */
const path = require('node:path');
const { Worker } = require('node:worker_threads');

const runner = path.join(__dirname, '..', '..', 'command-line', 'run.cjs');

/** Begins to write them; gives [path, content] of each. */
function writePages(site) {
  return new Promise((resolve, reject) => {
    const worker = new Worker(runner, { argv: ['../tools/build/write-pages', site] });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`writing the pages ended with ${code}, and without pages`)));
  });
}

/** The pages for each run of the build: those of the first are begun at once, later ones when they are asked for. */
class WrittenPages {
  constructor(site) {
    this.site = site;
    this.first = writePages(site);
    // Whoever asks for them gets the error; until then it is not one that nobody handles.
    this.first.catch(() => {});
  }

  next() {
    const pages = this.first ?? writePages(this.site);
    this.first = undefined;
    return pages;
  }
}

module.exports = { WrittenPages };
