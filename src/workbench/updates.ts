import { messageSW, Workbox } from 'workbox-window';
import { type UpdateReply, updateRequest } from '../offline/update-request';
import { part } from './page-parts';

/**
 * Has the site kept for use without a network, and offers a new version once it has been fetched. Nothing changes
 * until the user says so; `isUnsaved` tells whether work would be lost by that.
 */
export function keepForOffline(isUnsaved: () => boolean): void {
  if (!('serviceWorker' in navigator)) return;
  const workbox = new Workbox(new URL('../service-worker.js', document.baseURI).href);
  workbox.addEventListener('waiting', () => offer(workbox, isUnsaved));
  // A browser that forbids it, or a host without https, serves the site over the network as before.
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
