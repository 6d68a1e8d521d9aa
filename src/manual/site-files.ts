import { catalogue } from '../catalogue/all';
import { functionsMetadata, helpPage } from '../functions/metadata';
import { figuresPage } from './figures-page';
import { referenceIndex, referencePage } from './reference-page';

/** The files of the built site that are written from the catalogue: path and content. */
export function siteFiles(site: string): readonly (readonly [path: string, content: string])[] {
  return [
    ['functions.json', JSON.stringify(functionsMetadata(site))],
    ['reference/index.html', referenceIndex(catalogue)],
    ['reference/figures.html', figuresPage()],
    ...catalogue.map((row) => [helpPage(row), referencePage(row)] as const),
  ];
}
