import { withoutDimensions } from './dimension-lines';
import type { Drawing } from './drawing-model';
import { extentOf, grown } from './extent';

/** Closes a drawing: measures it, with a margin of half a text height all round. */
export function drawing(parts: Omit<Drawing, 'extent'>): Drawing {
  const { entities, textHeight } = parts;
  return { ...parts, extent: grown(extentOf(withoutDimensions(entities, textHeight)), textHeight / 2) };
}
