/** A page of a PDF: its size in points and its content stream. */
export type PdfPage = { readonly widthPt: number; readonly heightPt: number; readonly content: string };

/**
 * A PDF written by hand (ISO 32000-1, 7.5): pages, one standard font that is not inside, and the cross-reference table.
 * With `forms`, a page can draw `/X0`, which draws `/X1` ten times, and so on.
 */
export function pdf(pages: readonly PdfPage[], forms = 0): Buffer {
  const pageAt = (index: number) => 4 + 2 * index;
  const formAt = (level: number) => 4 + 2 * pages.length + level;
  const formsFrom = (level: number) => (level < forms ? `/XObject << /X${level} ${formAt(level)} 0 R >>` : '');
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Count ${pages.length} /Kids [${pages.map((_, index) => `${pageAt(index)} 0 R`).join(' ')}] >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
    ...pages.flatMap(({ widthPt, heightPt, content }, index) => [
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${widthPt} ${heightPt}] /Contents ${pageAt(index) + 1} 0 R /Resources << /Font << /F1 3 0 R >> ${formsFrom(0)} >> >>`,
      `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    ]),
    ...Array.from({ length: forms }, (_, level) => {
      const content = level + 1 < forms ? `/X${level + 1} Do `.repeat(10) : '0 0 9 9 re f';
      return `<< /Type /XObject /Subtype /Form /BBox [0 0 900 900] /Resources << ${formsFrom(level + 1)} >> /Length ${content.length} >>\nstream\n${content}\nendstream`;
    }),
  ];
  let text = '%PDF-1.4\n';
  const offsets = objects.map((object, index) => {
    const offset = text.length;
    text += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return offset;
  });
  const table = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const start = text.length;
  const size = objects.length + 1;
  text += `xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  return Buffer.from(text, 'latin1');
}
