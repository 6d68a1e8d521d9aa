import { catalogue } from '../catalogue/all';
import { functionsMetadata, helpPage } from '../functions/metadata';
import { changeLogPage } from './change-log';
import { evidencePage } from './evidence/evidence-page';
import { figuresPage } from './figures-page';
import { frontPage, privacyPage, supportPage } from './front-pages';
import { guidePages } from './guide/guide-pages';
import type { PublishedCheck } from './published-checks';
import { referenceIndex, referencePage } from './reference-page';

type SiteFile = readonly [path: string, content: string];

/** The written files that hold the address of the site, which Excel reads and no page does. */
export function siteAddressFiles(site: string): readonly SiteFile[] {
  return [['functions.json', JSON.stringify(functionsMetadata(site))]];
}

/** The pages of the site that are written from the catalogue and from texts of our own. */
export function sitePages(published: readonly PublishedCheck[]): readonly SiteFile[] {
  return [
    ['index.html', frontPage()],
    ['privacy.html', privacyPage()],
    ['support.html', supportPage()],
    ['changes.html', changeLogPage()],
    ...guidePages(),
    ['reference/index.html', referenceIndex(catalogue)],
    ['reference/figures.html', figuresPage()],
    ['reference/evidence.html', evidencePage()],
    ...catalogue.map((row) => [helpPage(row), referencePage(row, published)] as const),
  ];
}
