import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import type { Transaction } from '../db/open-database';
import { type IncomingFile, NoRoomLeft, type StoredFile, TooManyBytes } from '../files/file-store';
import { artFiles } from '../files/store';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';
import type { CheckedFont, CheckFontRequest, FontFault } from './check-font';
import { packagedFont } from './packaged-fonts';

/** Longest font file that is taken: 20 MB, more than any family without Chinese or Japanese needs. */
export const MOST_FONT_BYTES = 20 * 1024 * 1024;

/** How long a font may take to be tried before it is given up. */
const CHECK_LIMIT_MS = 20_000;

const LONGEST_FILE_NAME = 120;

export type FontRefusal = FontFault | 'empty' | 'tooLarge' | 'cutShort' | 'noRoomLeft' | 'tookTooLong';

export type ReceivedFont =
  /** `alreadyThere`: the same file is offered already, by the shop or by the app. */
  | { readonly ok: true; readonly ref: FontRef; readonly alreadyThere: boolean }
  | { readonly ok: false; readonly reason: FontRefusal };

export type FontBody = {
  readonly fileName: string;
  /** Content-Length, or null where it was not given. */
  readonly declaredLength: number | null;
  readonly body: AsyncIterable<Uint8Array>;
};

/** Takes in a font of the shop's own and offers it for lettering. A refused or broken-off upload leaves nothing behind. */
export async function receiveFont(
  _maker: MakerAccess,
  { fileName, declaredLength, body }: FontBody,
): Promise<ReceivedFont> {
  if (declaredLength !== null && declaredLength > MOST_FONT_BYTES) return { ok: false, reason: 'tooLarge' };
  const incoming = await takeIn(body);
  if ('reason' in incoming) return { ok: false, reason: incoming.reason };
  try {
    if (declaredLength !== null && incoming.bytes !== declaredLength) return { ok: false, reason: 'cutShort' };
    if (incoming.bytes === 0) return { ok: false, reason: 'empty' };
    const shipped = packagedFont(incoming.sha256);
    if (shipped) return { ok: true, ref: shipped.ref, alreadyThere: true };
    const checked = await checkInWorker({ path: incoming.path, fileName });
    if (!checked.ok) return checked;
    return await offer(await incoming.keep(), fileName, checked);
  } catch (error) {
    if (error instanceof NoRoomLeft) return { ok: false, reason: 'noRoomLeft' };
    throw error;
  } finally {
    await incoming.discard();
  }
}

async function takeIn(body: AsyncIterable<Uint8Array>): Promise<IncomingFile | { reason: FontRefusal }> {
  const watched = { broken: false };
  async function* passedOn(): AsyncGenerator<Uint8Array> {
    try {
      yield* body;
    } catch (error) {
      watched.broken = true;
      throw error;
    }
  }
  try {
    return await artFiles().take(passedOn(), MOST_FONT_BYTES);
  } catch (error) {
    if (error instanceof TooManyBytes) return { reason: 'tooLarge' };
    if (error instanceof NoRoomLeft) return { reason: 'noRoomLeft' };
    if (watched.broken) return { reason: 'cutShort' };
    throw error;
  }
}

async function checkInWorker(
  request: CheckFontRequest,
): Promise<CheckedFont | { readonly ok: false; readonly reason: 'tookTooLong' }> {
  try {
    return await runInWorker<CheckFontRequest, CheckedFont>('check-font', request, { timeoutMs: CHECK_LIMIT_MS });
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return error.reason === 'tookTooLong' ? { ok: false, reason: 'tookTooLong' } : { ok: false, reason: 'damaged' };
  }
}

type UsableFont = Extract<CheckedFont, { ok: true }>;

function offer(file: StoredFile, fileName: string, font: UsableFont): Promise<ReceivedFont> {
  return write(async (tx) => {
    const ref = await addFont(tx, file, font, 'uploaded');
    const offered = await tx.shopFont.findUnique({ where: { sha256: file.sha256 }, select: { sha256: true } });
    if (offered) return { ok: true, ref, alreadyThere: true };
    await tx.shopFont.create({
      data: {
        sha256: file.sha256,
        fileName: Array.from(fileName).slice(0, LONGEST_FILE_NAME).join(''),
        embedding: font.embedding,
        createdAt: new Date(),
      },
    });
    return { ok: true, ref, alreadyThere: false };
  });
}

/** Notes that a font is kept, once; the name it was first kept under stays. */
export async function addFont(
  tx: Transaction,
  { sha256, bytes }: StoredFile,
  { family, style }: { readonly family: string; readonly style: string },
  origin: 'shipped' | 'uploaded',
): Promise<FontRef> {
  const known = await tx.font.findUnique({ where: { sha256 }, select: { family: true, style: true } });
  if (known) return { sha256, ...known };
  await tx.font.create({ data: { sha256, byteLength: bytes, family, style, origin, createdAt: new Date() } });
  return { sha256, family, style };
}
