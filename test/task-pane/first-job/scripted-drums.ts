import type { CellScalar } from '../../../src/hosts/workbook-model';
import type { FieldId } from '../../../src/task-pane/first-job/fields';
import type { ReadyProfile } from '../../../src/workbooks/sheets/sheet-draft';

/** A first job as a person types it, and the same drum as someone types it who fills the ready-made sheets alone. */
export interface ScriptedDrum {
  readonly title: string;
  readonly profile: ReadyProfile;
  readonly typed: Readonly<Partial<Record<FieldId, string>>>;
  /** By sheet and address; what is left out stays as the sheet was built. */
  readonly byHand: Readonly<Record<string, CellScalar>>;
}

const start = '2027-03-20';

/** Invented drums. Heights for angles and slants are by the right triangle of the cone's wall. */
export const scriptedDrums: readonly ScriptedDrum[] = [
  {
    title: 'a US drum',
    profile: 'US',
    typed: {
      name: 'Alder',
      held: 'cooking oil',
      diameter: '22 1/2',
      drain: '4',
      angle: '45',
      depth: '18 1/2 in',
      drumHeight: '33',
      start,
    },
    // (22.5 - 4) / 2 = 9.25 at 45 degrees.
    byHand: {
      'Drums!A5': 'Alder',
      'Drums!B5': 'cooking oil',
      'Drums!C5': 22.5,
      'Drums!F5': 4,
      'Drums!G5': 9.25,
      'Drums!H5': 1,
      'Drums!I5': 0.75,
      'Drums!J5': '18 1/2 in',
      'Bank!B7': 33,
    },
  },
  {
    title: 'a metric drum',
    profile: 'metric',
    typed: {
      name: 'Birch',
      held: 'grape juice',
      diameter: '57.2 cm',
      drain: '100',
      height: '240',
      depth: '480',
      clearance: '2.5',
      sheetLength: '2440',
      sheetWidth: '1220',
      drumHeight: '850',
      parts: '5',
      legs: '3',
      start,
    },
    byHand: {
      'Drums!A5': 'Birch',
      'Drums!B5': 'grape juice',
      'Drums!C5': '57.2 cm',
      'Drums!F5': 100,
      'Drums!G5': 240,
      'Drums!H5': 1,
      'Drums!I5': 20,
      'Drums!J5': 480,
      'Drums!C17': 2.5,
      'Drums!C18': 2440,
      'Drums!C19': 1220,
      'Base mix!B17': 5,
      'Stand and ports!B21': 3,
      'Bank!B7': 850,
    },
  },
  {
    title: 'a drum of which only the girth is known',
    profile: 'US',
    typed: {
      name: 'Cedar',
      held: 'vinegar',
      girth: '72',
      wall: '1/8',
      drain: '3 in',
      slant: '15',
      depth: '17',
      drumHeight: '34 1/4',
      start,
    },
    // 72 / π - 2/8 = 22.6683 across; the square root of 15² - ((22.6683 - 3) / 2)².
    byHand: {
      'Drums!A5': 'Cedar',
      'Drums!B5': 'vinegar',
      'Drums!D5': 72,
      'Drums!E5': 0.125,
      'Drums!F5': '3 in',
      'Drums!G5': Math.sqrt(15 ** 2 - ((72 / Math.PI - 0.25 - 3) / 2) ** 2),
      'Drums!H5': 1,
      'Drums!I5': 0.75,
      'Drums!J5': 17,
      'Bank!B7': 34.25,
    },
  },
  {
    title: 'a cone in two pieces',
    profile: 'metric',
    typed: {
      name: 'Dill',
      held: 'olives',
      diameter: '580',
      drain: '50 mm',
      angle: '60',
      depth: '400',
      pieces: '2',
      lap: '25',
      gap: '8',
      rivetSpacing: '35',
      drumHeight: '1 m',
      start,
    },
    // (580 - 50) / 2 × tan 60° = 265 × √3.
    byHand: {
      'Drums!A5': 'Dill',
      'Drums!B5': 'olives',
      'Drums!C5': 580,
      'Drums!F5': '50 mm',
      'Drums!G5': 265 * Math.sqrt(3),
      'Drums!H5': 2,
      'Drums!I5': 25,
      'Drums!J5': 400,
      'Drums!C20': 8,
      'Patterns!F26': 35,
      'Bank!B7': '1 m',
    },
  },
];
