import { copyFile } from 'node:fs/promises';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { MOST_MEND_STEPS, type Recipe, recipeSchema } from '@/lib/domain/art/mend/recipe';
import type { MakerAccess } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { NoRoomLeft, type StoredFile } from '../files/file-store';
import { artFiles } from '../files/store';
import { addFile } from './add-file';
import { keepCheck } from './art-checks';
import { type ArtView, artById } from './list-art';
import { type MendedPicture, mendedPicture } from './mended-pictures';
import type { MendRefused } from './preview-mend';
import { placeForProxy } from './proxies';

export type MadeMend =
  | { readonly ok: true; readonly art: ArtView; readonly alreadyThere: boolean }
  | { readonly ok: false; readonly reason: 'changesNothing' | 'tooManySteps' | 'noRoomLeft' }
  | MendRefused;

/**
 * Makes a mended picture and keeps it beside the one it was made from, which stays as it is. It remembers every step from
 * what was uploaded: mending a mended picture makes another picture of the same upload, with the steps of both. The same
 * mend a second time is the first one.
 */
export async function makeMend(
  _maker: MakerAccess,
  artId: string,
  recipe: unknown,
  { signal }: { readonly signal?: AbortSignal } = {},
): Promise<MadeMend> {
  const parsed = recipeSchema.safeParse(recipe);
  if (!parsed.success) return { ok: false, reason: 'badRecipe' };
  const from = await artById(reader(), artId);
  if (!from) return { ok: false, reason: 'noArt' };
  const steps = [...(from.recipe?.steps ?? []), ...parsed.data.steps];
  if (steps.length > MOST_MEND_STEPS) return { ok: false, reason: 'tooManySteps' };
  const result = await mendedPicture(from.ref.sha256, parsed.data, signal);
  if (!result.ok) return result;
  if (!result.mended.changed) return { ok: false, reason: 'changesNothing' };
  try {
    const picture = await keepFiles(result.mended);
    return await write((tx) => addMend(tx, from, { format: 1, steps }, result.mended, picture));
  } catch (error) {
    if (error instanceof NoRoomLeft) return { ok: false, reason: 'noRoomLeft' };
    throw error;
  }
}

async function keepFiles(mended: MendedPicture): Promise<StoredFile> {
  const picturePlace = await artFiles().place();
  const proxyPlace = await placeForProxy();
  try {
    await copyFile(mended.picturePath, picturePlace.path);
    await copyFile(mended.proxyPath, proxyPlace.path);
    const picture = await picturePlace.keep();
    await proxyPlace.keepFor(picture.sha256);
    return picture;
  } finally {
    await picturePlace.discard();
    await proxyPlace.discard();
  }
}

async function addMend(
  tx: Transaction,
  from: ArtView,
  recipe: Recipe,
  mended: MendedPicture,
  picture: StoredFile,
): Promise<MadeMend> {
  const now = new Date();
  await keepCheck(tx, picture.sha256, mended.facts, now);
  const parentId = from.parentId ?? from.artId;
  const known = await tx.art.findFirst({ where: { parentId, pictureSha256: picture.sha256 }, select: { id: true } });
  const artId = known?.id ?? newId();
  if (!known) await addRows(tx, { artId, parentId, from, recipe, mended, picture, now });
  const art = await artById(tx, artId);
  if (!art) throw new Error(`addMend: art ${artId} is gone as soon as it was made`);
  return { ok: true, art, alreadyThere: known !== null };
}

type MendRows = {
  readonly artId: string;
  readonly parentId: string;
  readonly from: ArtView;
  readonly recipe: Recipe;
  readonly mended: MendedPicture;
  readonly picture: StoredFile;
  readonly now: Date;
};

async function addRows(tx: Transaction, rows: MendRows): Promise<void> {
  const { artId, parentId, from, recipe, mended, picture, now } = rows;
  const size = { widthPx: mended.widthPx, heightPx: mended.heightPx };
  await addFile(tx, picture, 'image/png', size, now);
  const { jobId } = await tx.art.findUniqueOrThrow({ where: { id: parentId }, select: { jobId: true } });
  const { inkBox, inkHull, anyClear } = mended.ink;
  await tx.art.create({
    data: {
      id: artId,
      jobId,
      fileSha256: picture.sha256,
      pictureSha256: picture.sha256,
      parentId,
      recipeJson: JSON.stringify(recipe),
      inkXPx: inkBox.x,
      inkYPx: inkBox.y,
      inkWidthPx: inkBox.width,
      inkHeightPx: inkBox.height,
      hullJson: JSON.stringify(inkHull),
      notesJson: JSON.stringify(notesOfMend(from.notes, anyClear)),
      createdAt: now,
    },
  });
  await tx.artLabel.create({ data: { artId, name: from.name } });
}

/** What was noticed of the upload stays true of what is made from it, but for whether all of it prints. */
function notesOfMend(notes: readonly ArtNote[], anyClear: boolean): ArtNote[] {
  const others = notes.filter((note) => note !== 'noTransparency');
  return anyClear ? others : [...others, 'noTransparency'];
}
