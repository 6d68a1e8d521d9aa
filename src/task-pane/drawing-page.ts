/** A separate page for a drawing from the pane, used if the pane cannot save files or has too little room. */
import { make, replace } from './dom';
import { drawingsOf } from './drawings/drawings-of';
import { takeOver } from './drawings/hand-over';
import { pictureOf } from './drawings/larger';
import { createSavePanel } from './drawings/save-panel';
import { createMessages, sentenceOf } from './messages';
import { createWork } from './work';

const nothing = 'This page shows a drawing from the Siltstead task pane; open it from there.';
const mostShown = 50;

async function show(place: HTMLElement): Promise<void> {
  const code = location.hash.slice(1);
  if (code === '') {
    replace(place, make('p', {}, nothing));
    return;
  }
  try {
    const request = await takeOver(code);
    const drawings = drawingsOf(request);
    const { notify, element: messages } = createMessages();
    const { work, element: workPlace } = createWork(notify);
    const saving = createSavePanel(notify, work);
    saving.offer(drawings);
    document.title = `${drawings[0]?.title ?? 'Drawing'} - Siltstead`;
    replace(
      place,
      messages,
      workPlace,
      saving.element,
      ...drawings
        .slice(0, mostShown)
        .map((drawing) =>
          make(
            'section',
            {},
            make('h2', {}, drawing.title),
            make('figure', { class: 'drawing' }, pictureOf(drawing)),
            make('ul', { class: 'drawing-notes' }, ...drawing.notes.map((note) => make('li', {}, note))),
          ),
        ),
    );
  } catch (error) {
    replace(place, make('p', {}, sentenceOf(error)));
  }
}

const place = document.getElementById('drawing');
if (place !== null) {
  void show(place);
  addEventListener('hashchange', () => void show(place));
}
