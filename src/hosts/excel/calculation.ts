import type { Unsubscribe } from '../sheet-host';
import { listen } from './events';
import { run, supports } from './run';

/** Whether Excel is still calculating, so that cells can show old results. */
export async function isCalculating(): Promise<boolean> {
  if (!supports('1.9')) return false;
  return run(async (context) => {
    const { application } = context.workbook;
    application.load('calculationState');
    await context.sync();
    return application.calculationState !== 'Done';
  });
}

/** Calls back after cells changed and after Excel calculated, as far as this Excel reports it. */
export async function onCellsChanged(listener: () => void): Promise<Unsubscribe> {
  const stops: Unsubscribe[] = [];
  if (supports('1.9')) {
    stops.push(await listen((context, heard) => context.workbook.worksheets.onChanged.add(heard), listener));
  }
  if (supports('1.8')) {
    stops.push(await listen((context, heard) => context.workbook.worksheets.onCalculated.add(heard), listener));
  }
  return () => {
    for (const stop of stops) stop();
  };
}
