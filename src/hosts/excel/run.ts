import { HostError, type HostReason } from '../sheet-host';

/** What Excel says went wrong, by its code, and what to do about it. */
const sentences: Readonly<Record<string, readonly [HostReason, string]>> = {
  AccessDenied: [
    'protected',
    'The sheet or workbook is protected or opened for reading only; remove the protection, then try again.',
  ],
  InvalidOperationInCellEditMode: ['busy', 'A cell is being edited; finish it with Enter or Escape, then try again.'],
  RequestAborted: ['busy', 'Excel stopped this because it was busy; try again.'],
  Conflict: ['busy', 'Someone else changed the workbook at the same moment; try again.'],
  ItemAlreadyExists: ['taken', 'A sheet or name with that name already exists; rename it, then try again.'],
  ItemNotFound: ['missing', 'The sheet, name or cell does not exist any more.'],
  InvalidReference: ['missing', 'The sheet or cell does not exist any more.'],
  InvalidSelection: ['failed', 'Excel cannot use this selection; select one block of cells, then try again.'],
  RangeExceedsLimit: ['failed', 'These are more cells than Excel can read at once; select fewer, then try again.'],
  ResponsePayloadSizeLimitExceeded: [
    'failed',
    'These are more cells than Excel can read at once; select fewer, then try again.',
  ],
  RequestPayloadSizeLimitExceeded: ['failed', 'These are more cells than Excel can write at once; do it in parts.'],
  ApiNotFound: ['unsupported', 'This version of Excel cannot do that; update Excel, or use Excel on the web.'],
  NotImplemented: ['unsupported', 'This version of Excel cannot do that; update Excel, or use Excel on the web.'],
  UnsupportedOperation: ['unsupported', 'Excel cannot do that here; try it on another sheet or in a newer Excel.'],
};

/** Runs one batch of requests and turns every failure into a HostError. */
export async function run<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(batch);
  } catch (error) {
    throw hostError(error);
  }
}

/** Any failure of Excel as a message that says what to do. */
export function hostError(error: unknown): HostError {
  if (error instanceof HostError) return error;
  const { code, message } = (typeof error === 'object' && error !== null ? error : {}) as {
    code?: unknown;
    message?: unknown;
  };
  const known = typeof code === 'string' ? sentences[code] : undefined;
  if (known !== undefined) return new HostError(...known);
  const text = typeof message === 'string' ? message : String(error);
  if (/merged|array|spill|table/i.test(text)) {
    return new HostError('occupied', `Excel cannot change only a part of a spill, merged cell or table: ${text}`);
  }
  return new HostError('failed', `Excel could not do this: ${text}`);
}

/** Whether this Excel has that version of its interface. */
export function supports(version: string): boolean {
  return Office.context.requirements.isSetSupported('ExcelApi', version);
}
