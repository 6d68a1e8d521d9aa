import { checksView } from './checks/view';
import { drawingsView } from './drawings/view';
import { functionsView } from './functions-view';
import { sheetsView } from './sheets/view';
import { unitsView } from './units-view';
import type { View } from './view';

/** The views in the order of their tabs. */
export const views: readonly View[] = [unitsView, functionsView, drawingsView, sheetsView, checksView];
