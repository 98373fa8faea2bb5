import { type LayoutDocument, layoutDocumentSchema } from '@/lib/domain/layout/document';

/** Reads a working copy back from the database. Throws when it is not a layout document: nothing else is ever stored. */
export function readStoredLayout(json: string): LayoutDocument {
  return layoutDocumentSchema.parse(JSON.parse(json));
}
