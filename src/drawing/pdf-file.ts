import { pdfTitle } from './pdf-text';

/**
 * A small writer of PDF 1.4 (ISO 32000-1): pages of lines, arcs and text in the two standard Helvetica faces, which every
 * reader has, so that no font travels with the file.
 *
 * Written here because the libraries that do it weigh over 130 kB compressed for forms, fonts, images and encryption that a
 * drawing never uses; the task pane loads this when a pattern is printed, and it is about 2 kB. It writes no dates and no
 * random identifier: the same drawing gives the same bytes.
 */
export interface PdfPage {
  /** Points of 1/72 inch. */
  readonly width: number;
  readonly height: number;
  /** Operators of the page's contents. */
  readonly content: string;
}

export const pointsPerMeter = 72 / 0.0254;

/** At most a ten-thousandth of a point, never in powers of ten, which PDF does not know. */
export function figure(points: number): string {
  return String(Number(points.toFixed(4)) + 0);
}

export function pdfFile(title: string, pages: readonly PdfPage[]): Uint8Array {
  const firstPage = 6;
  const kids = pages.map((_, i) => `${firstPage + 2 * i} 0 R`).join(' ');
  const font = (name: string) => `<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`;
  const objects = [
    // Asks the reader not to shrink or enlarge pages to fit the paper: these are full size.
    '<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>',
    `<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`,
    font('Helvetica'),
    font('Helvetica-Bold'),
    `<< /Title ${pdfTitle(title)} /Producer (Siltstead) >>`,
    ...pages.flatMap(({ width, height, content }, i) => [
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${figure(width)} ${figure(height)}] /Contents ${firstPage + 2 * i + 1} 0 R /Resources << /Font << /F1 3 0 R /F2 4 0 R >> >> >>`,
      `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    ]),
  ];
  // Four bytes over 127 in the second line tell transfer programs that the file is not text.
  let file = '%PDF-1.4\n%\u00e2\u00e3\u00cf\u00d3\n';
  const places: number[] = [];
  objects.forEach((object, i) => {
    places.push(file.length);
    file += `${i + 1} 0 obj\n${object}\nendobj\n`;
  });
  const table = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('');
  const size = objects.length + 1;
  file += `xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R /Info 5 0 R >>\nstartxref\n${file.length}\n%%EOF\n`;
  return Uint8Array.from(file, (letter) => letter.charCodeAt(0));
}
