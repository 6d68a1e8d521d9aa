export interface Debounced {
  (): void;
  /** Drops a waiting call and ignores later ones. */
  readonly cancel: () => void;
}

/** Calls once for a burst of events, when nothing more has happened for a while. */
export function debounced(call: () => void, quietMs: number | (() => number) = 80): Debounced {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let canceled = false;
  const later = (): void => {
    clearTimeout(timer);
    if (!canceled) timer = setTimeout(call, typeof quietMs === 'number' ? quietMs : quietMs());
  };
  return Object.assign(later, {
    cancel: () => {
      canceled = true;
      clearTimeout(timer);
    },
  });
}
