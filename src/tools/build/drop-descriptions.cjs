/**
 * A step of the build: drops from the catalogue what only people read, before it goes into the script that Excel loads.
 * Names, bounds, kinds and the computation stay; functions.json and the reference pages have the rest.
 */
const ts = require('typescript');

const forReaders = new Set(['summary', 'formula', 'notes', 'sources', 'example', 'unpublished']);

/** Only what the inputs of a scenario mean is an answer too, of PLAN.INPUTS; these files have them. Nothing gives what its results mean. */
const isForReaders = /\/src\/catalogue\/(?!plan\/scenario-(?!results))/;

const isNamed = (property, names) =>
  property.name !== undefined && ts.isIdentifier(property.name) && names.has(property.name.text);

/** A TypeScript transformer that takes those properties out of the objects that have them. */
function dropDescriptions(context) {
  const { factory } = context;
  const without = (object, isDropped) =>
    factory.updateObjectLiteralExpression(
      object,
      object.properties.filter((property) => !isDropped(property)),
    );
  const ofArguments = new Set(['meaning', 'defaultReads', 'per']);
  const isText = (node) => ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);
  const isMeaning = (property) =>
    isNamed(property, ofArguments) && ts.isPropertyAssignment(property) && isText(property.initializer);
  return (file) => {
    const dropsMeaning = isForReaders.test(file.fileName.replaceAll('\\', '/'));
    const visit = (node) => {
      const visited = ts.visitEachChild(node, visit, context);
      if (ts.isObjectLiteralExpression(visited)) return dropsMeaning ? without(visited, isMeaning) : visited;
      if (!ts.isCallExpression(visited) || visited.expression.text !== 'define') return visited;
      const [row] = visited.arguments;
      if (row === undefined || !ts.isObjectLiteralExpression(row)) return visited;
      return factory.updateCallExpression(visited, visited.expression, visited.typeArguments, [
        without(row, (property) => isNamed(property, forReaders)),
      ]);
    };
    return ts.visitNode(file, visit);
  };
}

module.exports = { dropDescriptions };
