import { z } from 'zod';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { ART_NOTES, type ArtNote } from '@/lib/domain/art/art-notes';
import { type ArtRef, artRefSchema } from '@/lib/domain/art/art-ref';
import { isRedrawn, type Recipe, recipeSchema } from '@/lib/domain/art/mend/recipe';
import { reader } from '../db/database';
import type { Reader } from '../db/open-database';
import { checksOf } from './art-checks';

/** A picture of a job as the bench shows it; `ref` is how a layout names it. */
export type ArtView = {
  readonly artId: string;
  readonly name: string;
  readonly ref: ArtRef;
  readonly notes: readonly ArtNote[];
  /** What the check measured; null for a picture that has to be measured (again): `ensureChecked` does that. */
  readonly facts: ArtFacts | null;
  /** The uploaded picture a mended one was made from, and every step from that one to this; null for an upload. */
  readonly parentId: string | null;
  readonly recipe: Recipe | null;
  /** Drawn anew by a tracer: no longer the pixels that were uploaded. */
  readonly redrawn: boolean;
  /** Kind and length of the file as it was uploaded; of the mended picture for a mend. */
  readonly mediaType: string;
  readonly bytes: number;
  readonly createdAt: Date;
};

/** The rows a view is made of; to be given to a query on Art as `include`. */
export const artRows = { file: true, picture: true, label: true } as const;

type ArtRow = {
  readonly id: string;
  readonly parentId: string | null;
  readonly recipeJson: string | null;
  readonly inkXPx: number;
  readonly inkYPx: number;
  readonly inkWidthPx: number;
  readonly inkHeightPx: number;
  readonly hullJson: string;
  readonly notesJson: string;
  readonly createdAt: Date;
  readonly file: { readonly mediaType: string; readonly byteLength: number };
  readonly picture: { readonly sha256: string; readonly widthPx: number | null; readonly heightPx: number | null };
  readonly label: { readonly name: string } | null;
};

const notesSchema = z.array(z.enum(ART_NOTES));

/** A stored picture as a view. Throws where the stored row does not describe a picture. */
export function artView(row: ArtRow, facts: ArtFacts | null = null): ArtView {
  const recipe = row.recipeJson === null ? null : recipeSchema.parse(JSON.parse(row.recipeJson));
  return {
    artId: row.id,
    name: row.label?.name ?? '',
    ref: artRefSchema.parse({
      artId: row.id,
      sha256: row.picture.sha256,
      widthPx: row.picture.widthPx,
      heightPx: row.picture.heightPx,
      inkBox: { x: row.inkXPx, y: row.inkYPx, width: row.inkWidthPx, height: row.inkHeightPx },
      inkHull: JSON.parse(row.hullJson),
    }),
    notes: notesSchema.parse(JSON.parse(row.notesJson)),
    facts,
    parentId: row.parentId,
    recipe,
    redrawn: recipe !== null && isRedrawn(recipe),
    mediaType: row.file.mediaType,
    bytes: row.file.byteLength,
    createdAt: row.createdAt,
  };
}

/** The pictures of a job, in the order they came. */
export function listArt(jobId: string): Promise<ArtView[]> {
  return artOfJob(reader(), jobId);
}

/** The same, inside a transaction that is already open. */
export async function artOfJob(tables: Pick<Reader, 'art' | 'artCheck'>, jobId: string): Promise<ArtView[]> {
  const rows = await tables.art.findMany({ where: { jobId }, include: artRows, orderBy: { id: 'asc' } });
  const checks = await checksOf(
    tables,
    rows.map(({ pictureSha256 }) => pictureSha256),
  );
  return rows.map((row) => artView(row, checks.get(row.pictureSha256) ?? null));
}

/** One picture with what is known of it; null where there is none. */
export async function artById(tables: Pick<Reader, 'art' | 'artCheck'>, artId: string): Promise<ArtView | null> {
  const row = await tables.art.findUnique({ where: { id: artId }, include: artRows });
  if (!row) return null;
  const checks = await checksOf(tables, [row.pictureSha256]);
  return artView(row, checks.get(row.pictureSha256) ?? null);
}
