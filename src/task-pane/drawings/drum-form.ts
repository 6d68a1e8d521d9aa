import type { CellScalar } from '../../hosts/workbook-model';
import { readProfile } from '../../units/profile';
import { freshId, make, replace } from '../dom';
import { drumWords } from './drum-words';
import type { DrumFigures } from './recognition';
import { type DrumField, type DrumRequest, drumFields } from './request';

export interface DrumForm {
  readonly element: HTMLDetailsElement;
  /** Puts figures from the sheet into the form. */
  readonly fill: (figures: DrumFigures, units: string) => void;
  /** The figures in the form; undefined while diameter or depth is missing. */
  readonly request: () => DrumRequest | undefined;
}

/**
 * A form for the figures of a settling drum; each is read like a cell, so that `22 1/2 in` works as well as a number.
 */
export function createDrumForm(units: string, changed: () => void): DrumForm {
  let profile = units;
  const inputs = new Map<DrumField, HTMLInputElement>();
  const fromSheet = new Set<DrumField>();
  const symbols: HTMLElement[] = [];
  const fields = drumFields.map((field) => {
    const { label, hint, required } = drumWords[field];
    const id = freshId('drum');
    const input = make('input', { id, type: 'text', autocomplete: 'off', ...(required ? { required: true } : {}) });
    input.addEventListener('input', () => {
      fromSheet.delete(field);
      changed();
    });
    inputs.set(field, input);
    const symbol = make('span', { class: 'unit' });
    symbols.push(symbol);
    const note = required ? 'needed' : hint;
    const extra = note === undefined ? [] : [make('span', { class: 'optional' }, ` (${note})`)];
    return make(
      'div',
      { class: 'field' },
      make('label', { for: id }, label, ...extra),
      make('div', { class: 'control' }, input, symbol),
    );
  });
  const showUnits = (): void => {
    const { symbol } = readProfile(profile).units.dimension;
    for (const one of symbols) replace(one, symbol);
  };
  showUnits();
  return {
    element: make('details', { class: 'drum' }, make('summary', {}, 'A settling drum in section'), ...fields),
    fill: (figures, next) => {
      profile = next;
      showUnits();
      // Figures of another drum are removed; those typed here stay.
      const fill = (field: DrumField, text: string): void => {
        const input = inputs.get(field);
        if (input !== undefined) input.value = text;
      };
      for (const field of fromSheet) fill(field, '');
      fromSheet.clear();
      for (const [field, value] of Object.entries(figures) as [DrumField, CellScalar][]) {
        fill(field, String(value));
        fromSheet.add(field);
      }
    },
    request: () => {
      const figures = Object.fromEntries(
        [...inputs].flatMap(([field, { value }]) => (value.trim() === '' ? [] : [[field, asTyped(value)]])),
      );
      if (figures.drumDiameter === undefined || figures.depth === undefined) return undefined;
      return { what: 'drum', units: profile, figures };
    },
  };
}

/** A bare number is a number, as in a cell. */
function asTyped(text: string): number | string {
  const plain = text.trim();
  return /^\d*\.?\d+$/.test(plain) ? Number(plain) : plain;
}
