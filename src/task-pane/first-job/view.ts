import { make } from '../dom';
import { lazyView } from '../lazy-view';

const alone =
  'The first job fills a workbook step by step, and there is no spreadsheet beside this page. Open the pane in Excel, or the workbench.';

/** The guide through a first cone. */
export const firstJobView = lazyView('first-job', 'First job', async () => {
  const { createGuide } = await import(/* webpackChunkName: "first-job" */ './guide');
  return (context) => {
    const { host } = context;
    if (host !== undefined) return createGuide({ ...context, host });
    return { element: make('div', {}, make('h2', {}, 'First job'), make('p', {}, alone)) };
  };
});
