/**
 * Cell formulas as files store them and as users type them. Files put prefixes before functions newer than the file
 * format (`_xlfn.LET`, parameters `_xlpm.a`) and before functions of add-ins (`_xldudf_SILT_CONE_PATTERN`).
 */

/** The formula as typed, beginning with `=`. Quoted text is left as it is. */
export function typedFormula(stored: string): string {
  const pieces = stored.replace(/^=/, '').split(/("(?:[^"]|"")*")/);
  const typed = pieces.map((piece, index) => (index % 2 === 1 ? piece : typedPiece(piece)));
  return `=${typed.join('')}`;
}

function typedPiece(piece: string): string {
  return piece
    .replace(/_xlfn\.ANCHORARRAY\(([^()]*)\)/gi, '$1#')
    .replace(/_xlfn\.SINGLE\(([^()]*)\)/gi, '@$1')
    .replace(/_xlfn\.(?:_xlws\.)?/gi, '')
    .replace(/_xlpm\./gi, '')
    .replace(/_xldudf_([A-Z0-9_]+)(?=\s*\()/gi, (_, name: string) => name.replaceAll('_', '.'));
}
