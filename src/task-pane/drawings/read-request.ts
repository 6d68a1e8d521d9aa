import type { TrainStage } from '../../drawing/train-drawing';
import type { CellScalar } from '../../hosts/workbook-model';
import { UserError } from '../user-error';
import { type Cells, type DrawingRequest, type DrumField, drumFields } from './request';

const mostRows = 1100;
const mostWords = 300;
const mostStages = 20;

/** Reads data from outside as a request: checks type and size of every field and drops all others. */
export function readRequest(data: unknown): DrawingRequest {
  const given = record(data, 'the drawing');
  const units = textField(given.units, 'units');
  switch (given.what) {
    case 'patterns': {
      const rows = cells(given.rows, 'rows');
      return {
        what: 'patterns',
        units,
        rows,
        names: list(given.names, 'names', rows.length).map((one) => textField(one, 'name')),
      };
    }
    case 'cut plan':
      return {
        what: 'cut plan',
        units,
        plan: cells(given.plan, 'plan'),
        patterns: cells(given.patterns, 'patterns'),
        sheetLength: scalar(given.sheetLength, 'sheet length'),
        sheetWidth: scalar(given.sheetWidth, 'sheet width'),
      };
    case 'drum': {
      const figures: Partial<Record<DrumField, CellScalar>> = {};
      for (const [field, value] of Object.entries(record(given.figures, 'figures'))) {
        const known = drumFields.find((one) => one === field);
        if (known === undefined) throw wrongRequest('figures');
        figures[known] = scalar(value, known);
      }
      const name = optional(given.name, 'name');
      return { what: 'drum', units, figures, ...(name === undefined ? {} : { name }) };
    }
    case 'how sure':
      return { what: 'how sure', units, title: textField(given.title, 'title'), rows: cells(given.rows, 'rows') };
    case 'train': {
      const returning = optional(given.returning, 'returning');
      return {
        what: 'train',
        units,
        title: textField(given.title, 'title'),
        stages: list(given.stages, 'stages', mostStages).map(stage),
        notes: list(given.notes, 'notes', mostStages).map((one) => textField(one, 'note')),
        ...(returning === undefined ? {} : { returning }),
      };
    }
    default:
      throw wrongRequest('what');
  }
}

function stage(data: unknown): TrainStage {
  const given = record(data, 'stage');
  const passing = Object.fromEntries(
    (['flow', 'solids', 'nitrogen', 'taken'] as const).flatMap((name) => {
      const words = optional(given[name], name);
      return words === undefined ? [] : [[name, words]];
    }),
  );
  return {
    name: textField(given.name, 'stage'),
    words: list(given.words ?? [], 'words', mostStages).map((one) => textField(one, 'words')),
    ...passing,
    ...(given.limiting === true ? { limiting: true } : {}),
  };
}

function wrongRequest(what: string): UserError {
  return new UserError(`The drawing is not as the task pane sent it (${what}); open it from the task pane again.`);
}

function record(data: unknown, what: string): Readonly<Record<string, unknown>> {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) throw wrongRequest(what);
  return data as Readonly<Record<string, unknown>>;
}

function list(data: unknown, what: string, most: number): readonly unknown[] {
  if (!Array.isArray(data) || data.length > most) throw wrongRequest(what);
  return data;
}

function textField(data: unknown, what: string): string {
  if (typeof data !== 'string' || data.length > mostWords) throw wrongRequest(what);
  return data;
}

function optional(data: unknown, what: string): string | undefined {
  return data === undefined ? undefined : textField(data, what);
}

function scalar(data: unknown, what: string): CellScalar {
  if (typeof data === 'boolean' || (typeof data === 'number' && Number.isFinite(data))) return data;
  return textField(data, what);
}

function cells(data: unknown, what: string): Cells {
  return list(data, what, mostRows).map((line) => list(line, what, 60).map((value) => scalar(value, what)));
}
