import { messageSW, Workbox } from 'workbox-window';
import { type UpdateReply, updateRequest } from '../offline/update-request';
import { part } from './page-parts';

/**
 * Keeps the site for use without a network, and offers a new version once it is loaded. Nothing changes until the
 * user agrees; `isUnsaved` says whether work would be lost.
 */
export function keepForOffline(isUnsaved: () => boolean): void {
  if (!('serviceWorker' in navigator)) return;
  const workbox = new Workbox(new URL('../service-worker.js', document.baseURI).href);
  workbox.addEventListener('waiting', () => offer(workbox, isUnsaved));
  // If the browser forbids it or the host has no https, the site is loaded from the network as before.
  void workbox.register().catch(() => undefined);
}

function offer(workbox: Workbox, isUnsaved: () => boolean): void {
  const [bar, text, button] = [part('update'), part('update-text'), part('update-now')];
  text.textContent = 'A new version of Siltstead is ready. Your work stays as it is until you update.';
  bar.hidden = false;
  button.onclick = async () => {
    if (isUnsaved()) {
      text.textContent = 'Save your work first; then press Update now again.';
      return;
    }
    const waiting = (await navigator.serviceWorker.getRegistration())?.waiting;
    const reply: UpdateReply = waiting ? await messageSW(waiting, updateRequest) : 'updating';
    if (reply === 'updating') return;
    text.textContent =
      'Another page of the workbench is open. Save your work there and close it; then press Update now again.';
  };
  workbox.addEventListener('controlling', () => location.reload());
}
