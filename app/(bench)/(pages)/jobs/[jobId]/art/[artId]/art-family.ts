import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { type Micrometres, umFromInches } from '@/lib/domain/measure/length';
import type { ArtView } from '@/lib/server/art/list-art';

/** A picture as it was uploaded, with every mend that was kept of it. */
export type ArtFamily = { readonly upload: ArtView; readonly mends: readonly ArtView[]; readonly shown: ArtView };

/** Where a picture is on no print yet: as wide as a full front (common practice, no source). */
const UNPLACED_WIDTH_UM = umFromInches(10);

/** The family a picture of the job belongs to; null where the job has no such picture. */
export function familyOf(art: readonly ArtView[], artId: string): ArtFamily | null {
  const shown = art.find((each) => each.artId === artId);
  const upload = shown && art.find((each) => each.artId === (shown.parentId ?? shown.artId));
  if (!(shown && upload)) return null;
  return { shown, upload, mends: art.filter(({ parentId }) => parentId === upload.artId) };
}

/** The prints that carry a picture of the family. */
export function printsOfFamily({ upload, mends }: ArtFamily, layout: Pick<LayoutDocument, 'prints'>): Print[] {
  return printsCarrying(
    [upload, ...mends].map(({ artId }) => artId),
    layout,
  );
}

/** The prints that carry one of the pictures. */
export function printsCarrying(artIds: readonly string[], { prints }: Pick<LayoutDocument, 'prints'>): Print[] {
  return prints.filter(({ content }) => content.kind === 'art' && artIds.includes(content.art.artId));
}

/** The widest a print is pressed, over all its sizes. */
export function widestUm({ sizeGroups }: Print): Micrometres {
  return Math.max(...sizeGroups.map(({ widthUm }) => widthUm));
}

/** The width a picture is checked at to begin with: the widest it is laid out at. */
export function widthToCheckUm(prints: readonly Print[]): Micrometres {
  return prints.length > 0 ? Math.max(...prints.map(widestUm)) : UNPLACED_WIDTH_UM;
}

/** Every cloth of the garments, each once; those of the prints alone where the picture is on some. */
export function clothsOf(
  { garments }: Pick<LayoutDocument, 'garments'>,
  prints: readonly Print[],
): { name: string; hex: string }[] {
  const on = new Set(prints.flatMap(({ garmentIds }) => garmentIds));
  const cloths = garments
    .filter(({ garmentId }) => prints.length === 0 || on.has(garmentId))
    .map(({ cloth }) => ({ name: cloth.name, hex: cloth.hex }));
  return [...new Map(cloths.map((cloth) => [`${cloth.name} ${cloth.hex}`, cloth])).values()];
}
