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
 * Where the engine confuses two cell formulas, or refuses one that Excel accepts:
 * - It keeps the tree of each formula text for all workbooks, with names already replaced by their meaning in the
 * first one, and rewrites that tree where it computes LET or LAMBDA, so that a second use gave a wrong number or an
 * error.
 * - It keeps long texts by a hash of 32 bits, so that two formulas could share one tree.
 * - It keeps 5,000 parsed formulas, and in a workbook with more it parsed every formula each time.
 * - It notes the names in a formula only if they mean more than cells, so that no formula was computed again when its name
 * came to mean other cells, as names do when rows come or go.
 * - It refuses an array constant after an operator, as in `A1*{1;2}` and `-{1;2}`.
 */

/** Private parts of the engine. */
interface LexerParts {
  readonly _currentLexerNode: LexerNode;
  readonly _segment: string;
  treeBuilder(
    this: LexerParts,
    ...given: Parameters<LexerTreeBuilder['treeBuilder']>
  ): ReturnType<LexerTreeBuilder['treeBuilder']>;
  /** Replaces names by what they mean. */
  _handleDefinedName(parts: unknown, names: NamesParts): FoundNames;
  /** Puts operators after their operands; false if it cannot. */
  _suffixExpressionHandler(node: LexerNode): boolean;
  /** Whether an array constant may begin here; its opening brace is at the end of the segment already. */
  _formulaSpellCheck(): boolean;
}

/** The names of the workbook. */
interface NamesParts {
  readonly getValueByName: (unitId: string, name: string) => { readonly name: string } | null | undefined;
}

interface FoundNames {
  readonly definedNames: readonly string[];
}

interface CacheParts {
  readonly _cache: { limit: number };
  _hash(key: string): string;
  set(key: string, value: unknown): void;
}

/** The most formulas that a workbook from a file may have. */
const mostKept = 100_000;

let repaired = false;

export function repairLexer(): void {
  if (repaired) return;
  repaired = true;
  const lexer = withInternals<LexerParts>(LexerTreeBuilder);
  const { treeBuilder, _formulaSpellCheck: mayBegin, _handleDefinedName: replaceNames } = lexer;
  lexer.treeBuilder = function (this: LexerParts, formula, transformSuffix = true, names) {
    // Without a transformation, the engine neither reads nor fills its cache.
    const tree = treeBuilder.call(this, formula, false, names);
    if (!transformSuffix || !(tree instanceof LexerNode)) return tree;
    return this._suffixExpressionHandler(tree) ? tree : ErrorType.VALUE;
  };
  lexer._handleDefinedName = function (this: LexerParts, parts, names) {
    const used = new Set<string>();
    const getValueByName: NamesParts['getValueByName'] = (...asked) => {
      const meant = names.getValueByName(...asked);
      if (meant) used.add(meant.name);
      return meant;
    };
    const found = replaceNames.call(this, parts, { ...names, getValueByName });
    return { ...found, definedNames: [...new Set([...found.definedNames, ...used])] };
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
