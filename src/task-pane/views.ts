import { functionsView } from './functions-view';
import type { View } from './view';

/** The views in the order of their tabs. */
export const views: readonly View[] = [functionsView];
