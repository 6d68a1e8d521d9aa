import type { Unsubscribe } from '../sheet-host';
import { run } from './run';

interface Handler {
  readonly context: OfficeExtension.ClientRequestContext;
  readonly remove: () => void;
}

/** Listens until told to stop; a stop that Excel refuses leaves a listener that is no longer heard. */
export async function listen(
  add: (context: Excel.RequestContext, heard: () => Promise<void>) => Handler,
  listener: () => void,
): Promise<Unsubscribe> {
  let isOpen = true;
  const handler = await run(async (context) => {
    const added = add(context, async () => {
      if (isOpen) listener();
    });
    await context.sync();
    return added;
  });
  return () => {
    isOpen = false;
    const context = handler.context as Excel.RequestContext;
    Excel.run(context, async (again) => {
      handler.remove();
      await again.sync();
    }).catch(() => undefined);
  };
}
