/** An element that the page always has. */
export function part<T extends HTMLElement = HTMLElement>(id: string): T {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no #${id}`);
  return element as T;
}

/** Resolves once the page has shown what has been put into it; a hidden page shows nothing. */
export async function afterFrame(): Promise<void> {
  if (document.visibilityState === 'hidden') return;
  await new Promise<void>((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
}

let hiding: ReturnType<typeof setTimeout> | undefined;

/** Shows one sentence at the foot of the page for a while. */
export function notice(sentence: string): void {
  const line = part('notice');
  line.textContent = sentence;
  line.hidden = false;
  clearTimeout(hiding);
  hiding = setTimeout(() => {
    line.hidden = true;
  }, 12_000);
}

/** Runs something that may fail and shows the error in the page; false if it failed. */
export async function attempt(what: string, work: () => Promise<void> | void): Promise<boolean> {
  try {
    await work();
    return true;
  } catch (thrown) {
    notice(`${what}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
    return false;
  }
}
