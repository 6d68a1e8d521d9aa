/**
 * What the .xlsx library brings along for other formats (csv, Markdown), for workbooks too large to hold at once, for
 * pictures of charts, and for checking what it has written, replaced by nothing: a third of its four megabytes of
 * source. Each stands only in methods that nothing here calls.
 */
const path = require('node:path');
const webpack = require('webpack');

const nothing = path.join(__dirname, 'lighter-xlsx', 'nothing.cjs');
const isInLibrary = /\/node_modules\/@cj-tech-master\/excelts\/dist\/browser(\/|$)/;
const leftOut =
  /(\/|^\.)(csv\/(format|parse|stream|utils)|markdown\/(format|parse)|stream\/work(book|sheet)-(reader|writer)(\.browser)?\.js|chart-(ex-)?renderer\.js|ooxml-validator\/)/;

/** The plugin that replaces the modules. */
function lighterXlsx() {
  return new webpack.NormalModuleReplacementPlugin(leftOut, (asked) => {
    if (isInLibrary.test(asked.context.replaceAll('\\', '/'))) asked.request = nothing;
  });
}

module.exports = { lighterXlsx };
