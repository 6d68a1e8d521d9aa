import type { Drawing } from '../../drawing/drawing-model';
import { toSvg } from '../../drawing/svg';
import { freshId, make, makeButton } from '../dom';

const closest = 8;

/**
 * A drawing as an element of this page. It goes through a parser of images, so that text from cells is never markup.
 */
export function pictureOf(drawing: Drawing): SVGElement {
  const { documentElement } = new DOMParser().parseFromString(toSvg(drawing), 'image/svg+xml');
  if (!(documentElement instanceof SVGElement)) throw new Error('the drawing is no picture');
  return document.importNode(documentElement, true);
}

/** Shows a drawing over the whole page, with buttons and the keys + and - to zoom. Escape closes it; then calls back. */
export function showLarger(drawing: Drawing, closed: () => void): void {
  const id = freshId('larger');
  const picture = pictureOf(drawing);
  const scroll = make('div', { class: 'larger-scroll', tabindex: '0', role: 'group', 'aria-labelledby': id }, picture);
  let zoom = 1;
  const show = (wanted: number): void => {
    zoom = Math.min(closest, Math.max(1, wanted));
    // At zoom 1 the whole drawing fits the page; at a higher zoom it is that many times as wide.
    scroll.classList.toggle('fitted', zoom === 1);
    picture.style.width = zoom === 1 ? '' : `${100 * zoom}%`;
    out.disabled = zoom === 1;
    into.disabled = zoom === closest;
  };
  const into = makeButton('Zoom in', () => show(zoom * 1.5), { 'aria-keyshortcuts': '+' });
  const out = makeButton('Zoom out', () => show(zoom / 1.5), { 'aria-keyshortcuts': '-' });
  const close = makeButton('Close', () => dialog.close());
  const bar = make('div', { class: 'larger-bar' }, make('p', { id }, drawing.title), into, out, close);
  const dialog = make('dialog', { class: 'larger', 'aria-labelledby': id }, bar, scroll);
  dialog.addEventListener('keydown', ({ key }) => {
    if (key === '+' || key === '=') show(zoom * 1.5);
    if (key === '-') show(zoom / 1.5);
  });
  dialog.addEventListener('close', () => {
    dialog.remove();
    closed();
  });
  // Inside the pane, whose style sheet it needs.
  (document.querySelector('.pane') ?? document.body).append(dialog);
  show(1);
  dialog.showModal();
  scroll.focus();
}
