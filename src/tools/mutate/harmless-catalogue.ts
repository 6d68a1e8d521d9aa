import { absent, bound, first, type Harmless, kept, never, onlyRefusals, quick } from './harmless-reasons';

const onlyMark = 'The mark is there only where it is true.';
const noCode = 'What is thrown is an error, and without a code its code is no text.';
const restOfText = 'The rest of the pattern takes the same words.';

/** Changes to the reading of the catalogue’s arguments that no test can or should notice. */
export const catalogueHarmless: Harmless = {
  'src/catalogue/laid-rows.ts': { 'faulty[0] !== undefined -> true': never },
  'src/catalogue/pipe-arguments.ts': {
    "typeof value === 'string' -> true": 'A number written as text has no mm.',
    '/mm\\s*$/i -> /mm\\s*/i': 'A size with something behind its mm is not read in either series.',
    "typeof value === 'number' -> false": quick,
    'String(value).trim() -> String(value)': 'A number may have spaces round it.',
  },
  'src/catalogue/readers.ts': { "typeof value === 'string' -> true": 'A number written as text is no dash.' },
  'src/catalogue/reading/blank.ts': { "value === '' -> false": quick },
  'src/catalogue/reading/bounds.ts': {
    'si <= high -> si < high': 'A figure that is just its bound is taken by the next check.',
  },
  'src/catalogue/reading/input-table.ts': {
    'inputs[key]?.name -> inputs[key].name': never,
    'keys === undefined -> true': kept,
    'first >= 0 -> true': 'Without a row there are no headings either way.',
    'cells[first]?.map -> cells[first].map': never,
  },
  'src/catalogue/reading/named-column.ts': {
    'made === undefined -> true': kept,
    "'required' in spec && spec.required -> 'required' in spec || spec.required": onlyMark,
    "!('species' in spec) || spec.species === undefined -> !('species' in spec) && spec.species === undefined":
      onlyMark,
    'spec.species === undefined -> false': onlyMark,
    "'as' in spec && spec.as !== undefined -> 'as' in spec || spec.as !== undefined": onlyMark,
    'spec.as !== undefined -> true': onlyMark,
  },
  'src/catalogue/reading/read-figure.ts': {
    'bound !== undefined -> true': absent,
    "Math.abs(si - bound) <= (spec.kind === 'temperature' ? 1e-9 : 1e-12 * bound) -> Math.abs(si - bound) < (spec.kind === 'temperature' ? 1e-9 : 1e-12 * bound)":
      bound,
    'high !== undefined -> true': absent,
    'high > 100 -> high >= 100': 'The usual length is 100 m too.',
  },
  'src/catalogue/reading/read-fittings.ts': {
    'item .trim() -> item': 'The words are trimmed again at the end.',
    '/^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s+?(.*)$/ -> /^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s+?(.*)/': restOfText,
    '/^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s+?(.*)$/ -> /^(\\d+(?:\\.\\d+)?)\\S*[x×]?\\s+?(.*)$/': restOfText,
    '/^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s+?(.*)$/ -> /^(\\d+(?:\\.\\d+)?)\\s*[^x×]?\\s+?(.*)$/': restOfText,
    '/^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s+?(.*)$/ -> /^(\\d+(?:\\.\\d+)?)\\s*[x×]?\\s(.*)$/': restOfText,
    '[] -> ["Stryker was here"]': first,
  },
  'src/catalogue/reading/read-table.ts': {
    "'blank' in spec && spec.blank -> 'blank' in spec || spec.blank": onlyMark,
    'lines[0]?.[0] -> lines[0][0]': never,
    '[] -> ["Stryker was here"]': 'Where all rows are blank there is nothing to read with headings or without.',
    "readers[j]?.(figureOf(cells[j] ?? ''), profile) -> readers[j](figureOf(cells[j] ?? ''), profile)": never,
    "error instanceof Error && 'code' in error && typeof error.code === 'string' -> error instanceof Error && 'code' in error || typeof error.code === 'string'":
      noCode,
    "error instanceof Error && 'code' in error -> true": noCode,
    "error instanceof Error && 'code' in error -> error instanceof Error || 'code' in error": noCode,
    "typeof error.code === 'string' -> true": noCode,
    "spec === undefined || value === undefined || typeof value === 'object' -> false": quick,
    "spec === undefined || value === undefined || typeof value === 'object' -> (spec === undefined || value === undefined) && typeof value === 'object'":
      quick,
    'spec === undefined || value === undefined -> false': quick,
    'spec === undefined || value === undefined -> spec === undefined && value === undefined': quick,
    'spec === undefined -> false': quick,
    'value === undefined -> false': quick,
    "typeof value === 'object' -> false": never,
    "'reader' in spec -> true": never,
  },
  'src/catalogue/reading/typed-range.ts': {
    "'whole' in spec && spec.whole -> 'whole' in spec || spec.whole": onlyMark,
  },
  'src/catalogue/reading/typed-zero.ts': {
    "typed === 'none' -> true": 'A 0 with its unit is the same as the 0 read in its place.',
  },
  'src/catalogue/plan/plan-compare.ts': {
    'columns[0]?.[0] -> columns[0][0]': never,
    "typeof title === 'number' -> true": 'Other titles are texts already.',
    'isFault(error) -> true': onlyRefusals,
    "error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code… -> true": noCode,
    "error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code… -> error instanceof Error && 'code' in error && typeof error.code === 'string' || error.code…":
      noCode,
    "error instanceof Error && 'code' in error && typeof error.code === 'string' -> true": noCode,
    "error instanceof Error && 'code' in error && typeof error.code === 'string' -> error instanceof Error && 'code' in error || typeof error.code === 'string'":
      noCode,
    "error instanceof Error && 'code' in error -> true": noCode,
    "error instanceof Error && 'code' in error -> error instanceof Error || 'code' in error": noCode,
    "typeof error.code === 'string' -> true": noCode,
  },
  'src/catalogue/plan/plan-sure.ts': {
    'known !== undefined -> false': kept,
    '[...kept.keys()].slice(0, Math.max(0, kept.size - mostKept + 1)) -> [...kept.keys()]': kept,
    '[...kept.keys()] -> []': kept,
    'Math.max(0, kept.size - mostKept + 1) -> Math.min(0, kept.size - mostKept + 1)': kept,
    'kept.size - mostKept + 1 -> kept.size - mostKept - 1': kept,
    'kept.size - mostKept -> kept.size + mostKept': kept,
    '[] -> ["Stryker was here"]': 'It puts in an input that no formula reads.',
    "{ unit: '', low: '', plan: '', high: '', atLow: '', atHigh: '' } -> {}":
      'A cell without a value is blank as well.',
  },
  'src/catalogue/plan/scenario-readers.ts': {
    "typeof value === 'string' -> true": 'A number written as text has a digit.',
    'words.length > 6 -> words.length >= 6': 'No list has six words.',
  },
  'src/catalogue/plan/scenario.ts': { 'highestPh !== undefined -> true': never },
};
