import type { SheetDraft } from './sheet-draft';

/** A list of names, the cell that chooses from it, and where the choice is shown. */
export interface Chooser {
  /** What the list holds: `drum`, `scenario`. */
  readonly what: string;
  /** The names, in one row or column. */
  readonly list: string;
  /** The input cell, the cell with the place in the list, and the cell that says what is shown. */
  readonly typed: string;
  readonly place: string;
  readonly shown: string;
  /** The cell that lists all names. */
  readonly listed: string;
  readonly first: string | number;
}

/**
 * A cell that accepts a number or a name from a list. If it is not in the list, the first one is shown and the cell
 * beside it says so: users rename things, and a table of errors would not tell them why.
 */
export function chooser(draft: SheetDraft, { what, list, typed, place, shown, listed, first }: Chooser): void {
  const number = `IF(N(${typed})<1,0,INT(N(${typed})))`;
  const byNumber = `IF(${number}=0,FALSE,IFERROR(INDEX(${list},${number})<>"",FALSE))`;
  const byName = `IF(${typed}="",0,IFERROR(MATCH(${typed},${list},0),0))`;
  const name = `INDEX(${list},${place})`;
  draft
    .put(
      typed,
      first,
      'input',
      `A number or a name from the list. If it is not in the list, the first ${what} is shown.`,
    )
    .put(place, `=IF(${byName}>0,${byName},IF(${byNumber},${number},IFERROR(MATCH("?*",${list},0),1)))`, 'result')
    .put(
      shown,
      `=IF((${byName}>0)+${byNumber},"${what} "&${place}&": "&${name},IF(${typed}="","No ${what} is chosen","No ${what} "&${typed}&" is in the list")&"; showing ${what} "&${place}&": "&${name})`,
      'note',
    )
    .put(
      listed,
      `="${what}s: "&TEXTJOIN("; ",TRUE,IF(${list}="","",SEQUENCE(ROWS(${list}),COLUMNS(${list}))&": "&${list}))`,
      'note',
    )
    .alarm(typed, `=LEFT(${shown},3)="No "`)
    .alarm(shown, `=LEFT(${shown},3)="No "`)
    .validate({
      range: typed,
      type: 'list',
      formulas: [list],
      promptTitle: 'Choose',
      prompt: `a ${what}: its number or its name`,
      errorStyle: 'information',
      errorTitle: `No such ${what}`,
      error: `This is neither a number nor a name from the list, so the first ${what} is shown.`,
    });
}
