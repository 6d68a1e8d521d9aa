/**
 * Measures speed and size: `npm run bench`, or some of it, `npm run bench -- cut size`. Ends with code 1 where a figure is
 * not as is wanted, so that a slower version is seen by whoever runs it.
 */
import { commandsTable } from './bench-commands';
import { compareCutPlans, cutComparisonTable } from './bench-cut';
import { engineTable } from './bench-engine';
import { firstCellTable } from './bench-first-cell';
import { paneTable } from './bench-pane';
import { planTable, rangeTable } from './bench-plan';
import { referenceTable } from './bench-reference';
import { sizeTable } from './bench-size';
import { speedTable } from './bench-speed';
import { startTable } from './bench-start';
import { missed } from './bench-wanted';
import { workbenchTable } from './bench-workbench';

interface Part {
  readonly title: string;
  readonly table: () => string | Promise<string>;
}

const parts: Readonly<Record<string, Part>> = {
  speed: { title: 'Calls a second of each function’s own example, on one core', table: speedTable },
  plan: { title: 'A comparison of many scenarios in one call', table: planTable },
  range: { title: 'How sure one scenario is, and what to measure first', table: rangeTable },
  reference: { title: 'Searches beside a general-purpose library of another language', table: referenceTable },
  cut: {
    title: 'Cut plans beside the boxes around their pieces, packed by a library',
    table: () => cutComparisonTable(compareCutPlans()),
  },
  engine: { title: 'Sheets of many formulas, without a page', table: engineTable },
  commands: { title: 'Commands, from the shell to their end', table: commandsTable },
  size: { title: 'What Excel loads', table: sizeTable },
  pane: { title: 'The task pane, in a browser', table: paneTable },
  workbench: { title: 'The workbench, in a browser', table: workbenchTable },
  'first-cell': { title: 'Time from opening the workbench to its first computed cell', table: firstCellTable },
  start: { title: 'Time from opening a page to the result of its first function, in a browser', table: startTable },
};

async function bench(asked: readonly string[]): Promise<void> {
  const unknown = asked.filter((name) => !(name in parts));
  if (unknown.length > 0) {
    process.stderr.write(`${unknown.join(', ')}: not measured; give some of ${Object.keys(parts).join(', ')}\n`);
    process.exitCode = 2;
    return;
  }
  const missing: string[] = [];
  for (const [name, { title, table }] of Object.entries(parts)) {
    if (asked.length > 0 && !asked.includes(name)) continue;
    const measured = await table();
    if (measured.includes(missed)) missing.push(name);
    process.stdout.write(`\n${title}\n\n${measured}\n`);
  }
  if (missing.length === 0) return;
  process.stdout.write(`\nnot all as wanted: ${missing.join(', ')}\n`);
  process.exitCode = 1;
}

bench(process.argv.slice(2)).catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
