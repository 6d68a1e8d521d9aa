import { make, makeButton } from '../task-pane/dom';

let asked = 0;

/** Asks a question over the whole page; undefined if it was closed with Escape. The last answer is the harmless one. */
export function askInPage<T extends string>(sentence: string, answers: readonly T[]): Promise<T | undefined> {
  return new Promise((resolve) => {
    asked += 1;
    const id = `asked-${asked}`;
    let answer: T | undefined;
    const buttons = answers.map((word) =>
      makeButton(word, () => {
        answer = word;
        dialog.close();
      }),
    );
    const dialog = make(
      'dialog',
      { id: 'asked', class: 'asked', role: 'alertdialog', 'aria-labelledby': id },
      make('p', { id }, sentence),
      make('div', { class: 'buttons' }, ...buttons),
    );
    dialog.addEventListener('close', () => {
      dialog.remove();
      resolve(answer);
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}
