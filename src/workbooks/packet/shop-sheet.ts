import { layoutOf, type PaperPage, sentencesAt, tableAt } from '../../drawing/paper-page';
import { patternDrawing } from '../../drawing/pattern-drawing';
import type { Paper } from '../../drawing/tiling';
import { cautions } from '../sheets/cautions';
import { cellText, type PaperTable, textRows } from './paper-table';
import type { JobDrum } from './read-drums';
import type { Job } from './read-job';
import { factsOf, leakTests, marksOf, portsOf, stepsOf } from './shop-tables';

const small = 1.85;
const usual = 2.05;
/** Numbers of marking rows to try, from the most, until the steps fit below them. */
const mostMarks = [19, 15, 12, 9, 6];

/** One page per drum to hang in the shop: what to mark, cut, rivet, bed and test, with boxes to tick. */
export function shopSheet(job: Job, drum: JobDrum, where: string, size: Paper): PaperPage {
  const tried = mostMarks.map((most) => () => withMarks(job, drum, where, size, most));
  const fitting = tried.find((page) => page().bottom >= layoutOf(size).bottom) ?? tried.at(-1);
  if (fitting === undefined) throw new RangeError('no number of marks to try');
  return fitting().page;
}

const sharesOf = ({ columns }: PaperTable): readonly number[] => columns.map(({ share }) => share);

function withMarks(
  job: Job,
  drum: JobDrum,
  where: string,
  size: Paper,
  most: number,
): { readonly page: PaperPage; readonly bottom: number } {
  const { left, right, top } = layoutOf(size);
  const width = right - left;
  const drawing = patternDrawing({ pattern: drum.pattern, profile: job.profile, row: drum.row, name: drum.name });
  const head = sentencesAt({ x: left, y: top }, width, [`${drum.name}: shop sheet`], 5, true);
  const under = sentencesAt(
    { x: left, y: head.bottom },
    width,
    [`Held ${drum.held === '' ? '________' : drum.held}. ${cautions.drums}`],
    usual,
  );
  const split = left + 0.53 * width;
  const factsAt = { x: split + 3, y: under.bottom - 1 };
  const factRows = factsOf(job, drum).map(([label, value, kind]) => [label, cellText(job, kind, value)]);
  const facts = tableAt(factsAt, right - factsAt.x, factRows, { height: usual, columns: [11, 15] });
  const pictureBottom = Math.min(facts.bottom, under.bottom - 62);
  const marks = marksOf(job, drum, most);
  const marksHead = sentencesAt({ x: left, y: pictureBottom - 2.5 }, width, [marks.name], usual, true);
  const table = tableAt({ x: left, y: marksHead.bottom }, width, textRows(job, marks), {
    ...{ height: small, headed: true, columns: sharesOf(marks) },
  });
  const stepsAt = { x: left, y: table.bottom - 2.5 };
  const stepRows = stepsOf(job, drum).map((step) => [step]);
  const steps = tableAt(stepsAt, 0.64 * width, stepRows, { height: small, columns: [1], ticks: true });
  const testsAt = { x: left + 0.66 * width, y: stepsAt.y };
  const testRows = [['leak test', 'date', 'no drop'], ...leakTests.map((test) => [test, '', '[   ]'])];
  const tests = tableAt(testsAt, 0.34 * width, testRows, { height: small, columns: [15, 10, 10], headed: true });
  const portRows = portsOf(job, drum);
  const ports = tableAt({ x: testsAt.x, y: tests.bottom - 4 }, 0.34 * width, textRows(job, portRows), {
    ...{ height: small, columns: sharesOf(portRows), headed: true },
  });
  const page: PaperPage = {
    title: `${drum.name}: shop sheet`,
    where,
    primitives: [head, under, facts, marksHead, table, steps, tests, ports].flatMap(({ primitives }) => primitives),
    pictures: [{ drawing, box: { left, right: split, bottom: pictureBottom, top: under.bottom - 1 } }],
  };
  return { page, bottom: Math.min(steps.bottom, ports.bottom) };
}
