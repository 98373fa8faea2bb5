import { type IncomingFile, NoRoomLeft, TooManyBytes } from '../files/file-store';
import { artFiles } from '../files/store';
import { type ArtMediaType, fileKind } from '../image/file-kind';
import { readHead } from './read-head';

/** Longest file that is taken: 25 MB. */
export const MOST_ART_BYTES = 25 * 1024 * 1024;

export type TakeInRefusal = 'empty' | 'tooLarge' | 'cutShort' | 'notAPicture' | 'kindNotTaken' | 'noRoomLeft';

export type PictureBody = {
  /** Content-Length, or null where it was not given. */
  readonly declaredLength: number | null;
  readonly body: AsyncIterable<Uint8Array>;
};

type Refused = { readonly ok: false; readonly reason: TakeInRefusal; readonly kind?: string };

/**
 * Takes a picture's bytes in, counted while they arrive and known by their content, and hands them to `keep`. Whatever
 * comes of it, the bytes are gone from where they lay unless `keep` kept them.
 */
export async function takeInPicture<Kept>(
  { declaredLength, body }: PictureBody,
  keep: (incoming: IncomingFile, mediaType: ArtMediaType) => Promise<Kept>,
): Promise<Kept | Refused> {
  if (declaredLength !== null && declaredLength > MOST_ART_BYTES) return { ok: false, reason: 'tooLarge' };
  const incoming = await takeIn(body);
  if ('reason' in incoming) return { ok: false, reason: incoming.reason };
  try {
    if (declaredLength !== null && incoming.bytes !== declaredLength) return { ok: false, reason: 'cutShort' };
    if (incoming.bytes === 0) return { ok: false, reason: 'empty' };
    const kind = await fileKind(await readHead(incoming.path));
    if (kind.kind === 'unknown') return { ok: false, reason: 'notAPicture' };
    if (kind.kind === 'other') return { ok: false, reason: 'kindNotTaken', kind: kind.name };
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
