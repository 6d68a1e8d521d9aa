import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  CELL_INVERTED_INDEX_CACHE,
  type IFunctionService,
  NumberValueObject,
  StringValueObject,
  ValueObjectFactory,
} from '@univerjs/engine-formula';
import { repairBlankResults } from './blank-repairs';
import { repairDates } from './date-repairs';
import { repairDependencies } from './dependency-repairs';
import { repairErrors } from './error-repairs';
import { repairLexer } from './lexer-repairs';
import { repairReuse } from './reuse-repairs';
import { repairSpills } from './spill-repairs';

/**
 * Where the engine reads a cell formula in another way than Excel and would give a wrong number without any error:
 * quoted text such as "1/2" or "3-4" becomes a date, `22.50` becomes text, array constants are cut at commas inside
 * quotes,
 * and a cell that holds 0 equals "", as one that holds 1 equals "1", once it has been looked up in the engine's index
 * of values.
 */

/** Functions that only pass values on; text in their arguments must stay text. */
const passingOn = ['IF', 'IFERROR', 'IFNA', 'IFS', 'SWITCH', 'CHOOSE', 'LET', 'HSTACK', 'VSTACK', 'INDEX'];

/**
 * One constant and the character that ends it. The engine has already made `""` inside quotes a single `"`, so a
 * quote ends a text only before a separator.
 */
const constantPattern = /\s*(?:"(.*?)"|([^,;]*?))\s*([,;]|$)/gsy;

/** Reads `{1,"a,b";2,"c"}`. */
function readArrayConstant(text: string): BaseValueObject[][] {
  const inside = text.trim().slice(1, -1);
  let row: BaseValueObject[] = [];
  const rows = [row];
  for (const [, quoted, bare = '', end] of inside.matchAll(constantPattern)) {
    row.push(quoted === undefined ? ValueObjectFactory.create(bare, true) : StringValueObject.create(quoted));
    if (end === '') break;
    if (end === ';') {
      row = [];
      rows.push(row);
    }
  }
  return rows;
}

/**
 * A number written in a formula in a form other than its shortest, such as `22.50` or `1e300`, which the engine takes
 * for text.
 */
const numberLiteral = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

const createArray = ArrayValueObject.create;
const createValue = ValueObjectFactory.create;
let repaired = false;

/** Nothing is looked up in the index of values; filling it also cost more time the more values a column held. */
function repairComparing(): void {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  CELL_INVERTED_INDEX_CACHE.set = () => {};
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => {};
}

function repairConstants(): void {
  if (repaired) return;
  repaired = true;
  repairComparing();
  repairLexer();
  repairSpills();
  repairBlankResults();
  repairDependencies();
  repairErrors();
  repairReuse();
  ArrayValueObject.create = (raw) => {
    if (typeof raw !== 'string') return createArray(raw);
    const rows = readArrayConstant(raw);
    return createArray({
      calculateValueList: rows,
      rowCount: rows.length,
      columnCount: Math.max(...rows.map((row) => row.length)),
      unitId: '',
      sheetId: '',
      row: -1,
      column: -1,
    });
  };
  ValueObjectFactory.create = (raw, ignoresPatterns) => {
    if (typeof raw !== 'string') return createValue(raw, ignoresPatterns);
    if (raw.startsWith('-{')) return NumberValueObject.create(0).minus(ArrayValueObject.create(raw.slice(1)));
    return ignoresPatterns === true && numberLiteral.test(raw.trim())
      ? NumberValueObject.create(Number(raw))
      : createValue(raw, ignoresPatterns);
  };
}

/** Would ask any address that stands in a file, and leaves empty text where it cannot show a picture. */
const asksNetwork = ['IMAGE'];

export function repairEngine(functions: IFunctionService): void {
  repairConstants();
  functions.unregisterExecutors(...asksNetwork);
  functions.unregisterDescriptions(...asksNetwork);
  repairDates(functions);
  for (const name of passingOn) {
    const executor = functions.getExecutor(name);
    if (executor instanceof BaseFunction) executor.isArgumentsIgnoreNumberPattern = () => true;
  }
}
