import { catalogue } from '../catalogue/all';
import type { Argument } from '../catalogue/argument';
import type { CatalogueRow } from '../catalogue/define';
import { takesHeadings } from './adapter';

/** Excel's custom-functions metadata: the part of its schema that this add-in uses. */
export interface FunctionsMetadata {
  /** Errors inside ranges reach the functions, which pass them on row by row. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
  readonly enums: readonly EnumMetadata[];
}
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: 'any'; readonly dimensionality: 'matrix' };
}
export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: 'any' | 'string';
  readonly dimensionality: 'matrix' | 'scalar';
  readonly optional?: true;
  readonly customEnumId?: string;
}
export interface EnumMetadata {
  readonly id: string;
  readonly type: 'string';
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

/** The id under which a function is associated; it never changes after release. */
export function functionId(row: CatalogueRow): string {
  return row.name;
}

/** The address of a function's reference page on the site. */
export function helpPage(row: CatalogueRow): string {
  return `reference/${row.name.toLowerCase()}.html`;
}

/** Everything Excel needs to know before a function is called, written from the catalogue. */
export function functionsMetadata(site = ''): FunctionsMetadata {
  const enums = new Map<string, EnumMetadata>();
  const profiles = enumOf(enums, 'UNITS', ['metric', 'US']);
  const functions = catalogue.map((row): FunctionMetadata => {
    const parameters = Object.entries(row.arguments).map(([name, spec]) => parameter(row, name, spec, enums));
    if (row.units !== false) {
      parameters.unshift({
        name: 'units',
        description: '"metric", "US" or the cell SiltUnits',
        type: 'string',
        dimensionality: 'scalar',
        customEnumId: profiles,
      });
    }
    if (takesHeadings(row)) {
      parameters.push({
        name: 'headings',
        description: 'TRUE for a heading row with units on top',
        type: 'any',
        dimensionality: 'matrix',
        optional: true,
      });
    }
    return {
      id: functionId(row),
      name: row.name,
      description: row.summary,
      helpUrl: `${site}/${helpPage(row)}`,
      parameters,
      result: { type: 'any', dimensionality: 'matrix' },
    };
  });
  return { allowErrorForDataTypeAny: true, functions, enums: [...enums.values()] };
}

/** Whether an argument may be left out. */
export function isOptional(spec: Argument): boolean {
  return ('optional' in spec && spec.optional === true) || ('default' in spec && spec.default !== undefined);
}

function parameter(
  row: CatalogueRow,
  name: string,
  spec: Argument,
  enums: Map<string, EnumMetadata>,
): ParameterMetadata {
  const isChoice = 'choice' in spec;
  return {
    name,
    description: spec.meaning,
    type: isChoice ? 'string' : 'any',
    dimensionality: isChoice ? 'scalar' : 'matrix',
    ...(isOptional(spec) ? { optional: true as const } : {}),
    ...(isChoice
      ? { customEnumId: enumOf(enums, `${row.name}.${name}`.replaceAll('.', '_').toUpperCase(), spec.choice) }
      : {}),
  };
}

/** Adds a list of words once; the same words share one list. */
function enumOf(enums: Map<string, EnumMetadata>, id: string, words: readonly string[]): string {
  const key = words.join('|');
  const known = enums.get(key);
  if (known) return known.id;
  enums.set(key, {
    id,
    type: 'string',
    values: words.map((word) => ({ name: word, stringValue: word, tooltip: word })),
  });
  return id;
}
