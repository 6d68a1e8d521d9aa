import { planDates } from '../../formulas/plan/plan-dates';
import { define } from '../define';

const days = { kind: 'days', atLeast: 0 } as const;

export const planDatesRow = define({
  name: 'PLAN.DATES',
  summary: 'Build calendar of a settling drum: leak tests, cures, leaching, first fill.',
  units: false,
  arguments: {
    start: { kind: 'date', meaning: 'day of the first leak test' },
    baseDays: { ...days, default: 'base cure', meaning: 'days for the base mix to cure' },
    mortarDays: { ...days, default: 'mortar cure', meaning: 'days for the mortar to cure' },
    sealantDays: { ...days, default: 'sealant cure', meaning: 'days for the sealant to cure; 0 for none' },
    leachDays: { ...days, default: 'leach', meaning: 'days of leaching, with water changes' },
  },
  result: { rows: { step: { text: true }, date: { kind: 'date' }, note: { text: true } } },
  compute: ({ start, baseDays, mortarDays, sealantDays, leachDays }) =>
    planDates(start, baseDays, mortarDays, sealantDays, leachDays),
  formula: 'each step begins when the step before it has had its days',
  notes: [
    'The makers’ sheets for cement, mortar and sealant come first; cold slows every cure.',
    'Fresh cement raises pH: leach, change the water, and test before any fish.',
  ],
  sources: ['Common practice, no source'],
  example: { formula: '=SILT.PLAN.DATES("2026-05-04")', gives: 'one row per step' },
  unpublished: 'Common practice: cure times are the makers’.',
});
