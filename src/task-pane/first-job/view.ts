import { make, replace } from '../dom';
import type { PaneContext, View, ViewPart } from '../view';

/** The guide through a first cone, loaded when it is first looked at. */
export const firstJobView: View = { id: 'first-job', label: 'First job', build };

const alone =
  'The first job fills a workbook step by step, and there is no spreadsheet beside this page. Open the pane in Excel, or the workbench.';

function build(context: PaneContext): ViewPart {
  const place = make('div', { class: 'first-job' }, make('h2', {}, 'First job'));
  if (context.host === undefined) {
    place.append(make('p', {}, alone));
    return { element: place };
  }
  const { host } = context;
  let guide: ViewPart | undefined;
  let isFront = false;
  const load = async (): Promise<void> => {
    try {
      const { createGuide } = await import(/* webpackChunkName: "first-job" */ './guide');
      guide ??= createGuide({ ...context, host });
      replace(place, guide.element);
      if (isFront) guide.shown?.();
    } catch {
      context.notify('fault', 'The guide did not load; check the network, then choose First job again.');
    }
  };
  return {
    element: place,
    shown: () => {
      isFront = true;
      if (guide === undefined) void load();
      else guide.shown?.();
    },
    hidden: () => {
      isFront = false;
      guide?.hidden?.();
    },
    forget: () => guide?.forget?.(),
  };
}
