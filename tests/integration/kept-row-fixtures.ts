import { newId } from '@/lib/server/db/new-id';
import type { Transaction } from '@/lib/server/db/open-database';

const bytes = Uint8Array.from([1, 2, 3]);
const hash = 'a'.repeat(64);

/** One row in every kept table, and the personal rows beside them; answers with the key of each, by table. */
export async function addKeptRows(
  tx: Transaction,
  jobId: string,
  contactId: string,
  now: Date,
): Promise<Record<string, string>> {
  const ids = { Art: newId(), Revision: newId(), RevisionScene: newId(), RevisionEvent: newId(), Answer: newId() };
  const entryId = newId();
  const erasureId = newId();
  await tx.file.create({ data: { sha256: hash, byteLength: 3, mediaType: 'image/png', createdAt: now } });
  await tx.font.create({
    data: { sha256: hash, byteLength: 3, family: 'Test', style: 'Regular', origin: 'shipped', createdAt: now },
  });
  await tx.art.create({
    data: {
      id: ids.Art,
      jobId,
      fileSha256: hash,
      pictureSha256: hash,
      notesJson: '[]',
      inkXPx: 0,
      inkYPx: 0,
      inkWidthPx: 1,
      inkHeightPx: 1,
      hullJson: '[]',
      createdAt: now,
    },
  });
  await tx.revision.create({
    data: {
      id: ids.Revision,
      jobId,
      number: 1,
      format: 1,
      seal: hash,
      envelope: bytes,
      reason: '',
      draftVersion: 1,
      createdAt: now,
    },
  });
  await tx.drawing.create({ data: { sha256: hash, bytes } });
  await tx.revisionScene.create({
    data: {
      id: ids.RevisionScene,
      revisionId: ids.Revision,
      garment: 'tee',
      blank: 'adult',
      size: 'M',
      side: 'front',
      line: '',
      hash,
    },
  });
  await tx.revisionEvent.create({
    data: { id: ids.RevisionEvent, revisionId: ids.Revision, kind: 'sent', occurrence: 0, at: now },
  });
  await tx.answer.create({
    data: {
      id: ids.Answer,
      revisionId: ids.Revision,
      contactId,
      word: 'yes',
      how: 'link',
      ticksJson: '[]',
      statementHash: hash,
      identityHash: hash,
      idempotencyKey: newId(),
      at: now,
      identity: { create: { salt: bytes, typedName: 'Wren Abara', changeWords: '', clientAddress: '192.0.2.7' } },
    },
  });
  await tx.recordEntry.create({
    data: { id: entryId, jobId, seq: 1, kind: 'test', payloadHash: hash, previousHash: '', hash, at: now },
  });
  await tx.erasure.create({
    data: { id: erasureId, jobId, erasedTable: 'AnswerIdentity', erasedRowId: ids.Answer, at: now },
  });
  return { ...ids, File: hash, Font: hash, Drawing: hash, RecordEntry: entryId, Erasure: erasureId };
}
