import { nothing, other, type Role, worked } from './role';

/** Functions that return one or more of their arguments, so that a number keeps its kind. */
const carriers: Readonly<Record<string, (at: number, count: number) => 'carried' | 'asked' | 'other'>> = {
  IF: (at) => (at === 0 ? 'asked' : 'carried'),
  IFS: (at) => (at % 2 === 0 ? 'asked' : 'carried'),
  IFERROR: () => 'carried',
  IFNA: () => 'carried',
  SWITCH: (at, count) => (at > 0 && (at % 2 === 0 || (at === count - 1 && count % 2 === 0)) ? 'carried' : 'asked'),
  CHOOSE: (at) => (at === 0 ? 'other' : 'carried'),
  FILTER: (at) => (at === 1 ? 'asked' : 'carried'),
  SORT: (at) => (at === 0 ? 'carried' : 'other'),
  SORTBY: (at) => (at === 0 ? 'carried' : 'asked'),
  UNIQUE: (at) => (at === 0 ? 'carried' : 'other'),
  VSTACK: () => 'carried',
  N: () => 'carried',
  VALUE: () => 'carried',
  SINGLE: () => 'carried',
};

/** Functions that return their numbers but not in the same columns. */
const figureCarriers: Readonly<Record<string, (at: number, count: number) => 'carried' | 'other'>> = {
  LOOKUP: (at, count) => (at > 0 && at === count - 1 ? 'carried' : 'other'),
  INDEX: (at) => (at === 0 ? 'carried' : 'other'),
  XLOOKUP: (at) => (at === 2 || at === 3 ? 'carried' : 'other'),
  TAKE: (at) => (at === 0 ? 'carried' : 'other'),
  DROP: (at) => (at === 0 ? 'carried' : 'other'),
  CHOOSEROWS: (at) => (at === 0 ? 'carried' : 'other'),
  CHOOSECOLS: (at) => (at === 0 ? 'carried' : 'other'),
  TRANSPOSE: () => 'carried',
  TOCOL: (at) => (at === 0 ? 'carried' : 'other'),
  TOROW: (at) => (at === 0 ? 'carried' : 'other'),
  HSTACK: () => 'carried',
};

/** Sums of numbers of one kind, or a choice of one: the result has that kind if 0 is 0 in every unit. */
const sums = new Set(['SUM', 'AVERAGE', 'MIN', 'MAX', 'MEDIAN', 'ABS', 'LARGE', 'SMALL']);

/**
 * From one range these give a number of the same kind in any unit, even for temperatures, whose 0 differs between
 * units.
 */
const ofOneRange = new Set(['AVERAGE', 'MIN', 'MAX', 'MEDIAN']);

/** Arithmetic on the arguments, so that an argument may have another kind than the result. */
const arithmetic =
  /^(?:ROUND|ROUNDUP|ROUNDDOWN|MROUND|CEILING|FLOOR|INT|TRUNC|SQRT|POWER|PRODUCT|SUMPRODUCT|QUOTIENT|MOD|GEOMEAN|CONVERT)(?:\.|$)/;

const presence = new Set(
  'ISBLANK ISNUMBER ISTEXT ISNONTEXT ISERROR ISERR ISNA ISREF COUNT COUNTA COUNTBLANK ROWS COLUMNS ROW COLUMN LEN TYPE'.split(
    ' ',
  ),
);

/** Conditions, whose parts are examined one by one. */
const conditions = new Set(['AND', 'OR', 'NOT', 'XOR']);

/** The role of an argument of an ordinary worksheet function whose result has this role. */
export function roleInside(name: string, at: number, count: number, role: Role, keepsColumns = false): Role {
  const plain = name.toUpperCase().replace(/^_XLFN\.(?:_XLWS\.)?/, '');
  if (presence.has(plain)) return nothing;
  if (conditions.has(plain)) return nothing;
  const carrier = carriers[plain] ?? (keepsColumns ? figureCarriers[plain] : undefined);
  if (carrier !== undefined) {
    const way = carrier(at, count);
    return way === 'carried' ? role : way === 'asked' ? nothing : other;
  }
  if (role.as !== 'figure') return other;
  const figures = figureCarriers[plain];
  if (figures !== undefined) return figures(at, count) === 'carried' ? role : other;
  if (ofOneRange.has(plain) && count === 1) return role;
  if (sums.has(plain)) return isShifted(role) ? worked(role, `${plain}()`) : role;
  return arithmetic.test(plain) ? worked(role, `${plain}()`) : other;
}

/** Temperatures are the one kind whose 0 differs between units, so that sums of them do not convert. */
export function isShifted(role: Role): boolean {
  return role.as === 'figure' && role.kind === 'temperature';
}
