import type { Bounds, CellValue } from '../../catalogue/argument';
import { planColumns } from '../../catalogue/pattern-columns';
import { figureReader } from '../../catalogue/reading/read-figure';
import { readPatterns, readPlan } from '../../catalogue/reading/read-patterns';
import { cutPlanDrawing } from '../../drawing/cut-plan-drawing';
import type { Drawing } from '../../drawing/drawing-model';
import { patternDrawing } from '../../drawing/pattern-drawing';
import { scaled } from '../../drawing/scaled';
import { trainDrawing } from '../../drawing/train-drawing';
import { type Profile, readProfile } from '../../units/profile';
import { drumDrawing } from './drum-drawing';
import { howSureDrawing } from './how-sure-drawings';
import type { CutPlanRequest, DrawingRequest, PatternsRequest } from './request';

/** A diagram has no size of its own: its text is made as high as that of a page, 3 mm. */
const diagramText = 0.003;

/** The drawings of a request, one for each pattern. Throws a sentence if the numbers do not agree. */
export function drawingsOf(request: DrawingRequest): readonly Drawing[] {
  const profile = readProfile(request.units);
  switch (request.what) {
    case 'patterns':
      return patternDrawings(request, profile);
    case 'cut plan':
      return [planDrawing(request, profile)];
    case 'drum':
      return [drumDrawing(request, profile)];
    case 'how sure':
      return [scaled(howSureDrawing(request, profile.name), diagramText)];
    case 'train': {
      const { stages, title, returning, notes } = request;
      const back = returning === undefined ? {} : { returning };
      return [scaled(trainDrawing({ stages, title, notes, units: profile.name, ...back }), diagramText)];
    }
  }
}

function patternDrawings({ rows, names }: PatternsRequest, profile: Profile): readonly Drawing[] {
  return rows.flatMap((cells, i) => {
    const name = names[i] ?? '';
    return readPatterns('pattern', [cells], profile).map((pattern) =>
      patternDrawing({ pattern, profile, row: i + 1, ...(name === '' ? {} : { name }) }),
    );
  });
}

export const planWidth = Object.keys(planColumns).length;

function planDrawing({ plan, patterns, sheetLength, sheetWidth }: CutPlanRequest, profile: Profile): Drawing {
  return cutPlanDrawing({
    patterns: readPatterns('patterns', patterns, profile),
    plan: readPlan('cut plan', plan, profile),
    sheetLength: figure('sheet length', sheetLength, profile, { above: 0 }),
    sheetWidth: figure('sheet width', sheetWidth, profile, { above: 0 }),
    profile,
  });
}

function figure(name: string, value: CellValue, profile: Profile, bounds: Bounds): number {
  return figureReader(name, { kind: 'dimension', meaning: name, ...bounds })(value, profile);
}
