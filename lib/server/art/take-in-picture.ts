import { type IncomingFile, NoRoomLeft, TooManyBytes } from '../files/file-store';
import { artFiles } from '../files/store';
import { type ArtMediaType, fileKind } from '../image/file-kind';
import { readHead } from './read-head';

/** Longest file that is taken: 25 MB. */
export const MOST_ART_BYTES = 25 * 1024 * 1024;

export type TakeInRefusal =
  | 'empty'
  | 'tooLarge'
  | 'cutShort'
  | 'notAPicture'
  | 'kindNotTaken'
  | 'heicNotRead'
  | 'noRoomLeft';

export type PictureBody = {
  /** Content-Length, or null where it was not given. */
  readonly declaredLength: number | null;
  readonly body: AsyncIterable<Uint8Array>;
};

/** What people call the kinds of files. */
const NAMES: Readonly<Record<ArtMediaType, string>> = {
  'image/png': 'PNG',
  'image/jpeg': 'JPEG',
  'image/webp': 'WebP',
  'image/tiff': 'TIFF',
  'image/avif': 'AVIF',
  'image/gif': 'GIF',
  'image/svg+xml': 'SVG',
  'application/pdf': 'PDF',
};

type Refused = { readonly ok: false; readonly reason: TakeInRefusal; readonly kind?: string };

/**
 * Takes a picture's bytes in, counted while they arrive and known by their content, and hands those of a kind that
 * `isTaken` to `keep`. Whatever comes of it, the bytes are gone from where they lay unless `keep` kept them.
 */
export async function takeInPicture<Taken extends ArtMediaType, Kept>(
  { declaredLength, body }: PictureBody,
  isTaken: (mediaType: ArtMediaType) => mediaType is Taken,
  keep: (incoming: IncomingFile, mediaType: Taken) => Promise<Kept>,
): Promise<Kept | Refused> {
  if (declaredLength !== null && declaredLength > MOST_ART_BYTES) return { ok: false, reason: 'tooLarge' };
  const incoming = await takeIn(body);
  if ('reason' in incoming) return { ok: false, reason: incoming.reason };
  try {
    if (declaredLength !== null && incoming.bytes !== declaredLength) return { ok: false, reason: 'cutShort' };
    if (incoming.bytes === 0) return { ok: false, reason: 'empty' };
    const kind = await fileKind(await readHead(incoming.path));
    if (kind.kind === 'unknown') return { ok: false, reason: 'notAPicture' };
    if (kind.kind === 'heic') return { ok: false, reason: 'heicNotRead' };
    if (kind.kind === 'other') return { ok: false, reason: 'kindNotTaken', kind: kind.name };
    if (!isTaken(kind.mediaType)) return { ok: false, reason: 'kindNotTaken', kind: NAMES[kind.mediaType] };
    return await keep(incoming, kind.mediaType);
  } catch (error) {
    if (error instanceof NoRoomLeft) return { ok: false, reason: 'noRoomLeft' };
    throw error;
  } finally {
    await incoming.discard();
  }
}

async function takeIn(body: AsyncIterable<Uint8Array>): Promise<IncomingFile | { reason: TakeInRefusal }> {
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
