import { describe, expect, it } from 'vitest';
import { isDynamic } from '../../src/workbooks/array-flag';
import { storedFormula } from '../../src/workbooks/stored-formula';
import { typedFormula } from '../../src/workbooks/typed-formula';

// Prefixes from Microsoft's documentation: [MS-XLSX] 2.2.2 for _xlfn and _xlws, the office-js issues #2051 and #6395 for _xldudf.
const pairs: readonly (readonly [typed: string, stored: string])[] = [
  ['=SILT.CONE.PATTERN(SiltUnits,B5,C5)', '_xldudf_SILT_CONE_PATTERN(SiltUnits,B5,C5)'],
  ['=FILTER(A1:A9,A1:A9<>"")', '_xlfn._xlws.FILTER(A1:A9,A1:A9<>"")'],
  ['=SORT(UNIQUE(A1:A9))', '_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))'],
  ['=LET(used,A1:A9<>"",SUM(used))', '_xlfn.LET(_xlpm.used,A1:A9<>"",SUM(_xlpm.used))'],
  ['=LAMBDA(x,x+1)(2)', '_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)(2)'],
  ['=IFNA(XLOOKUP(B4,A1:A9,B1:B9),0)', '_xlfn.IFNA(_xlfn.XLOOKUP(B4,A1:A9,B1:B9),0)'],
  ['=SUM(B5:B12)', 'SUM(B5:B12)'],
  ['="SILT.CONE(" & "LET(a,1,a)"', '"SILT.CONE(" & "LET(a,1,a)"'],
  ["='Silt units'!$B$4&SiltUnits", "'Silt units'!$B$4&SiltUnits"],
  ['=SUM(A2#)', 'SUM(_xlfn.ANCHORARRAY(A2))'],
  ['=@A1:A9', '_xlfn.SINGLE(A1:A9)'],
  ['=@SILT.CONE.PATTERN(SiltUnits,B5,(C5+1)*2)', '_xlfn.SINGLE(_xldudf_SILT_CONE_PATTERN(SiltUnits,B5,(C5+1)*2))'],
  ['=1+@INDEX(A1:A9,@B1:B9)*2', '1+_xlfn.SINGLE(INDEX(A1:A9,_xlfn.SINGLE(B1:B9)))*2'],
  ['=@(A1:A3*2)', '_xlfn.SINGLE((A1:A3*2))'],
  ['=GROUPBY(A1:A9,B1:B9,SUM)', '_xlfn.GROUPBY(A1:A9,B1:B9,_xleta.SUM)'],
  [
    '=PIVOTBY(A1:A9,B1:B9,C1:C9,LAMBDA(x,SUM(x)))',
    '_xlfn.PIVOTBY(A1:A9,B1:B9,C1:C9,_xlfn.LAMBDA(_xlpm.x,SUM(_xlpm.x)))',
  ],
  [
    '=IF(REGEXTEST(A1,"_xlfn.SUM("),TRIMRANGE(A1:C9),PERCENTOF(A1,B1))',
    'IF(_xlfn.REGEXTEST(A1,"_xlfn.SUM("),_xlfn.TRIMRANGE(A1:C9),_xlfn.PERCENTOF(A1,B1))',
  ],
  ['=FORECAST.ETS.CONFINT(A1,B1:B9,C1:C9)', '_xlfn.FORECAST.ETS.CONFINT(A1,B1:B9,C1:C9)'],
  ['=NETWORKDAYS.INTL(A1,B1)', 'NETWORKDAYS.INTL(A1,B1)'],
];

describe('a cell formula', () => {
  it.each(pairs)('%s is stored as Excel stores it', (typed, stored) => {
    expect(storedFormula(typed)).toBe(stored);
  });

  it.each(pairs)('%s is read as it was typed', (typed, stored) => {
    expect(typedFormula(stored)).toBe(typed);
  });

  it('does not change a name that is not a parameter, though a function has that name', () => {
    expect(storedFormula('=LET(a,1,a+Rate)+a1')).toBe('_xlfn.LET(_xlpm.a,1,_xlpm.a+Rate)+a1');
  });
});

it('reads one value of an expression that is not a single reference or a call in brackets', () => {
  expect(typedFormula('_xlfn.SINGLE(A1:A3*2)+1')).toBe('=@(A1:A3*2)+1');
});

describe('the dynamic-array flag', () => {
  it.each([
    '=SILT.UNIT.LABEL(SiltUnits,"flow")',
    '="Flow ("&SILT.UNIT.LABEL(SiltUnits,"flow")&")"',
    '=A1:A9*2',
    '={1,2}',
    '=FILTER(A1:A9,A1:A9>0)',
    '=IF(A1:A9="","",1)',
    // ECMA-376 part 1, 18.3.1.40: without the flag a range where one value is wanted is cut down to one cell.
    '=SUM(A1:A3*B1:B3)',
    '=AND(A1:A3>0)',
    '=MAX(A1:A3-B1:B3)',
    '=SUM(1/A1:A3)',
    '=SUM(-A1:A3)',
    '=SUM((A1:A3))',
    '=SUM(A1:A3%)',
    '=COUNTIF(A1:A9,C1:C3)',
    '=SUMIFS(A1:A9,B1:B9,C1:C3)',
    '=MATCH(C1:C3,A1:A9,0)',
    '=LARGE(A1:A9,C1:C3)',
    '=SUM(IF(A1:A9>0,1))',
    '=SUM(OFFSET(A1,0,0,3)*2)',
    '=SUM(Lengths*2)',
    '=Lengths',
    '=SUM(Drums[Height]*2)',
    '=SUM(A2#*2)',
  ])('is set on %s', (formula) => {
    expect(isDynamic(formula, (name) => name === 'Lengths')).toBe(true);
  });

  it.each([
    '=A1+B1',
    '=SUM(A1:A9)',
    '=SUM(A1:A9,C1:C3)*2',
    '=SUMIFS(A1:A9,B1:B9,"x",C1:C9,D1)',
    '=VLOOKUP(A1,B1:C9,2)',
    '=SUM(Lengths)',
    '=SUM(Drums[Height])',
    '=MATCH(C1,A1:A9,0)',
    '=COUNTIF(A1:A9,">"&B1)',
    '=IF(SiltUnits=SiltTypedIn,"","differ")',
    '=COUNTA(A1:A9)/2',
    '="A1:A9"',
  ])('is not set on %s', (formula) => {
    expect(isDynamic(formula, (name) => name === 'Lengths')).toBe(false);
  });
});
