import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import type { IncomingFile, StoredFile } from '../files/file-store';
import { artFiles } from '../files/store';
import { type ArtMediaType, isArt } from '../image/file-kind';
import type { ReadArt, ReadArtRequest, ReadArtResult } from '../image/read-art';
import type { UnpackRefusal } from '../image/unpack-art';
import { runInWorker } from '../workers/pool';
import { type WorkerEnd, WorkerError } from '../workers/worker-pool';
import { addFile } from './add-file';
import { keepCheck } from './art-checks';
import { type ArtView, artById } from './list-art';
import { placeForProxy } from './proxies';
import { type PictureBody, type TakeInRefusal, takeInPicture } from './take-in-picture';
import { tidyFileName } from './tidy-file-name';

/** How long a picture may take to be read before it is given up. */
const READ_LIMIT_MS = 60_000;

export type ArtRefusal = TakeInRefusal | UnpackRefusal | 'noJob' | 'nothingToPrint' | 'tookTooLong';

export type ReceivedArt =
  | { ok: true; art: ArtView; alreadyThere: boolean }
  /** `kind` names the file's kind where that is what is wrong, such as `WEBP`. */
  | { ok: false; reason: ArtRefusal; kind?: string };

export type ArtUpload = PictureBody & {
  readonly jobId: string;
  /** The file's name on the maker's computer: a label, nothing else. */
  readonly name: string;
  /** Whoever sent it has gone, or no longer wants it: what is being read is let go. */
  readonly signal?: AbortSignal;
};

/**
 * Takes in a picture for a job: counted while it arrives, known by its content, checked, unpacked once in a worker, kept
 * under its SHA-256. A refused or broken-off upload leaves nothing behind. The same file a second time is the first one.
 */
export async function receiveArt({ jobId, name, signal, ...picture }: ArtUpload): Promise<ReceivedArt> {
  const job = await reader().job.findUnique({ where: { id: jobId }, select: { id: true } });
  if (!job) return { ok: false, reason: 'noJob' };
  return takeInPicture(picture, isArt, (incoming, mediaType) =>
    keepArt({ jobId, name: tidyFileName(name), mediaType, incoming, signal }),
  );
}

type Incoming = {
  readonly jobId: string;
  readonly name: string;
  readonly mediaType: ArtMediaType;
  readonly incoming: IncomingFile;
  readonly signal: AbortSignal | undefined;
};

async function keepArt({ jobId, name, mediaType, incoming, signal }: Incoming): Promise<ReceivedArt> {
  const picturePlace = await artFiles().place();
  const proxyPlace = await placeForProxy();
  try {
    const read = await readInWorker(
      {
        path: incoming.path,
        mediaType,
        picturePath: picturePlace.path,
        proxyPath: proxyPlace.path,
      },
      signal,
    );
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

/** Why work on a picture that was given up ended, as whoever sent it is told. */
const ENDED = { tookTooLong: 'tookTooLong', crashed: 'damaged', stopped: 'cutShort' } as const;

async function readInWorker(
  request: ReadArtRequest,
  signal: AbortSignal | undefined,
): Promise<ReadArtResult | { ok: false; reason: (typeof ENDED)[WorkerEnd] }> {
  try {
    const limits = { timeoutMs: READ_LIMIT_MS, ...(signal ? { signal } : {}) };
    return await runInWorker<ReadArtRequest, ReadArtResult>('read-art', request, limits);
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: ENDED[error.reason] };
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
  const now = new Date();
  await keepCheck(tx, picture.sha256, read.facts, now);
  const known = await tx.art.findFirst({
    where: { jobId, fileSha256: file.sha256, parentId: null },
    select: { id: true },
  });
  if (known) return { ok: true, art: await viewOf(tx, known.id), alreadyThere: true };
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
  return { ok: true, art: await viewOf(tx, artId), alreadyThere: false };
}

async function viewOf(tx: Transaction, artId: string): Promise<ArtView> {
  const art = await artById(tx, artId);
  if (!art) throw new Error(`receiveArt: art ${artId} is gone as soon as it was taken in`);
  return art;
}
