import { SIDES, type Side } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { addFile } from '../art/add-file';
import { type PictureBody, type TakeInRefusal, takeInPicture } from '../art/take-in-picture';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { newId } from '../db/new-id';
import type { IncomingFile, StoredFile } from '../files/file-store';
import { artFiles } from '../files/store';
import { isRaster, type RasterMediaType } from '../image/file-kind';
import type { ReadPhotograph, ReadPhotographRequest } from '../image/read-photograph';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';
import { loadBlank } from './load-blank';
import { NOT_SET } from './photographs';

/** How long a photograph may take to be read before it is given up. */
const READ_LIMIT_MS = 60_000;

export type PhotographRefusal =
  | TakeInRefusal
  | 'noBlank'
  | 'noSuchPlace'
  | 'damaged'
  | 'tooManyPixels'
  | 'tooSmall'
  | 'tookTooLong';

export type ReceivedPhotograph =
  | { readonly ok: true; readonly photographId: string }
  /** `kind` names the file's kind where that is what is wrong, such as `HEIC`. */
  | { readonly ok: false; readonly reason: PhotographRefusal; readonly kind?: string };

/** What a photograph is of. */
export type PhotographOf = {
  readonly blankId: string;
  readonly sizeId: string;
  readonly colourId: string;
  readonly side: string;
};

/**
 * Takes in a photograph of a blank, not yet set to scale. One there already is of the same side, size and colour is
 * replaced. What is kept holds nothing but the picture; a refused or broken-off upload leaves nothing behind.
 */
export async function receivePhotograph(
  maker: MakerAccess,
  { blankId, sizeId, colourId, side: said }: PhotographOf,
  picture: PictureBody,
): Promise<ReceivedPhotograph> {
  const blank = await loadBlank(maker, blankId);
  if (!blank) return { ok: false, reason: 'noBlank' };
  const { kind, sizes, colours } = blank.style;
  const side = SIDES.find((each) => each === said && sidesOf(kind).includes(each));
  if (!side || !sizes.some((size) => size.sizeId === sizeId) || !colours.some((each) => each.colourId === colourId))
    return { ok: false, reason: 'noSuchPlace' };
  return takeInPicture(picture, isRaster, (incoming, mediaType) =>
    keepPhotograph({ blankId, sizeId, colourId, side }, incoming, mediaType),
  );
}

type Place = Omit<PhotographOf, 'side'> & { readonly side: Side };

async function keepPhotograph(
  place: Place,
  incoming: IncomingFile,
  mediaType: RasterMediaType,
): Promise<ReceivedPhotograph> {
  const kept = await artFiles().place();
  try {
    const read = await readInWorker({ path: incoming.path, mediaType, picturePath: kept.path });
    if (!read.ok) return read;
    return await addPhotograph(place, await kept.keep(), read);
  } finally {
    await kept.discard();
  }
}

async function readInWorker(
  request: ReadPhotographRequest,
): Promise<ReadPhotograph | { readonly ok: false; readonly reason: 'tookTooLong' }> {
  try {
    return await runInWorker<ReadPhotographRequest, ReadPhotograph>('read-photograph', request, {
      timeoutMs: READ_LIMIT_MS,
    });
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: error.reason === 'tookTooLong' ? 'tookTooLong' : 'damaged' };
  }
}

/** The size or colour may have been dropped from the list while the photograph was on its way. */
function addPhotograph(
  { blankId, sizeId, colourId, side }: Place,
  file: StoredFile,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): Promise<ReceivedPhotograph> {
  return write(async (tx): Promise<ReceivedPhotograph> => {
    await tx.blankPhotograph.deleteMany({ where: { sizeId, colourId, side } });
    const [size, colour] = await Promise.all([
      tx.blankSize.findFirst({ where: { id: sizeId, blankId }, select: { id: true } }),
      tx.blankColour.findFirst({ where: { id: colourId, blankId }, select: { id: true } }),
    ]);
    if (!(size && colour)) return { ok: false, reason: 'noSuchPlace' };
    const now = new Date();
    await addFile(tx, file, 'image/jpeg', { widthPx, heightPx }, now);
    const photographId = newId();
    await tx.blankPhotograph.create({
      data: {
        id: photographId,
        blankId,
        sizeId,
        colourId,
        side,
        pictureSha256: file.sha256,
        widthPx,
        heightPx,
        settingJson: NOT_SET,
        createdAt: now,
      },
    });
    return { ok: true, photographId };
  });
}
