import type { Unsubscribe } from '../sheet-host';
import { run } from './run';

interface Handler {
  readonly context: OfficeExtension.ClientRequestContext;
  readonly remove: () => void;
}

/** Listens until stopped; if Excel refuses the stop, later events are ignored. */
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
