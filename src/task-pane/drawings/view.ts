import { lazyView } from '../lazy-view';

/** What is selected in the sheet, drawn. */
export const drawingsView = lazyView(
  'drawings',
  'Drawings',
  async () => (await import(/* webpackChunkName: "drawings" */ './create-drawings')).createDrawings,
);
