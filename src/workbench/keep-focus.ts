/**
 * The grid gives the focus to its editor each time the selected cell changes, also when it is the pane that changes it.
 * Somebody who works in the pane or the bar keeps the focus there; the grid gets it by a click in it, by Tab, or when
 * asked for.
 */
export class FocusKeeper {
  private readonly grid: HTMLElement;
  private outside: HTMLElement | undefined;

  constructor(grid: HTMLElement) {
    this.grid = grid;
    grid.addEventListener('pointerdown', () => this.letIn(), { capture: true });
    addEventListener('keydown', ({ key }) => key === 'Tab' && this.letIn(), { capture: true });
    addEventListener('focusin', ({ target }) => this.follow(target), { capture: true });
  }

  /** From now on the grid may have the focus, until it is put elsewhere. */
  letIn(): void {
    this.outside = undefined;
  }

  private follow(target: EventTarget | null): void {
    if (!(target instanceof HTMLElement)) return;
    if (!this.grid.contains(target)) {
      this.outside = target;
      return;
    }
    if (this.outside?.isConnected) this.outside.focus();
  }
}
