import type { Drawing } from '../../drawing/drawing-model';
import { toSvg } from '../../drawing/svg';

/** A drawing as an element of this page. It goes through a parser of images, so that text from cells is never markup. */
export function pictureOf(drawing: Drawing): SVGElement {
  const { documentElement } = new DOMParser().parseFromString(toSvg(drawing), 'image/svg+xml');
  if (!(documentElement instanceof SVGElement)) throw new Error('the drawing is no picture');
  return document.importNode(documentElement, true);
}
