import type { LayoutDocument } from '@/lib/domain/layout/document';
import { fontsUsed } from '@/lib/domain/layout/print-content';
import { type TypeCase, typeCase } from '@/lib/domain/layout/type-case';
import { loadTypeEngine } from './load-type-engine';

/**
 * What a layout's lettering is set from: its fonts, opened, and its list of people. Null for a layout without lettering, for
 * which no font is opened. Rejects where a font's file is not there.
 */
export async function layoutType(layout: Pick<LayoutDocument, 'prints' | 'people'>): Promise<TypeCase | null> {
  const fonts = fontsUsed(layout);
  return fonts.length === 0 ? null : typeCase(await loadTypeEngine(fonts), layout.people);
}
