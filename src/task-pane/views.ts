import { functionsView } from './functions-view';
import { unitsView } from './units-view';
import type { View } from './view';

/** The views in the order of their tabs. */
export const views: readonly View[] = [unitsView, functionsView];
