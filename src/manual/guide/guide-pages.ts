import { exampleDrawing } from '../example-drawings';
import { page } from '../page';
import { formulaLine, spilledTable, withResults } from './formula-result';
import { type Step, steps } from './steps';

type SiteFile = readonly [path: string, content: string];

const fileOf = ({ slug }: Step): string => `${slug}.html`;

/** Every page of the guide, one for each step of the job, with a first page that lists them. */
export function guidePages(): readonly SiteFile[] {
  return [
    ['guide/index.html', page('Guide', contents())] as const,
    ...steps.map((step, at) => [`guide/${fileOf(step)}`, page(step.title, stepBody(step, at))] as const),
  ];
}

function contents(): string {
  const items = steps.map(
    (step) =>
      `<li><a href="${fileOf(step)}">${step.title}</a> <span class="quiet">${withResults(step.what)}</span></li>`,
  );
  return `<h1>From second-hand drums to the first picking</h1>
<p class="lead">Each page is one step of the job: what to do and why, how Siltstead helps, and what can go wrong. The numbers are computed by the functions when these pages are made; type the same formulas into the workbench and change them.</p>
<ol class="steps">${items.join('\n')}</ol>`;
}

function stepBody(step: Step, at: number): string {
  const picture = step.picture === undefined ? undefined : exampleDrawing(step.picture);
  const around = [
    at > 0 ? `<a href="${fileOf(stepAt(at - 1))}" rel="prev">Before: ${stepAt(at - 1).title}</a>` : '',
    at < steps.length - 1 ? `<a href="${fileOf(stepAt(at + 1))}" rel="next">Next: ${stepAt(at + 1).title}</a>` : '',
  ];
  return `<p class="quiet">Step ${at + 1} of ${steps.length} · <a href="index.html">all steps</a></p>
<h1>${step.title}</h1>
<p class="lead">${withResults(step.what)}</p>
${step.why.map((text) => `<p>${withResults(text)}</p>`).join('\n')}
${picture === undefined ? '' : `<figure>${picture}</figure>`}
<h2>With Siltstead</h2>
<p>${withResults(step.sheet)}</p>
${step.calls.map(({ say, formula, unit, column, table }) => `<p>${withResults(say)}</p>\n${table ? spilledTable(formula) : formulaLine(formula, unit, column)}`).join('\n')}
${step.more?.() ?? ''}
<h2>What can go wrong</h2>
<ul>${step.wrong.map((text) => `<li>${withResults(text)}</li>`).join('\n')}</ul>
${step.cautions.length === 0 ? '' : `<aside class="cautions" aria-label="Cautions"><h2>Cautions</h2><ul>${step.cautions.map((text) => `<li>${withResults(text)}</li>`).join('\n')}</ul><p>Where these and the maker’s sheet, your local code or a licensed tradesperson differ, follow them.</p></aside>`}
<nav class="around" aria-label="Steps">${around.join(' ')}</nav>`;
}

function stepAt(at: number): Step {
  const step = steps[at];
  if (step === undefined) throw new Error(`the guide has no step ${at + 1}`);
  return step;
}
