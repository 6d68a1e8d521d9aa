import type { CellScalar, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { SheetDraft } from './sheet-draft';
import { unitsNames, unitsSheet } from './units-sheet';

interface Claim {
  readonly claim: string;
  readonly formula: string;
  /** A condition on the formula's cell, written as X. */
  readonly holds: string;
}

const is = (figure: number): string => `IFERROR(ABS(X-${figure})<0.000001,FALSE)`;

/** Rows of drums beside the claims: top, bottom and height of three cones; the last one is impossible. */
const drums: readonly (readonly CellScalar[])[] = [
  [22.5, 4, 9.25],
  [20, 4, 8],
  [18, 24, 7],
];

/**
 * What the add-in needs from Excel and only Excel can show, one claim per row. Figures follow from the geometry
 * of the cone, (22.5 - 4) / 2 = 9.25 at 45 degrees, and from exact factors of units.
 */
const claims: readonly Claim[] = [
  { claim: 'a function is found by its dotted name', formula: '=SILT.CONE.ANGLE("US",22.5,4,9.25)', holds: is(45) },
  { claim: 'numbers are read from cells', formula: '=SILT.CONE.ANGLE("US",H5,I5,J5)', holds: is(45) },
  {
    claim: 'the name SiltUnits is the first argument',
    formula: '=SILT.UNIT.LABEL(SiltUnits,"dimension")',
    holds: 'X=IF(LEFT(SiltUnits,2)="US","in","mm")',
  },
  { claim: 'text with a unit is read', formula: '=SILT.UNIT.READ("metric","dimension","3 1/4 in")', holds: is(82.55) },
  { claim: 'a fraction sign is read', formula: '=SILT.UNIT.READ("US","dimension","22½ in")', holds: is(22.5) },
  {
    claim: 'a decimal number keeps all its digits',
    formula: '=SILT.UNIT.READ("US","dimension",0.1)+0.2',
    holds: is(0.3),
  },
  { claim: 'a percentage is a share', formula: '=SILT.UNIT.READ("US","share",32%)', holds: is(0.32) },
  { claim: 'a percentage as text is a share', formula: '=SILT.UNIT.READ("US","share","32 %")', holds: is(0.32) },
  { claim: 'units convert by exact factors', formula: '=SILT.UNIT.CONVERT(1,"in","mm")', holds: is(25.4) },
  {
    claim: 'a result of one row has its columns',
    formula: '=COLUMNS(SILT.CONE.PATTERN("US",22.5,4,9.25))',
    holds: is(10),
  },
  {
    claim: 'a heading row comes first',
    formula: '=ROWS(SILT.CONE.PATTERN("US",22.5,4,9.25,1,0,0,"fit",0,TRUE))',
    holds: is(2),
  },
  {
    claim: 'an argument left out between commas has its default',
    formula: '=INDEX(SILT.CONE.PATTERN("US",22.5,4,9.25,,,,,,),1,9)',
    holds: is(1),
  },
  {
    claim: 'an empty cell that is needed is refused',
    formula: '=ERROR.TYPE(SILT.CONE.ANGLE("US",H9,4,9.25))',
    holds: is(3),
  },
  { claim: 'a refusal is #VALUE!', formula: '=ERROR.TYPE(SILT.CONE.ANGLE("US",4,22.5,-1))', holds: is(3) },
  {
    claim: 'a number in place of the units is refused',
    formula: '=ERROR.TYPE(SILT.CONE.ANGLE(22.5,4,9.25,1))',
    holds: is(3),
  },
  {
    claim: 'a value that no table covers gives #N/A',
    formula: '=ISNA(SILT.PIPE.BORE("US",999))',
    holds: 'X=TRUE',
  },
  {
    claim: 'IFERROR catches an error',
    formula: '=IFERROR(SILT.CONE.ANGLE("US",4,22.5,-1),"caught")',
    holds: 'X="caught"',
  },
  {
    claim: 'a range gives one result per row',
    formula: '=SUM(SILT.CONE.ANGLE("US",H5:H6,I5:I6,J5:J6))',
    holds: is(90),
  },
  {
    claim: 'one bad row does not spoil the others',
    formula: '=COUNT(SILT.CONE.ANGLE("US",H5:H7,I5:I7,J5:J7))',
    holds: is(2),
  },
  {
    claim: 'an array constant is accepted',
    formula: '=SUM(SILT.CONE.ANGLE("US",{22.5;20},4,{9.25;8}))',
    holds: is(90),
  },
  {
    claim: 'a call accepts the result of another call',
    formula: '=SILT.UNIT.READ("US","angle",SILT.CONE.ANGLE("US",22.5,4,9.25))',
    holds: is(45),
  },
  {
    claim: 'the cut plan accepts a pattern row',
    formula: '=INDEX(SILT.CUT.SHEETS("US",SILT.CONE.PATTERN("US",22.5,4,9.25),96,48),1,1)',
    holds: is(1),
  },
  { claim: 'LET keeps a result', formula: '=LET(angle,SILT.CONE.ANGLE("US",22.5,4,9.25),angle+angle)', holds: is(90) },
  {
    claim: 'FILTER accepts a spilled result',
    formula: '=ROWS(FILTER(SILT.UNIT.LIST("US"),INDEX(SILT.UNIT.LIST("US"),0,1)="dimension"))',
    holds: is(1),
  },
  { claim: 'a spill fills the cells below', formula: '=SUM(H12:J12)', holds: 'IFERROR(X>0,FALSE)' },
  { claim: 'a cell can read from a spill', formula: '=H12', holds: is(45) },
  { claim: 'Excel put no @ before a function', formula: '=FORMULATEXT(H12)', holds: 'ISERROR(FIND("@",X))' },
  {
    claim: 'a date is a serial number',
    formula: '=SILT.HARVEST.WAIT(DATE(2026,5,1),TRUE)',
    holds: 'X=DATE(2026,5,1)+120',
  },
  {
    claim: 'a word from a list is accepted',
    formula: '=ISNUMBER(SILT.FILTER.NITRIFY("metric",1,20,20,"lower"))',
    holds: 'X=TRUE',
  },
  {
    claim: 'sentences are text',
    formula: '=ISTEXT(INDEX(SILT.CONE.CHECK("US",22.5,4,9.25),1,1))',
    holds: 'X=TRUE',
  },
  { claim: 'a formula that gives a blank cell gives 0', formula: '=IF(TRUE,$G$1)', holds: 'ISNUMBER(X)' },
  { claim: 'a formula that gives empty text gives text', formula: '=IF(TRUE,"")', holds: 'ISTEXT(X)' },
  { claim: '1,000 formulas on the sheet Speed are calculated', formula: '=SUM(Speed!A2:A1001)', holds: is(45_000) },
];

const first = 5;
const last = first + claims.length - 1;

/** A workbook that tests each claim of the add-in about Excel in the program that opens it; one line sums it up. */
export function checkYourExcel(): WorkbookData {
  return { sheets: [checkSheet(), speedSheet(), unitsSheet('US')], names: unitsNames, activeSheet: 'Check' };
}

function checkSheet(): SheetData {
  const draft = new SheetDraft('Check');
  const failed = `IF(E${first}:E${last}="pass","",A${first}:A${last})`;
  draft
    .put('A1', 'Does Siltstead work in this Excel?', 'title')
    .wide('A2:E2', 'Copy this line into your report, with the version of your Excel and your system:', 'step')
    .put(
      'A3',
      `="Siltstead check: "&COUNTIF(E${first}:E${last},"pass")&" of ${claims.length} passed"&IF(COUNTIF(E${first}:E${last},"pass")=${claims.length},"","; not "&TEXTJOIN(", ",TRUE,${failed}))`,
      'total',
    )
    .across('A4', ['no.', 'claim', 'what this Excel answers', 'holds if', 'verdict'], 'heading')
    .across('H4', ['top (in)', 'bottom (in)', 'height (in)'], 'heading')
    .put('H11', 'a spill:', 'label')
    .put('H12', '=SILT.CONE.PATTERN("US",22.5,4,9.25)', 'result')
    .put('H15', 'To try by hand', 'section')
    .put('H16', '1. Change the cell SiltUnits (sheet Silt units) to metric: row 3 must show mm at once.', 'label')
    .put('H17', '2. Type =SILT. in a free cell: the functions must appear, with what they do.', 'label')
    .put('H18', '3. Press Ctrl+Alt+F9 and count the seconds until the sheet Speed stops changing.', 'label')
    .put('H19', '4. Save, close and open again: nothing may show #NAME?.', 'label')
    .put('H20', '5. Select H12: the pane must draw the pattern.', 'label');
  drums.forEach((drum, at) => {
    draft.across(`H${5 + at}`, drum, 'input');
  });
  claims.forEach(({ claim, formula, holds }, at) => {
    const row = first + at;
    draft
      .put(`A${row}`, at + 1, 'label')
      .put(`B${row}`, claim, 'label')
      .put(`C${row}`, formula, 'result')
      .put(`D${row}`, holds.replaceAll('X', 'answer'), 'note')
      .put(`E${row}`, `=IF(IFERROR(${holds.replace(/\bX\b/g, `C${row}`)},FALSE),"pass","FAIL")`, 'result');
  });
  draft.alarm(`E${first}:E${last}`, `$E${first}<>"pass"`);
  return draft.sheet({ columnWidths: { 0: 5, 1: 52, 2: 26, 3: 40, 4: 9, 7: 12, 8: 12, 9: 12 }, frozenRows: 4 });
}

function speedSheet(): SheetData {
  const draft = new SheetDraft('Speed');
  draft.put('A1', 'The same cone, a thousand times: how long does it take?', 'heading');
  for (let row = 2; row <= 1_001; row += 1) draft.put(`A${row}`, '=SILT.CONE.ANGLE("US",22.5,4,9.25)', 'label');
  return draft.sheet({ columnWidths: { 0: 72 } });
}
