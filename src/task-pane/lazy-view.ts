import { make, replace } from './dom';
import type { View, ViewPart } from './view';

/** A view whose script loads when the view is first shown, so that the first page stays small. */
export function lazyView(id: string, label: string, load: () => Promise<View['build']>): View {
  return {
    id,
    label,
    build: (context) => {
      const place = make('div', {});
      let part: ViewPart | undefined;
      let isFront = false;
      const fetchPart = async (): Promise<void> => {
        const build = await load().catch(() => undefined);
        if (build === undefined) {
          context.notify('fault', `${label} did not load; check the network, then choose the view again.`);
          return;
        }
        if (part !== undefined) return;
        part = build(context);
        replace(place, part.element);
        if (isFront) part.shown?.();
      };
      return {
        element: place,
        shown: () => {
          isFront = true;
          if (part === undefined) void fetchPart();
          else part.shown?.();
        },
        hidden: () => {
          isFront = false;
          part?.hidden?.();
        },
        forget: () => part?.forget?.(),
      };
    },
  };
}
