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
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
}
interface FetchEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface ExtendableEvent {
  waitUntil(work: Promise<unknown>): void;
}
declare const self: WorkerScope;

precacheAndRoute(self.__filesToKeep, { cleanURLs: false, ignoreURLParametersMatching: [/./] });
clientsClaim();

/**
 * A reference page as it is on the network, or else as it was when it was last looked at. The pages are too many to fetch
 * all of them on a first visit.
 */
async function referencePage(request: Request): Promise<Response> {
  const kept = await caches.open('reference-pages');
  try {
    const response = await fetch(request);
    if (response.ok) await kept.put(request, response.clone());
    return response;
  } catch {
    return (await kept.match(request, { ignoreSearch: true })) ?? notKept();
  }
}

function notKept(): Response {
  const sentence =
    'This reference page was not opened before, so it needs the network. Pages that you have opened stay.';
  return new Response(sentence, { status: 503, headers: { 'Content-Type': 'text/plain; charset=utf-8' } });
}

self.addEventListener('fetch', (event) => {
  const reference = new URL('reference/', self.registration.scope).href;
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(reference)) event.respondWith(referencePage(event.request));
});

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
