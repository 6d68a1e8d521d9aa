/**
 * A step of the build: drops from each catalogue row what only people read, before the row goes into the script that
 * Excel loads. Names, bounds, kinds and the computation stay; functions.json and the reference pages have the rest.
 */
const ts = require('typescript');

const forReaders = new Set(['summary', 'formula', 'notes', 'sources', 'example', 'unpublished']);

/** A TypeScript transformer that empties those properties of the object given to `define`. */
function dropDescriptions(context) {
  const { factory } = context;
  const visit = (node) => {
    const visited = ts.visitEachChild(node, visit, context);
    if (!ts.isCallExpression(visited) || visited.expression.text !== 'define') return visited;
    const [row] = visited.arguments;
    if (row === undefined || !ts.isObjectLiteralExpression(row)) return visited;
    const kept = row.properties.filter(({ name }) => !name || !ts.isIdentifier(name) || !forReaders.has(name.text));
    return factory.updateCallExpression(visited, visited.expression, visited.typeArguments, [
      factory.updateObjectLiteralExpression(row, kept),
    ]);
  };
  return (file) => ts.visitNode(file, visit);
}

module.exports = { dropDescriptions };
