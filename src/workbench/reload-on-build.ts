const everyMs = 1_000;

/** While developing: loads the page again once the build has written another script. Nothing is kept for offline use. */
export function reloadOnBuild(): void {
  let first: string | null | undefined;
  setInterval(async () => {
    const response = await fetch('workbench.js', { method: 'HEAD', cache: 'no-store' }).catch(() => undefined);
    if (!response?.ok) return;
    const tag = response.headers.get('etag');
    first ??= tag;
    if (tag !== first) location.reload();
  }, everyMs);
}
