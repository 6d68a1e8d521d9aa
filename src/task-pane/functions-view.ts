import { lazyView } from './lazy-view';

/** Functions: found by words or by stage, each with its form. */
export const functionsView = lazyView(
  'functions',
  'Functions',
  async () => (await import(/* webpackChunkName: "functions-view" */ './functions/create-functions')).createFunctions,
);
