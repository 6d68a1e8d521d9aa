import { make, replace } from './dom';
import { sentenceIn } from './user-error';

export type Tone = 'done' | 'note' | 'fault';
export type Notify = (
  tone: Tone,
  sentence: string,
  button?: { readonly label: string; readonly press: () => void },
) => void;

export interface Question {
  /** One sentence that says what to decide. */
  readonly sentence: string;
  /** The answers, the harmless one last; pressing Escape gives undefined. */
  readonly answers: readonly string[];
}
export type Ask = (question: Question) => Promise<string | undefined>;

export interface Messages {
  readonly element: HTMLElement;
  readonly notify: Notify;
  readonly ask: Ask;
  /** Removes message and question, because another workbook was opened; the question counts as declined. */
  readonly dismiss: () => void;
}

const marks: Readonly<Record<Tone, string>> = { done: '✓', note: 'i', fault: '!' };

/** The line in which the pane speaks, and asks, below the tabs: read out by screen readers, never in the way. */
export function createMessages(): Messages {
  const line = make('div', { class: 'message-line', role: 'status', 'aria-live': 'polite' });
  const question = make('div', { class: 'question-place' });
  const element = make('div', { class: 'messages' }, line, question);
  const notify: Notify = (tone, sentence, button) => {
    const close = make('button', { type: 'button', class: 'quiet', 'aria-label': 'Close this message' }, '×');
    close.addEventListener('click', () => replace(line));
    const more = button ? make('button', { type: 'button' }, button.label) : undefined;
    more?.addEventListener('click', () => {
      replace(line);
      button?.press();
    });
    replace(
      line,
      make(
        'div',
        { class: `message ${tone}` },
        make('span', { class: 'mark', 'aria-hidden': 'true' }, marks[tone]),
        make('p', {}, sentence),
        ...(more ? [more] : []),
        close,
      ),
    );
  };
  let unanswered: () => void = () => undefined;
  const ask: Ask = (asked) => {
    unanswered();
    const { answer, giveUp } = askIn(question, asked);
    unanswered = giveUp;
    return answer;
  };
  const dismiss = (): void => {
    replace(line);
    unanswered();
  };
  return { element, notify, ask, dismiss };
}

let asked = 0;

interface Asked {
  readonly answer: Promise<string | undefined>;
  readonly giveUp: () => void;
}

/** Shows a question; giving it up gives undefined, unless it has already been answered. */
function askIn(place: HTMLElement, { sentence, answers }: Question): Asked {
  const before = document.activeElement;
  asked += 1;
  const id = `question-${asked}`;
  let giveUp: () => void = () => undefined;
  const answer = new Promise<string | undefined>((resolve) => {
    let open = true;
    const finish = (answer: string | undefined): void => {
      if (!open) return;
      open = false;
      replace(place);
      if (before instanceof HTMLElement && before.isConnected) before.focus();
      resolve(answer);
    };
    giveUp = () => finish(undefined);
    const buttons = answers.map((answer) => {
      const button = make('button', { type: 'button' }, answer);
      button.addEventListener('click', () => finish(answer));
      return button;
    });
    const box = make(
      'div',
      { class: 'question', role: 'alertdialog', 'aria-labelledby': id },
      make('p', { id }, sentence),
      make('div', { class: 'buttons' }, ...buttons),
    );
    box.addEventListener('keydown', (event) => {
      if (event.key === 'Escape') finish(undefined);
    });
    replace(place, box);
    buttons[0]?.focus();
  });
  return { answer, giveUp };
}

/** An error as a sentence: what the user can correct has its own, anything else is called a fault of the add-in. */
export function sentenceOf(error: unknown): string {
  const sentence = sentenceIn(error);
  if (sentence !== undefined) return sentence;
  const detail = error instanceof Error ? error.message : String(error);
  return `This is an error in Siltstead; please report it: ${detail.slice(0, 150)}`;
}
