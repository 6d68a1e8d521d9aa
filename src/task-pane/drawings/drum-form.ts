import type { CellScalar } from '../../hosts/workbook-model';
import { readProfile } from '../../units/profile';
import { freshId, make, replace } from '../dom';
import { shownFigure } from '../shown-figure';
import { drumWords } from './drum-words';
import type { DrumFigures } from './recognition';
import { type DrumField, type DrumRequest, drumFields } from './request';

export interface DrumForm {
  readonly element: HTMLDetailsElement;
  /** Puts figures from the sheet into the form; where they are those of the same row again, what was typed over them stays. */
  readonly fill: (figures: DrumFigures, units: string, isAgain: boolean) => void;
  /**
   * Follows the workbook to other units: figures from a sheet are removed, because it may be another workbook's, and
   * numbers typed here keep the unit in which they were typed.
   */
  readonly inUnits: (units: string) => void;
  /** Begins anew, for another workbook. */
  readonly clear: (units: string) => void;
  /** Says beside a field what is wrong with its figure, and nothing beside the others. */
  readonly complain: (field: DrumField | undefined, sentence: string) => void;
  /** The figures in the form; undefined while diameter or depth is missing. */
  readonly request: () => DrumRequest | undefined;
}

/**
 * A form for the figures of a settling drum; each is read like a cell, so that `22 1/2 in` works as well as a number.
 */
export function createDrumForm(units: string, changed: () => void): DrumForm {
  let profile = units;
  const inputs = new Map<DrumField, HTMLInputElement>();
  /** The figures of the sheet themselves; their fields show computed ones with few digits. */
  const fromSheet = new Map<DrumField, CellScalar>();
  const typedOver = new Set<DrumField>();
  const symbols: HTMLElement[] = [];
  const faults = new Map<DrumField, HTMLElement>();
  const fields = drumFields.map((field) => {
    const { label, hint, required } = drumWords[field];
    const id = freshId('drum');
    const fault = make('p', { class: 'field-fault', id: `${id}-fault` });
    faults.set(field, fault);
    const input = make('input', {
      id,
      type: 'text',
      autocomplete: 'off',
      'aria-describedby': fault.id,
      ...(required ? { required: true } : {}),
    });
    input.addEventListener('input', () => {
      fromSheet.delete(field);
      typedOver.add(field);
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
      fault,
    );
  });
  const showUnits = (): void => {
    const { symbol } = readProfile(profile).units.dimension;
    for (const one of symbols) replace(one, symbol);
  };
  const clearFromSheet = (): void => {
    for (const field of fromSheet.keys()) setText(field, '');
    fromSheet.clear();
  };
  const setText = (field: DrumField, text: string): void => {
    const input = inputs.get(field);
    if (input !== undefined) input.value = text;
  };
  const complain = (at: DrumField | undefined, sentence: string): void => {
    for (const [field, fault] of faults) {
      replace(fault, field === at ? sentence : '');
      if (field === at) inputs.get(field)?.setAttribute('aria-invalid', 'true');
      else inputs.get(field)?.removeAttribute('aria-invalid');
    }
  };
  showUnits();
  return {
    element: make('details', { class: 'drum' }, make('summary', {}, 'A settling drum in section'), ...fields),
    fill: (figures, next, isAgain) => {
      profile = next;
      showUnits();
      // Figures of another drum are removed; those typed here stay.
      clearFromSheet();
      if (!isAgain) typedOver.clear();
      for (const [field, value] of Object.entries(figures) as [DrumField, CellScalar][]) {
        if (typedOver.has(field)) continue;
        setText(field, shownFigure(String(value)));
        fromSheet.set(field, value);
      }
    },
    inUnits: (next) => {
      if (next === profile) return;
      clearFromSheet();
      const { symbol } = readProfile(profile).units.dimension;
      for (const input of inputs.values()) {
        if (typeof asTyped(input.value) === 'number') input.value = `${input.value.trim()} ${symbol}`;
      }
      profile = next;
      showUnits();
    },
    clear: (next) => {
      for (const input of inputs.values()) input.value = '';
      fromSheet.clear();
      typedOver.clear();
      complain(undefined, '');
      profile = next;
      showUnits();
    },
    complain,
    request: () => {
      const figures = Object.fromEntries(
        [...inputs].flatMap(([field, { value }]) =>
          value.trim() === '' ? [] : [[field, fromSheet.get(field) ?? asTyped(value)]],
        ),
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
