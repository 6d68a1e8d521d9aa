import type { Block } from '../../hosts/sheet-host';
import { make, makeButton, replace } from '../dom';
import { sentenceOf } from '../messages';
import { stillCalculating } from '../still-calculating';
import type { PaneContext, ViewPart } from '../view';
import { watchCells } from '../watch-cells';
import { drawingsOf } from './drawings-of';
import { DrumFieldError } from './drum-drawing';
import { createDrumForm } from './drum-form';
import { handOver } from './hand-over';
import type { PacketFormat } from './job-packet';
import { longerPlan } from './longer-plan';
import { insertMarkingOut, removeMarkingOut } from './marking-out';
import type { Recognition, Recognized } from './recognition';
import { recognize } from './recognize';
import { savePacket } from './save-packet';
import { createSavePanel } from './save-panel';
import { createShownDrawing } from './shown-drawing';

const invitation =
  'Select a pattern row, a cut plan, a drum’s row or its ports, or a column of scenarios in the sheet to draw it here.';
const aloneInvitation =
  'There is no spreadsheet here to select cells in; type the figures of a settling drum below to draw it.';

/** Draws what is selected, saves it, or marks it out; a settling drum also from figures typed here. */
export function createDrawings(context: PaneContext): ViewPart {
  const { host, notify, work, units } = context;
  const line = make('p', { class: 'recognition', role: 'status' }, host === undefined ? aloneInvitation : invitation);
  let lastShown: Recognized | undefined;
  let ofForm = false;

  const shown = createShownDrawing((recognized) => attempt(() => draw(recognized)));
  const saving = createSavePanel(notify, work);
  const outside = makeButton('Open in the browser', () => void openOutside());
  const marking = makeButton('Insert marking-out table', () => void markOut());
  const longer = makeButton('Search longer', () => void searchMore());
  longer.title = 'Search for a shorter cut plan at up to 64 times the effort';
  const more = make('div', { class: 'buttons' }, outside, marking, longer);
  const actions = make('div', { hidden: true }, saving.element, more);
  const packet = packetButtons((format) => host && void savePacket(context, host, format));
  packet.hidden = host === undefined || host.downloads === false;
  const form = createDrumForm(units.profileText(), () => drawForm());

  const forget = (sentence: string): void => {
    lastShown = undefined;
    ofForm = false;
    shown.clear();
    actions.hidden = true;
    replace(line, sentence);
  };

  const draw = (recognized: Recognized): void => {
    const drawings = drawingsOf(recognized.request);
    shown.show(recognized, drawings);
    lastShown = recognized;
    replace(line);
    actions.hidden = false;
    saving.element.hidden = host?.downloads === false;
    marking.hidden =
      host === undefined || recognized.request.what !== 'patterns' || recognized.request.rows.length !== 1;
    longer.hidden = host === undefined || recognized.cutSearch === undefined;
    saving.offer(drawings);
  };

  /** Runs something that may fail with a sentence, which then appears in place of the drawing. */
  const attempt = (job: () => void): void => {
    try {
      job();
    } catch (error) {
      forget(sentenceOf(error));
      if (error instanceof DrumFieldError) form.complain(error.field, error.message);
    }
  };

  const drawForm = (from = ''): void => {
    form.complain(undefined, '');
    const request = form.request();
    if (request === undefined) {
      forget('Give the drum’s inside diameter and the depth of water to draw it.');
      return;
    }
    attempt(() => {
      draw({ request, from });
      ofForm = true;
    });
  };

  /** Of cells that are only looked at again, the scenario that was chosen stays. */
  const asChosen = (recognized: Recognized): Recognized => {
    const chosen = lastShown?.from === recognized.from ? lastShown.others?.chosen : undefined;
    const { others } = recognized;
    if (chosen === undefined || others === undefined || chosen >= others.titles.length) return recognized;
    return others.recognizeOther(chosen);
  };

  const follow = (recognition: Recognition, isAgain: boolean): void => {
    if ('recognized' in recognition) {
      ofForm = false;
      attempt(() => draw(isAgain ? asChosen(recognition.recognized) : recognition.recognized));
    } else if ('drum' in recognition) {
      form.fill(recognition.drum, recognition.units ?? units.profileText(), isAgain);
      form.element.open = true;
      drawForm(recognition.from);
      // Figures from a row follow the selection; those typed into the form stay.
      ofForm = false;
    } else if (!ofForm) forget(recognition.sentence);
  };

  let looks = 0;
  let lookedAt = '';
  const recognizeSelection = async (selection: Block): Promise<void> => {
    if (host === undefined) return;
    looks += 1;
    const mine = looks;
    try {
      const calculating = await stillCalculating(host, 'the drawing appears when it is done');
      if (calculating !== undefined) {
        // The host calls again when it has calculated, and the selection is recognized again.
        if (mine === looks) forget(calculating);
        return;
      }
      const names = await host.names();
      const profile = units.now().units?.profile?.text;
      const recognition = await recognize(selection, {
        host,
        functionLibrary: context.functionLibrary,
        names,
        units: profile,
      });
      // Skip the result if the selection has changed meanwhile.
      if (mine !== looks) return;
      const place = JSON.stringify([selection.sheet, selection.range]);
      follow(recognition, place === lookedAt);
      lookedAt = place;
    } catch (error) {
      if (mine === looks) forget(sentenceOf(error));
    }
  };

  const openOutside = async (): Promise<void> => {
    if (lastShown === undefined) return;
    try {
      const address = `${context.page('drawing.html')}#${await handOver(lastShown.request)}`;
      if (host === undefined) window.open(address, '_blank', 'noopener');
      else host.openPage(address);
      notify('note', 'The drawing opens larger in the browser; save or print it there.');
    } catch (error) {
      notify('fault', sentenceOf(error));
    }
  };

  const markOut = async (): Promise<void> => {
    const recognized = lastShown;
    if (host === undefined || recognized?.request.what !== 'patterns') return;
    const { names, units: under } = recognized.request;
    const own = units.now().units?.profile?.text === under ? undefined : under;
    await work('Inserting the marking-out table', async ({ finishing }) => {
      finishing();
      const sheet = await insertMarkingOut(host, { from: recognized.from, name: names[0] ?? '', units: own });
      notify('done', `The marking-out table is on the sheet ${sheet}.`, {
        label: 'Undo',
        press: () => void work('Removing the marking-out table', () => removeMarkingOut(host, sheet, recognized.from)),
      });
    });
  };

  const searchMore = async (): Promise<void> => {
    const search = lastShown?.cutSearch;
    if (host !== undefined && search !== undefined) await longerPlan(search, { ...context, host });
  };

  const lookAgain = (): void => {
    if (host === undefined) return;
    host.selection().then(recognizeSelection, () => undefined);
  };
  const followUnits = (): void => {
    form.inUnits(units.profileText());
    lookAgain();
  };
  let stops: (() => void)[] = [];
  return {
    element: make(
      'div',
      { class: 'drawings' },
      make('h2', {}, 'Drawings'),
      line,
      shown.element,
      actions,
      packet,
      form.element,
    ),
    shown: () => {
      stops = [context.onSelection((selection) => void recognizeSelection(selection)), units.onChanged(followUnits)];
      form.inUnits(units.profileText());
      if (host !== undefined) stops.push(watchCells(host, lookAgain, 300));
    },
    hidden: () => {
      for (const stop of stops) stop();
      stops = [];
    },
    forget: () => {
      // What is still being looked at is the other workbook's.
      looks += 1;
      lookedAt = '';
      form.clear(units.profileText());
      forget(host === undefined ? aloneInvitation : invitation);
      if (stops.length > 0) lookAgain();
    },
  };
}

/** Saves the papers of the whole job, as pages or as a workbook. */
function packetButtons(save: (format: PacketFormat) => void): HTMLElement {
  const pages = makeButton('Save job packet as PDF', () => save('pdf'));
  pages.title = 'All papers of a cone cut plan: shop sheets, cut plan, shopping list, full-size patterns';
  const workbook = makeButton('Save job packet as a workbook', () => save('xlsx'));
  workbook.title = 'The tables of the packet as an .xlsx file of values, without formulas';
  return make('div', { class: 'buttons' }, pages, workbook);
}
