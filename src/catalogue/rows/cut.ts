import { cutSheets } from '../../formulas/cut/cut-plan';
import { define } from '../define';
import { laidColumns, planRows } from '../laid-rows';
import { patterns } from '../pattern-argument';

const stockArguments = {
  sheetLength: { kind: 'dimension', above: 0, meaning: 'length of a sheet' },
  sheetWidth: { kind: 'dimension', above: 0, meaning: 'width of a sheet' },
  gap: { kind: 'dimension', atLeast: 0, default: 0, meaning: 'kept between pieces and from the sheet’s edge' },
  effort: { kind: 'number', atLeast: 1, atMost: 64, default: 1, meaning: 'length of the search, times the usual' },
} as const;

const care = 'Sheet edges cut: gloves and goggles. Check one piece on paper before you cut the sheet.';
const sources = [
  'Bennell and Oliveira, Journal of the Operational Research Society 60:S93 (2009): bottom-left placement of true shapes',
];

export const cutRows = [
  define({
    name: 'CUT.PLAN',
    summary: 'Lays pattern rows on sheets, true shapes nested: where each piece goes.',
    arguments: { patterns: { ...patterns, faulty: 'kept' }, ...stockArguments },
    result: { rows: laidColumns },
    compute: ({ patterns: rows, effort, ...stock }, profile) => planRows(rows, stock, effort, profile),
    formula: 'a search over turns, orders and places, bounded by steps and not by a clock',
    notes: [
      'For a sector x and y are the arc center and direction is the center line’s, counter-clockwise from the sheet’s length; for a rectangle x and y are its lower-left corner as it lies, and direction 0 or 90.',
      'Pattern rows are counted from the first under the headings. The same rows give the same plan on any machine.',
      'Blank rows are skipped and counted. A row that cannot be laid (an error in it, numbers that disagree, a piece that goes on the sheet at no turn) leaves the others whole: it comes last, with its number and, under sheet, the words `does not fit` or `not laid` and why.',
      care,
    ],
    sources,
    example: {
      formula: '=SILT.CUT.PLAN("US",SILT.CONE.PATTERN("US",{22.5;20;18},4,{9.25;8;7},2,0.75),96,48,0.25,1,TRUE)',
      gives: 'a row a piece',
    },
  }),
  define({
    name: 'CUT.SHEETS',
    summary: 'Sheets to buy for a cut plan, and how much of them is used.',
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
    formula: 'totals of the plan that CUT.PLAN gives for the same arguments',
    notes: ['A table with a row that cannot be laid is refused, as a count without it would buy too little.', care],
    sources,
    example: {
      formula: '=SILT.CUT.SHEETS("US",SILT.CONE.PATTERN("US",22.5,4,9.25,2,0.75),96,48)',
      gives: '1, 3.92, 32, 0.122, 15.9',
    },
  }),
];
