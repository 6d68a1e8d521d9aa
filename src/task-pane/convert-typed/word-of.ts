import type { Book } from './book';
import { type Part, targetOf } from './read-formula';
import type { Scope } from './use';

/** The word that an argument such as a kind holds, typed there or in the cell it points at. */
export function wordOf(part: Part, scope: Scope, book: Book): string | undefined {
  if (part.type === 'Literal') return String(part.value);
  if (part.type !== 'ReferenceIdentifier') return undefined;
  const target = targetOf(part);
  if (target === undefined || 'name' in target) return undefined;
  const [cell] = book.within(target.sheet ?? scope.home.sheet, target.range);
  return typeof cell?.value === 'string' ? cell.value : undefined;
}
