import type { Drawing, Text } from './drawing-model';
import { text } from './shapes';
import { lineStep, wrapped } from './text-width';

export interface Caption {
  readonly entities: readonly Text[];
  /** How far the caption reaches below the drawing. */
  readonly height: number;
}

/** Title and notes under a drawing, broken to its width. */
export function captionLines({ title, notes, extent, textHeight }: Drawing, width: number): Caption {
  const inset = textHeight / 2;
  const entities: Text[] = [];
  let y = extent.bottom - 2 * textHeight;
  const add = (sentence: string, height: number, bold: boolean) => {
    for (const words of wrapped(sentence, height, width - 2 * inset)) {
      entities.push(
        text({ x: extent.left + inset, y }, words, height, { anchor: 'start', ...(bold ? { bold: true } : {}) }),
      );
      y -= lineStep * height;
    }
    y -= 0.3 * height;
  };
  add(title, 1.15 * textHeight, true);
  for (const note of notes) add(note, textHeight, false);
  return { entities, height: extent.bottom - y };
}
