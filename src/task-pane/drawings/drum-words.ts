import type { DrumField } from './request';

interface FieldWords {
  readonly label: string;
  readonly hint?: string;
  readonly required?: true;
  /** Whether 0 is an answer. */
  readonly mayBeNothing?: true;
  /** Headings of a sheet's column that holds it, the better ones first. */
  readonly headings: readonly RegExp[];
}

/** Every figure of a drum in section: how the form asks for it and under which headings a sheet has it. */
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
    label: 'Cone’s bottom above the drum floor',
    mayBeNothing: true,
    headings: [/^(base )?rise/i, /^cone’s foot/i],
  },
  stand: { label: 'Height of the stand', mayBeNothing: true, headings: [/^(height of the )?stand/i] },
  drumHeight: { label: 'Height of the drum', hint: 'floor to rim', headings: [/^drum height/i] },
  container: { label: 'Height of the pail', headings: [/^(height of the )?(pail|container)/i] },
  drainDrop: { label: 'Valve below the stand’s top', headings: [/^drain drop/i, /^valve below/i] },
};
