import { readFile } from 'node:fs/promises';
import type { PDFiumDocument, PDFiumLibrary, PDFiumPage } from '@hyzyla/pdfium';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { usesForeignFont } from './pdf-fonts';
import { MOST_HEAP_BYTES, openPdfium } from './pdfium';
import type { Pixels } from './quiet-sharp';
import { drawnSize } from './svg-size';

export type UnpackedPdf =
  | { readonly ok: true; readonly pixels: Pixels; readonly notes: ArtNote[] }
  | { readonly ok: false; readonly reason: 'damaged' | 'pdfLocked' | 'tooInvolved' };

/** A PDF's own unit (ISO 32000-1, section 8.3.2.3): 1 pt = 1/72 in. */
const PT_PER_INCH = 72;

/** Draws the first page of a PDF once, large, on nothing: paper is not part of the art. */
export async function unpackPdf(path: string, mostHeapBytes = MOST_HEAP_BYTES): Promise<UnpackedPdf> {
  const bytes = await readFile(path);
  const { library, ranOut } = await openPdfium(mostHeapBytes);
  const opened = await open(library, bytes);
  const unpacked = opened.ok ? await drawFirstPage(opened.document) : opened;
  return ranOut() ? { ok: false, reason: 'tooInvolved' } : unpacked;
}

type Opened =
  | { readonly ok: true; readonly document: PDFiumDocument }
  | { readonly ok: false; readonly reason: 'damaged' | 'pdfLocked' };

async function open(library: PDFiumLibrary, bytes: Uint8Array): Promise<Opened> {
  try {
    return { ok: true, document: await library.loadDocument(bytes) };
  } catch (error) {
    // The library tells its errors apart by their words only.
    const isLocked = error instanceof Error && /password|security/i.test(error.message);
    return { ok: false, reason: isLocked ? 'pdfLocked' : 'damaged' };
  }
}

async function drawFirstPage(document: PDFiumDocument): Promise<UnpackedPdf> {
  try {
    const pages = document.getPageCount();
    if (pages < 1) return { ok: false, reason: 'damaged' };
    const page = document.getPage(0);
    const notes: ArtNote[] = pages > 1 ? ['firstPageOnly'] : [];
    if (usesForeignFont(document, page)) notes.push('fontsReplaced');
    const pixels = await draw(page);
    return pixels ? { ok: true, pixels, notes } : { ok: false, reason: 'damaged' };
  } catch {
    return { ok: false, reason: 'damaged' };
  }
}

async function draw(page: PDFiumPage): Promise<Pixels | null> {
  const { originalWidth, originalHeight } = page.getOriginalSize();
  if (!(originalWidth > 0 && originalHeight > 0)) return null;
  const size = drawnSize(originalWidth / PT_PER_INCH, originalHeight / PT_PER_INCH);
  const drawn = await page.render({
    width: size.widthPx,
    height: size.heightPx,
    transparent: true,
    colorSpace: 'BGRA',
    render: 'bitmap',
  });
  return { rgba: drawn.data, widthPx: drawn.width, heightPx: drawn.height };
}
