import { today } from '../task-pane/today';

/**
 * Keeps fields of a date at today, also on a page that stays open overnight, as it does on a phone; a day that was chosen by
 * hand stays. `changed` is called on a new day.
 */
export function followDay(fields: readonly HTMLInputElement[], changed: () => void): void {
  let shown = today();
  for (const field of fields) field.value = shown;
  const follow = (): void => {
    const now = today();
    if (document.visibilityState === 'hidden' || now === shown) return;
    for (const field of fields) if (field.value === shown) field.value = now;
    shown = now;
    changed();
  };
  for (const event of ['visibilitychange', 'pageshow', 'focus', 'pointerdown', 'keydown']) {
    addEventListener(event, follow, { capture: true });
  }
}
