import type { FunctionsMetadata } from '../functions/metadata';

/** The texts about a function that people read; the function script itself does not contain them. */
export interface FunctionTexts {
  readonly summary: string;
  /** What each argument means, by its name. */
  readonly meanings: ReadonlyMap<string, string>;
}

export type AllTexts = ReadonlyMap<string, FunctionTexts>;

/** The texts of every function, by its name, out of the metadata that hosts show while typing. */
export function textsOf(metadata: Pick<FunctionsMetadata, 'functions'>): AllTexts {
  return new Map(
    metadata.functions.map(({ name, description, parameters }) => [
      name,
      { summary: description, meanings: new Map(parameters.map((one) => [one.name, one.description])) },
    ]),
  );
}

export async function fetchTexts(address: string): Promise<AllTexts> {
  const answer = await fetch(address);
  return textsOf((await answer.json()) as FunctionsMetadata);
}
