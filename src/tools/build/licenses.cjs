/** Gathers the license of every package of which a page's script holds a part, as their licenses ask. */
const { readdirSync, readFileSync } = require('node:fs');
const path = require('node:path');

const folders = new Set();

/** Notes the packages of one part of the build. */
class CollectLicenses {
  apply(compiler) {
    compiler.hooks.compilation.tap('CollectLicenses', (compilation) => {
      compilation.hooks.finishModules.tap('CollectLicenses', (modules) => {
        for (const { resource = '' } of modules) {
          const [folder] = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(resource.replaceAll('\\', '/')) ?? [];
          if (folder) folders.add(folder);
        }
      });
    });
  }
}

/** The text of a package's license; a package of a family that ships none of its own has the family's. */
function licenseOf(folder, name) {
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file !== undefined) return readFileSync(path.join(folder, file), 'utf8').trim();
  const { license, author } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  if (license === undefined) throw new Error(`${name} is bundled but names no license`);
  const holder = typeof author === 'object' ? author.name : author;
  return `${license} license, as its package states. Copyright ${holder ?? `the authors of ${name}`}`;
}

/** Our own license and all those noted, in the order of their names. */
function licenseTexts(project) {
  const texts = [project, ...folders].map((folder) => {
    const { name } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
    return `${name}\n\n${licenseOf(folder, name)}\n`;
  });
  return texts.sort().join(`\n${'-'.repeat(72)}\n\n`);
}

module.exports = { CollectLicenses, licenseTexts };
