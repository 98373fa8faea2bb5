import { z } from 'zod';
import { ART_NOTES, type ArtNote } from '@/lib/domain/art/art-notes';
import { type ArtRef, artRefSchema } from '@/lib/domain/art/art-ref';
import { reader } from '../db/database';
import type { Reader } from '../db/open-database';

/** A picture of a job as the bench shows it; `ref` is how a layout names it. */
export type ArtView = {
  readonly artId: string;
  readonly name: string;
  readonly ref: ArtRef;
  readonly notes: readonly ArtNote[];
  /** Kind and length of the file as it was uploaded. */
  readonly mediaType: string;
  readonly bytes: number;
  readonly createdAt: Date;
};

/** The rows a view is made of; to be given to a query on Art as `include`. */
export const artRows = { file: true, picture: true, label: true } as const;

type ArtRow = {
  readonly id: string;
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
export function artView(row: ArtRow): ArtView {
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
export async function artOfJob(tables: Pick<Reader, 'art'>, jobId: string): Promise<ArtView[]> {
  const rows = await tables.art.findMany({ where: { jobId }, include: artRows, orderBy: { id: 'asc' } });
  return rows.map(artView);
}
