/** What a font's own bits allow for documents that carry its outlines (OpenType 1.9, OS/2 table, fsType). */
export type Embedding = 'installable' | 'editable' | 'previewAndPrint' | 'restricted';

const RESTRICTED = 0x0002;
const PREVIEW_AND_PRINT = 0x0004;
const EDITABLE = 0x0008;
/** Only bitmaps may be embedded, and lettering is made of outlines. */
const BITMAP_ONLY = 0x0200;

/** The usage permission in fsType. Old fonts may set several bits: the least restrictive counts. */
export function embeddingOf(fsType: number): Embedding {
  if ((fsType & BITMAP_ONLY) !== 0) return 'restricted';
  if ((fsType & EDITABLE) !== 0) return 'editable';
  if ((fsType & PREVIEW_AND_PRINT) !== 0) return 'previewAndPrint';
  return (fsType & RESTRICTED) === 0 ? 'installable' : 'restricted';
}
