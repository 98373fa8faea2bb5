import { type Scene, sceneSchema } from '@/lib/domain/layout/scene';
import { type Envelope, readEnvelope } from '@/lib/domain/revision/envelope';
import { reader } from '../db/database';

/** A revision as it was sealed: the bytes just as they were, and what they say. */
export type SealedRevision = {
  readonly bytes: Uint8Array;
  readonly seal: string;
  readonly envelope: Envelope;
};

/** What was sealed; null when there is no such revision. */
export async function sealedRevision(revisionId: string): Promise<SealedRevision | null> {
  const row = await reader().revision.findUnique({
    where: { id: revisionId },
    select: { envelope: true, seal: true },
  });
  return row && { bytes: row.envelope, seal: row.seal, envelope: readEnvelope(row.envelope) };
}

/** A drawn scene of a revision by its hash; null when the revision does not show it. */
export async function sealedScene(revisionId: string, sha256: string): Promise<Scene | null> {
  const shown = await reader().revisionScene.findFirst({
    where: { revisionId, hash: sha256, line: '' },
    select: { id: true },
  });
  if (!shown) return null;
  return readDrawing(sha256);
}

/** Every drawn scene of one garment of a revision: together they say how large its pictures are. */
export async function sealedScenesOf(revisionId: string, garmentId: string): Promise<Scene[]> {
  const rows = await reader().revisionScene.findMany({
    where: { revisionId, garment: garmentId, line: '' },
    select: { hash: true },
  });
  return Promise.all([...new Set(rows.map(({ hash }) => hash))].map(readDrawing));
}

async function readDrawing(sha256: string): Promise<Scene> {
  const drawing = await reader().drawing.findUniqueOrThrow({ where: { sha256 } });
  return sceneSchema.parse(JSON.parse(new TextDecoder().decode(drawing.bytes)));
}
