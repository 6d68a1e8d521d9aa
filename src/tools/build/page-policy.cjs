/** What the pages of the site may load; each page is held to it by its browser. */

/** Excel's own library, and the frame of its own that it opens on sites that it does not know. */
const officeLibrary = 'https://appsforoffice.microsoft.com';

const policyOf = (directives) =>
  Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources}`)
    .join('; ');

/** Pages carry no script and no style inside themselves, and everything that they load is of the site. */
const own = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'connect-src': "'self'",
  'manifest-src': "'self'",
  'worker-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

const policies = {
  own: policyOf(own),
  /** The pane in Excel. */
  excel: policyOf({
    ...own,
    'script-src': `'self' ${officeLibrary}`,
    'connect-src': `'self' ${officeLibrary}`,
    'frame-src': officeLibrary,
  }),
  /** The grid's style sheet brings its own typefaces along. */
  workbench: policyOf({ ...own, 'font-src': "'self' data:" }),
};

/** A page with its policy in its head. */
function withPolicy(page, name) {
  return page.replace(
    '<meta charset="utf-8">',
    (charset) => `${charset}\n  <meta http-equiv="Content-Security-Policy" content="${policies[name]}">`,
  );
}

/** A written file of the site, as [path, content], with its policy if it is a page. */
function asSent([path, content]) {
  if (!path.endsWith('.html')) return [path, content];
  return [path, withPolicy(content, path.startsWith('workbench/') ? 'workbench' : 'own')];
}

module.exports = { asSent, withPolicy, officeLibrary };
