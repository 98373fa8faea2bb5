import type { PDFiumDocument, PDFiumPage } from '@hyzyla/pdfium';

/** What is asked of PDFium itself, since its wrapper does not tell of fonts: the functions of fpdf_edit.h. */
type FontQuestions = {
  readonly _FPDFPage_CountObjects: (page: number) => number;
  readonly _FPDFPage_GetObject: (page: number, index: number) => number;
  readonly _FPDFPageObj_GetType: (object: number) => number;
  readonly _FPDFFormObj_CountObjects: (form: number) => number;
  readonly _FPDFFormObj_GetObject: (form: number, index: number) => number;
  readonly _FPDFTextObj_GetFont: (text: number) => number;
  readonly _FPDFFont_GetIsEmbedded: (font: number) => number;
};

/** Kinds of page objects (fpdf_edit.h, FPDF_PAGEOBJ_*). */
const TEXT = 1;
const FORM = 5;

/** Forms lie in forms; deeper than this nobody looks. */
const DEEPEST = 8;
const MOST_OBJECTS = 50_000;

/** Whether a page has letters whose font is not inside the file: PDFium draws those with a font of its own. */
export function usesForeignFont(document: PDFiumDocument, page: PDFiumPage): boolean {
  // biome-ignore lint/complexity/useLiteralKeys: the wrapper keeps it private, and there is no other way to PDFium itself
  const pdfium: FontQuestions = document['module'] as unknown as FontQuestions;
  // biome-ignore lint/complexity/useLiteralKeys: as above
  const handle = page['pageIdx'];
  let looked = 0;

  function isForeign(object: number, depth: number): boolean {
    looked += 1;
    if (looked > MOST_OBJECTS) return false;
    const type = pdfium._FPDFPageObj_GetType(object);
    if (type === TEXT) {
      const font = pdfium._FPDFTextObj_GetFont(object);
      return font !== 0 && pdfium._FPDFFont_GetIsEmbedded(font) === 0;
    }
    if (type !== FORM || depth > DEEPEST) return false;
    return anyOf(pdfium._FPDFFormObj_CountObjects(object), (index) =>
      isForeign(pdfium._FPDFFormObj_GetObject(object, index), depth + 1),
    );
  }

  return anyOf(pdfium._FPDFPage_CountObjects(handle), (index) =>
    isForeign(pdfium._FPDFPage_GetObject(handle, index), 0),
  );
}

function anyOf(count: number, question: (index: number) => boolean): boolean {
  for (let index = 0; index < count; index += 1) if (question(index)) return true;
  return false;
}
