import { cutSheets } from '../../formulas/cut/cut-plan';
import { define } from '../define';
import { laidColumns, planRows } from '../laid-rows';
import { patterns } from '../pattern-argument';

const stockArguments = {
  sheetLength: { kind: 'dimension', above: 0, meaning: 'length of a sheet' },
  sheetWidth: { kind: 'dimension', above: 0, meaning: 'width of a sheet' },
  gap: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'distance between pieces and from the sheet’s edge' },
  effort: {
    kind: 'number',
    atLeast: 1,
    atMost: 64,
    default: 1,
    meaning: 'length of the search as a multiple of the usual',
  },
} as const;

const care = 'Sheet edges are sharp: wear gloves and goggles. Check one piece on paper before you cut the sheet.';
const sources = [
  'Bennell and Oliveira, Journal of the Operational Research Society 60:S93 (2009): bottom-left placement of true shapes',
  'Li and Milenkovic, European Journal of Operational Research 84:539 (1995): all pieces moved together by linear programs',
  'Egeblad, Nielsen and Odgaard, European Journal of Operational Research 183:1249 (2007): overlaps that come to weigh more',
];

export const cutRows = [
  define({
    name: 'CUT.PLAN',
    search: true,
    summary: 'Places the pieces of pattern rows on sheets, nested by their true shapes.',
    arguments: { patterns: { ...patterns, faulty: 'kept' }, ...stockArguments },
    result: { rows: laidColumns },
    compute: ({ patterns: rows, effort, ...stock }, profile) => planRows(rows, stock, effort, profile),
    formula: 'a search over rotations, orders and places, limited by steps and not by time',
    notes: [
      'For a sector, x and y are the arc center and direction is that of the center line, counter-clockwise from the sheet’s length. For a rectangle, x and y are its lower-left corner on the sheet, and direction is 0 or 90.',
      'Pattern rows count from the first row below the headings. The same rows give the same plan on any machine.',
      'Blank rows are skipped but counted. If a row cannot be placed (it has an error, its numbers disagree, or its piece does not fit on the sheet in any rotation), the other rows are still placed. It comes last, with its number and, under sheet, `does not fit` or `not laid` and the reason.',
      care,
    ],
    sources,
    example: {
      formula: '=SILT.CUT.PLAN("US",SILT.CONE.PATTERN("US",{22.5;20;18},4,{9.25;8;7},2,0.75),96,48,0.25,1,TRUE)',
      gives: 'one row per piece',
    },
  }),
  define({
    name: 'CUT.SHEETS',
    search: true,
    summary: 'Sheets to buy for a cut plan, and how much of them the plan uses.',
    arguments: { patterns, ...stockArguments },
    result: {
      row: {
        sheets: { kind: 'count' },
        areaUsed: { kind: 'area' },
        areaBought: { kind: 'area' },
        shareUsed: { kind: 'share' },
        lengthUsed: { kind: 'dimension', heading: 'length used of the last sheet' },
      },
    },
    compute: ({ patterns: rows, effort, ...stock }, profile) => cutSheets(rows, stock, { effort, under: profile.text }),
    formula: 'totals of CUT.PLAN for the same arguments',
    notes: ['A table with a row that cannot be placed is refused, because you would buy too few sheets.', care],
    sources,
    example: {
      formula: '=SILT.CUT.SHEETS("US",SILT.CONE.PATTERN("US",22.5,4,9.25,2,0.75),96,48)',
      gives: '1, 3.92, 32, 0.122, 15.7',
    },
  }),
];
