import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { type IncomingFile, NoRoomLeft, type StoredFile, TooManyBytes } from '../files/file-store';
import { artFiles } from '../files/store';
import { type ArtMediaType, fileKind } from '../image/file-kind';
import type { ReadArt, ReadArtRequest, ReadArtResult } from '../image/read-art';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';
import { type ArtView, artRows, artView } from './list-art';
import { placeForProxy } from './proxies';
import { readHead } from './read-head';
import { tidyFileName } from './tidy-file-name';

/** Longest file that is taken: 25 MB. */
export const MOST_ART_BYTES = 25 * 1024 * 1024;

/** How long a picture may take to be read before it is given up. */
const READ_LIMIT_MS = 60_000;

export type ArtRefusal =
  | 'noJob'
  | 'empty'
  | 'tooLarge'
  | 'cutShort'
  | 'notAPicture'
  | 'kindNotTaken'
  | 'damaged'
  | 'tooManyPixels'
  | 'nothingToPrint'
  | 'tookTooLong'
  | 'noRoomLeft';

export type ReceivedArt =
  | { ok: true; art: ArtView; alreadyThere: boolean }
  /** `kind` names the file's kind where that is what is wrong, such as `WEBP`. */
  | { ok: false; reason: ArtRefusal; kind?: string };

export type ArtUpload = {
  readonly jobId: string;
  /** The file's name on the maker's computer: a label, nothing else. */
  readonly name: string;
  /** Content-Length, or null where it was not given. */
  readonly declaredLength: number | null;
  readonly body: AsyncIterable<Uint8Array>;
};

/**
 * Takes in a picture for a job: counted while it arrives, known by its content, checked, unpacked once in a worker, kept
 * under its SHA-256. A refused or broken-off upload leaves nothing behind. The same file a second time is the first one.
 */
export async function receiveArt({ jobId, name, declaredLength, body }: ArtUpload): Promise<ReceivedArt> {
  if (declaredLength !== null && declaredLength > MOST_ART_BYTES) return { ok: false, reason: 'tooLarge' };
  const job = await reader().job.findUnique({ where: { id: jobId }, select: { id: true } });
  if (!job) return { ok: false, reason: 'noJob' };
  const incoming = await takeIn(body);
  if ('reason' in incoming) return { ok: false, reason: incoming.reason };
  try {
    if (declaredLength !== null && incoming.bytes !== declaredLength) return { ok: false, reason: 'cutShort' };
    if (incoming.bytes === 0) return { ok: false, reason: 'empty' };
    const kind = await fileKind(await readHead(incoming.path));
    if (kind.kind === 'unknown') return { ok: false, reason: 'notAPicture' };
    if (kind.kind === 'other') return { ok: false, reason: 'kindNotTaken', kind: kind.name };
    return await keepArt({ jobId, name: tidyFileName(name), mediaType: kind.mediaType, incoming });
  } catch (error) {
    if (error instanceof NoRoomLeft) return { ok: false, reason: 'noRoomLeft' };
    throw error;
  } finally {
    await incoming.discard();
  }
}

async function takeIn(body: AsyncIterable<Uint8Array>): Promise<IncomingFile | { reason: ArtRefusal }> {
  let broken = false;
  async function* watched(): AsyncGenerator<Uint8Array> {
    try {
      yield* body;
    } catch (error) {
      broken = true;
      throw error;
    }
  }
  try {
    return await artFiles().take(watched(), MOST_ART_BYTES);
  } catch (error) {
    if (error instanceof TooManyBytes) return { reason: 'tooLarge' };
    if (error instanceof NoRoomLeft) return { reason: 'noRoomLeft' };
    if (broken) return { reason: 'cutShort' };
    throw error;
  }
}

type Incoming = {
  readonly jobId: string;
  readonly name: string;
  readonly mediaType: ArtMediaType;
  readonly incoming: IncomingFile;
};

async function keepArt({ jobId, name, mediaType, incoming }: Incoming): Promise<ReceivedArt> {
  const picturePlace = await artFiles().place();
  const proxyPlace = await placeForProxy();
  try {
    const read = await readInWorker({
      path: incoming.path,
      mediaType,
      picturePath: picturePlace.path,
      proxyPath: proxyPlace.path,
    });
    if (!read.ok) return read;
    const file = await incoming.keep();
    const picture = read.fileIsPicture ? file : await picturePlace.keep();
    await proxyPlace.keepFor(picture.sha256);
    return await write((tx) => addArt(tx, { jobId, name, mediaType, file, picture, read }));
  } finally {
    await picturePlace.discard();
    await proxyPlace.discard();
  }
}

async function readInWorker(request: ReadArtRequest): Promise<ReadArtResult | { ok: false; reason: 'tookTooLong' }> {
  try {
    return await runInWorker<ReadArtRequest, ReadArtResult>('read-art', request, { timeoutMs: READ_LIMIT_MS });
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: error.reason === 'tookTooLong' ? 'tookTooLong' : 'damaged' };
  }
}

type NewArt = {
  readonly jobId: string;
  readonly name: string;
  readonly mediaType: ArtMediaType;
  readonly file: StoredFile;
  readonly picture: StoredFile;
  readonly read: ReadArt;
};

async function addArt(tx: Transaction, art: NewArt): Promise<ReceivedArt> {
  const { jobId, file, picture, read } = art;
  const known = await tx.art.findFirst({
    where: { jobId, fileSha256: file.sha256, parentId: null },
    include: artRows,
  });
  if (known) return { ok: true, art: artView(known), alreadyThere: true };
  const now = new Date();
  const size = { widthPx: read.widthPx, heightPx: read.heightPx };
  await addFile(tx, picture, read.fileIsPicture ? art.mediaType : 'image/png', size, now);
  if (file.sha256 !== picture.sha256) await addFile(tx, file, art.mediaType, { widthPx: null, heightPx: null }, now);
  const { inkBox, inkHull } = read.ink;
  const artId = newId();
  await tx.art.create({
    data: {
      id: artId,
      jobId,
      fileSha256: file.sha256,
      pictureSha256: picture.sha256,
      inkXPx: inkBox.x,
      inkYPx: inkBox.y,
      inkWidthPx: inkBox.width,
      inkHeightPx: inkBox.height,
      hullJson: JSON.stringify(inkHull),
      notesJson: JSON.stringify(read.notes),
      createdAt: now,
    },
  });
  await tx.artLabel.create({ data: { artId, name: art.name } });
  const row = await tx.art.findUniqueOrThrow({ where: { id: artId }, include: artRows });
  return { ok: true, art: artView(row), alreadyThere: false };
}

async function addFile(
  tx: Transaction,
  { sha256, bytes }: StoredFile,
  mediaType: string,
  size: { widthPx: number | null; heightPx: number | null },
  now: Date,
): Promise<void> {
  const known = await tx.file.findUnique({ where: { sha256 }, select: { sha256: true } });
  if (!known) await tx.file.create({ data: { sha256, byteLength: bytes, mediaType, ...size, createdAt: now } });
}
