import { rangeName } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import { Unreadable } from '../../units/unreadable';
import { type Source, sourceAt } from '../cell-formula/calls';
import { argument, unitsOf, withoutErrors } from '../follow/arguments';
import { NotFollowed } from '../follow/grid';
import { UserError } from '../user-error';
import { drumFromPorts, drumFromRow } from './drum-from';
import type { Recognition, SelectionContext } from './recognition';
import { recognizeCutPlan } from './recognize-cut-plan';
import { recognizePatterns } from './recognize-patterns';
import { recognizedScenario, recognizeScenario } from './recognize-scenario';

export const whatToSelect =
  'Nothing here can be drawn: select a pattern row, a cut plan, a drum’s row or ports, a column of scenarios, or a result of SILT.PLAN.RANGE or SILT.PLAN.DRIVERS.';

/** Recognizes a selection. If it cannot be drawn, the result is a sentence. */
export async function recognize(selection: Block, around: SelectionContext): Promise<Recognition> {
  try {
    const source = await sourceAt(around.host, selection);
    const pattern = source?.calls.find(({ name }) => name === 'CONE.PATTERN');
    const units = pattern === undefined ? around.units : await unitsOf(pattern, around);
    return (
      (source && (await recognizeSource(source, selection, around))) ??
      (isOfAnother(source) ? undefined : await patternsOrDrum(selection, { ...around, units })) ??
      (isSpill(source) ? undefined : await recognizeScenario(selection, around)) ??
      (await recognizeDrum(selection, around)) ?? { sentence: whatToSelect }
    );
  } catch (error) {
    if (error instanceof UserError || error instanceof Unreadable) return { sentence: error.message };
    if (error instanceof NotFollowed)
      return { sentence: `This cannot be drawn, because its formula ${error.message}.` };
    throw error;
  }
}

/** A row under the headings of drums can have ten numbers side by side too, which are a drum's if they are no pattern. */
async function patternsOrDrum(selection: Block, around: SelectionContext): Promise<Recognition | undefined> {
  try {
    return await recognizePatterns(selection, around);
  } catch (error) {
    const drum = error instanceof UserError ? await recognizeDrum(selection, around) : undefined;
    if (drum === undefined) throw error;
    return drum;
  }
}

/** The result of one of our functions is not a table of inputs, even if it looks like one. */
function isSpill(source: Source | undefined): boolean {
  return source !== undefined && source.range.rows * source.range.columns > 1;
}

/** The result of another function than CONE.PATTERN can be ten numbers too, and is no pattern. */
function isOfAnother(source: Source | undefined): boolean {
  return isSpill(source) && source?.calls.every(({ name }) => name !== 'CONE.PATTERN') === true;
}

async function recognizeSource(
  source: Source,
  selection: Block,
  around: SelectionContext,
): Promise<Recognition | undefined> {
  const from = `${source.sheet}!${rangeName(source.range)}`;
  for (const call of source.calls) {
    if (call.name === 'CUT.PLAN') return recognizeCutPlan(call, source, from, around);
    if (call.name === 'PLAN.COMPARE' || call.name === 'PLAN.LIMIT') {
      const scenarios = await argument(call, 1, around);
      // The first scenario comes after two columns of names and units.
      const over = call.name === 'PLAN.COMPARE' ? selection.range.column - source.range.column - 2 : 0;
      return {
        recognized: recognizedScenario(
          scenarios,
          Math.max(0, over),
          await unitsOf(call, around),
          from,
          around.functionLibrary,
        ),
      };
    }
    if (call.name === 'PLAN.RANGE' || call.name === 'PLAN.DRIVERS') {
      const block = await around.host.read({ sheet: source.sheet, range: source.range });
      const title = call.name === 'PLAN.RANGE' ? 'How sure the plan is' : 'What to measure first';
      const units = await unitsOf(call, around);
      return { recognized: { request: { what: 'how sure', units, title, rows: withoutErrors(block.values) }, from } };
    }
    if (call.name === 'TANK.PORTS') {
      const [depth, coneHeight, stand] = await Promise.all([
        argument(call, 1, around),
        argument(call, 2, around),
        argument(call, 3, around),
      ]);
      return { drum: drumFromPorts(depth, coneHeight, stand), units: await unitsOf(call, around), from };
    }
  }
  return undefined;
}

async function recognizeDrum(selection: Block, around: SelectionContext): Promise<Recognition | undefined> {
  const drum = await drumFromRow(selection, around.host);
  if (drum === undefined) return undefined;
  return { drum, units: around.units, from: `${selection.sheet}, row ${selection.range.row + 1}` };
}
