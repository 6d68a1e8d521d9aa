import type { DrumField } from './request';

interface FieldWords {
  readonly label: string;
  readonly hint?: string;
  readonly required?: true;
  /** Whether 0 is allowed. */
  readonly mayBeNothing?: true;
  /** Headings of the columns that hold it, the best first. */
  readonly headings: readonly RegExp[];
}

/** Every figure of a drum section: its label in the form and its headings in sheets. */
export const drumWords: Readonly<Record<DrumField, FieldWords>> = {
  drumDiameter: {
    label: 'Inside diameter of the drum',
    required: true,
    headings: [/^diameter used/i, /^inside diameter/i, /^drum diameter/i, /^diameter/i],
  },
  depth: {
    label: 'Water above the cone',
    hint: 'above the floor if there is no cone',
    required: true,
    headings: [/^water above/i, /^depth/i, /^water depth/i],
  },
  coneHeight: { label: 'Height of the cone', mayBeNothing: true, headings: [/^cone height/i] },
  coneTop: { label: 'Cone’s diameter at the top', hint: 'as wide as the drum', headings: [/^cone top/i] },
  coneBottom: {
    label: 'Cone’s diameter at the bottom',
    mayBeNothing: true,
    headings: [/^drain bore/i, /^cone bottom/i, /^drain/i],
  },
  rise: {
    label: 'Cone’s foot above the drum floor',
    mayBeNothing: true,
    headings: [/^(base )?rise/i, /^cone’s foot/i],
  },
  stand: { label: 'Height of the stand', mayBeNothing: true, headings: [/^(height of the )?stand/i] },
  drumHeight: { label: 'Height of the drum', hint: 'floor to rim', headings: [/^drum height/i] },
  container: { label: 'Height of the pail', headings: [/^(height of the )?(pail|container)/i] },
  drainDrop: { label: 'Valve below the stand’s top', headings: [/^drain drop/i, /^valve below/i] },
};
