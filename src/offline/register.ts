/** Has the site kept for use without a network, from any of its pages; the workbench does so by itself. */
const { currentScript } = document;
if (
  process.env.NODE_ENV !== 'development' &&
  'serviceWorker' in navigator &&
  currentScript instanceof HTMLScriptElement
) {
  // A browser that forbids it, or a host without https, serves the site over the network as before.
  void navigator.serviceWorker.register(new URL('service-worker.js', currentScript.src)).catch(() => undefined);
}
