/**
 * Keeps the files of the site, all of one version, for use without a network. What Excel loads is not among them.
 * A new version is fetched beside the old one and waits until the workbench asks for it or its pages are closed.
 */
import { clientsClaim } from 'workbox-core';
import { precacheAndRoute } from 'workbox-precaching';
import { isUpdateRequest, type UpdateReply } from './update-request';

/** The parts of a service worker's global scope that are used, which the types of a page do not have. */
interface WorkerScope {
  /** The build puts the list of files here. */
  readonly __filesToKeep: { url: string; revision: string }[];
  readonly registration: { readonly scope: string };
  readonly clients: {
    matchAll(options: { type: 'window'; includeUncontrolled: boolean }): Promise<readonly { readonly url: string }[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'message', listener: (event: MessageEvent & ExtendableEvent) => void): void;
}
interface ExtendableEvent {
  waitUntil(work: Promise<unknown>): void;
}
declare const self: WorkerScope;

precacheAndRoute(self.__filesToKeep, { cleanURLs: false, ignoreURLParametersMatching: [/./] });
clientsClaim();

/** Changes versions where only the asking page would notice: two pages of the workbench must not be of two versions. */
async function update(): Promise<UpdateReply> {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const workbench = new URL('workbench/', self.registration.scope).href;
  if (pages.filter(({ url }) => url.startsWith(workbench)).length > 1) return 'other pages are open';
  await self.skipWaiting();
  return 'updating';
}

self.addEventListener('message', (event) => {
  if (isUpdateRequest(event.data)) event.waitUntil(update().then((reply) => event.ports[0]?.postMessage(reply)));
});
