import {
  ErrorType,
  FORMULA_REF_TO_ARRAY_CACHE,
  LexerNode,
  LexerTreeBuilder,
  OPERATOR_TOKEN_SET,
  ValueNodeFactory,
} from '@univerjs/engine-formula';
import { withInternals } from './engine-internals';

/**
 * Where the engine takes one cell formula for another, or refuses one that Excel takes:
 * - It keeps the tree of each formula text for all workbooks, names already replaced by what they stood for in the first
 *   of them, and rewrites that tree where it computes LET or LAMBDA, so that a second use gave a wrong number or an error.
 * - It keeps long texts by a hash of 32 bits, so that two formulas could share one tree.
 * - It keeps 5,000 parsed formulas, and in a workbook with more it parsed every one of them each time.
 * - It refuses an array constant behind an operator, as in `A1*{1;2}` and `-{1;2}`.
 */

/** Parts of the engine that are its own affair. */
interface LexerParts {
  readonly _currentLexerNode: LexerNode;
  readonly _segment: string;
  treeBuilder(
    this: LexerParts,
    ...given: Parameters<LexerTreeBuilder['treeBuilder']>
  ): ReturnType<LexerTreeBuilder['treeBuilder']>;
  /** Puts operators behind what they work on; false where it cannot. */
  _suffixExpressionHandler(node: LexerNode): boolean;
  /** Whether an array constant may begin here; its opening brace is at the end of the segment already. */
  _formulaSpellCheck(): boolean;
}

interface CacheParts {
  readonly _cache: { limit: number };
  _hash(key: string): string;
  set(key: string, value: unknown): void;
}

/** As many formulas as a workbook may have that is read from a file. */
const mostKept = 100_000;

let repaired = false;

export function repairLexer(): void {
  if (repaired) return;
  repaired = true;
  const lexer = withInternals<LexerParts>(LexerTreeBuilder);
  const { treeBuilder, _formulaSpellCheck: mayBegin } = lexer;
  lexer.treeBuilder = function (this: LexerParts, formula, transformSuffix = true, names) {
    // Asked for no transformation, the engine neither looks into its cache nor fills it.
    const tree = treeBuilder.call(this, formula, false, names);
    if (!transformSuffix || !(tree instanceof LexerNode)) return tree;
    return this._suffixExpressionHandler(tree) ? tree : ErrorType.VALUE;
  };
  lexer._formulaSpellCheck = function (this: LexerParts) {
    if (mayBegin.call(this)) return true;
    const before = this._currentLexerNode.getChildren().at(-1);
    if (typeof before !== 'string' || !/^-?\{$/.test(this._segment.trim())) return false;
    return before === '(' || OPERATOR_TOKEN_SET.has(before.trim());
  };
  const { checkAndCreateNodeType: asValue } = ValueNodeFactory.prototype;
  ValueNodeFactory.prototype.checkAndCreateNodeType = function (part) {
    if (typeof part === 'string' && /^-\{.*\}$/s.test(part.trim())) return this.create(part.trim());
    return asValue.call(this, part);
  };
  const cache = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as CacheParts;
  const { set } = cache;
  cache._hash = (key) => key;
  cache.set = function (this: CacheParts, key, value) {
    this._cache.limit = Math.max(this._cache.limit, mostKept);
    set.call(this, key, value);
  };
}
