import { costCompare, costLines, costRunning } from '../../formulas/cost/cost';
import { HOUR } from '../../formulas/numeric/time';
import { define } from '../define';

const definition = 'Definition';

export const costRows = [
  define({
    name: 'COST.LINES',
    summary: 'Cost of a materials list in whole packs, with a total row.',
    units: false,
    arguments: {
      items: {
        table: {
          item: { text: true },
          quantity: { kind: 'number', atLeast: 0 },
          unit: { text: true, blank: true },
        },
        meaning: 'rows of name, quantity and, if you like, unit, such as PLAN.PARTS gives',
      },
      prices: {
        table: {
          item: { text: true },
          packSize: { kind: 'number', above: 0 },
          packPrice: { kind: 'money', atLeast: 0 },
          unit: { text: true, blank: true },
        },
        meaning: 'rows of name, pack size, pack price and, if you like, unit',
      },
      allowance: { kind: 'share', atMost: 10, default: 0, meaning: 'extra share to buy' },
    },
    result: {
      rows: {
        item: { text: true },
        needed: { kind: 'number', blank: true },
        packs: { mixed: true },
        cost: { kind: 'money', blank: true },
      },
    },
    compute: ({ items, prices, allowance }) =>
      costLines(items, prices, allowance).map((line) => ({ ...line, packs: line.packs ?? '' })),
    formula: 'needed = quantity × (1 + allowance); packs = needed / pack size, rounded up; cost = packs × price',
    notes: [
      'The row of an item without a price says so, and the total row counts such items: they never count as zero without a word.',
    ],
    sources: [definition],
    example: { formula: '=SILT.COST.LINES({"rivets",130,"each"},{"rivets",50,6,"each"})', gives: 'one row per item' },
  }),
  define({
    name: 'COST.COMPARE',
    summary: 'Building or buying: cost each and in all, money saved and share saved, with your own hours.',
    units: false,
    arguments: {
      built: { kind: 'money', atLeast: 0, meaning: 'cost of materials for one' },
      bought: { kind: 'money', above: 0, meaning: 'price to buy one' },
      count: { kind: 'count', atLeast: 1, whole: true, meaning: 'how many' },
      hours: { kind: 'hours', atLeast: 0, default: 0, meaning: 'your own hours for one' },
      wage: { kind: 'money', atLeast: 0, default: 0, meaning: 'what an hour of yours is worth' },
    },
    result: {
      row: {
        each: { kind: 'money' },
        all: { kind: 'money' },
        saved: { kind: 'money' },
        shareSaved: { kind: 'share' },
      },
    },
    compute: ({ built, bought, count, hours, wage }) => costCompare(built, bought, count, hours, wage),
    formula: 'each = built + hours × wage; saved = count × (bought - each); share saved = (bought - each) / bought',
    notes: ['Negative if buying is cheaper.'],
    sources: [definition],
    example: { formula: '=SILT.COST.COMPARE(180,950,4,10,20)', gives: '380, 1520, 2280, 0.6' },
    unpublished: 'A sum of what the user gives.',
  }),
  define({
    name: 'COST.RUNNING',
    summary: 'Cost of electricity a year for a motor.',
    arguments: {
      power: { kind: 'power', atLeast: 0, meaning: 'electrical power' },
      hoursADay: { kind: 'hours', atLeast: 0, atMost: 24 * HOUR, per: 'day', meaning: 'hours it runs a day' },
      price: { kind: 'price of energy', atLeast: 0, meaning: 'price of a kWh' },
    },
    result: { scalar: 'money' },
    compute: ({ power, hoursADay, price }) => costRunning(power, hoursADay, price),
    formula: 'money = power × hours × 365 × price',
    sources: [definition],
    example: { formula: '=SILT.COST.RUNNING("metric",100,24,0.15)', gives: '131.4' },
  }),
];
