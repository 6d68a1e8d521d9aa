import { lazyView } from '../lazy-view';

/** The present cautions of the open workbook, and the dangers of each kind of work. */
export const checksView = lazyView(
  'checks',
  'Checks',
  async () => (await import(/* webpackChunkName: "checks" */ './create-checks')).createChecks,
);
