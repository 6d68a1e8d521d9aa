import { markupSafe } from './markup-safe';
import { page } from './page';

interface Version {
  readonly version: string;
  readonly changes: readonly string[];
}

/** What changed for the people who use it, the newest version first. */
export const versions: readonly Version[] = [
  {
    version: '0.1.0',
    changes: [
      'The first version: worksheet functions from the cone pattern to the harvest, ready-made workbooks in US and metric units, drawings as PDF, DXF and SVG.',
      'The workbench is a page of the site; after the first visit it works without a network, as do the reference pages that you have opened, and a new version is installed only when your work is saved.',
      'First job, a view of the pane, leads from the tape measure to the leak test in seven steps and fills the ready-made sheets with the sizes of your own drum.',
      'The pane waits while Excel is calculating, and Excel starts the add-in with workbooks that use it.',
      'Where blank and 0 mean different things, the cell asks which one you mean instead of using a default.',
    ],
  },
];

export function changeLogPage(): string {
  const parts = versions.map(
    ({ version, changes }) =>
      `<h2>${markupSafe(version)}</h2>\n<ul>${changes.map((change) => `<li>${markupSafe(change)}</li>`).join('\n')}</ul>`,
  );
  return page('What changed', `<h1>What changed</h1>\n${parts.join('\n')}`, '');
}
