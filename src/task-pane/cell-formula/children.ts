import type { Identifier } from '@borgar/fx';
import type { Part } from './read-formula';
import type { Scope } from './scope';

/** The parts directly inside a part, each with the names that are defined there. */
export function* childrenOf(part: Part, scope: Scope): Iterable<readonly [Part, Scope]> {
  if (part.type === 'UnaryExpression' || part.type === 'BinaryExpression') {
    for (const child of part.arguments) yield [child as Part, scope];
  } else if (part.type === 'CallExpression') {
    // The reader's types do not know that a call may be of a LAMBDA: `LAMBDA(x,x+1)(2)`.
    const { callee } = part as { readonly callee: Part | Identifier };
    if (callee.type !== 'Identifier') yield [callee, scope];
    for (const child of part.arguments) if (child) yield [child as Part, scope];
  } else if (part.type === 'LambdaExpression') {
    const names = part.params.map(({ name }) => name);
    const inner = names.reduce((sofar, name) => bind(sofar, name, null), scope);
    if (part.body) yield [part.body as Part, inner];
  } else if (part.type === 'LetExpression') {
    let inner = scope;
    for (const { id, init } of part.declarations) {
      if (init) yield [init as Part, inner];
      inner = bind(inner, id.name, init as Part | null);
    }
    if (part.body) yield [part.body as Part, inner];
  }
}

function bind(scope: Scope, name: string, part: Part | null): Scope {
  const bound = new Map(scope.bound);
  bound.set(name.toLowerCase(), part ? { part, scope } : undefined);
  return { ...scope, bound };
}
