import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import type { OnHand } from './load-blank';

/** Somebody's count of one size in one colour, and what was on hand when they began to count. */
export type CountedOnHand = OnHand & { readonly seen: number };

export type SetOnHandResult =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: 'noBlank' | 'sizeOrColourGone' }
  /** What is on hand by now where somebody else counted, or took some, meanwhile. */
  | { readonly ok: false; readonly reason: 'countedMeanwhile'; readonly now: readonly OnHand[] };

/**
 * Keeps what was counted on the shelf: for each count the difference to what is on hand, worked out while nobody else can
 * write. Where that is no longer what the counter saw, nothing is kept and they are told, so that neither of two counts
 * is lost without a word.
 */
export async function setOnHand(
  maker: MakerAccess,
  blankId: string,
  counts: readonly CountedOnHand[],
): Promise<SetOnHandResult> {
  const at = new Date();
  return write(async (tx) => {
    // Begins with a write that changes nothing, so that what is read next stays so until the end.
    await tx.blankSize.updateMany({ where: { blankId }, data: { blankId } });
    const blank = await tx.blank.findUnique({
      where: { id: blankId },
      select: { sizes: { select: { id: true } }, colours: { select: { id: true } } },
    });
    if (!blank) return { ok: false, reason: 'noBlank' };
    const isThere = ({ sizeId, colourId }: OnHand) =>
      blank.sizes.some(({ id }) => id === sizeId) && blank.colours.some(({ id }) => id === colourId);
    if (!counts.every(isThere)) return { ok: false, reason: 'sizeOrColourGone' };
    const present = await onHandNow(tx, blankId);
    const differing = counts
      .map((count) => ({ ...count, present: present(count) }))
      .filter(({ quantity, present: now }) => quantity !== now);
    const contested = differing.filter(({ seen, present: now }) => seen !== now);
    if (contested.length > 0) {
      const now = contested.map(({ sizeId, colourId, present: quantity }) => ({ sizeId, colourId, quantity }));
      return { ok: false, reason: 'countedMeanwhile', now };
    }
    await tx.stockMove.createMany({
      data: differing.map(({ sizeId, colourId, quantity, present: now }) => ({
        id: newId(),
        sizeId,
        colourId,
        change: quantity - now,
        reason: 'counted',
        byUserId: maker.userId,
        at,
      })),
    });
    return { ok: true };
  });
}

async function onHandNow(tx: Transaction, blankId: string): Promise<(of: Omit<OnHand, 'quantity'>) => number> {
  const moves = await tx.stockMove.groupBy({
    by: ['sizeId', 'colourId'],
    where: { size: { blankId } },
    _sum: { change: true },
  });
  const sums = new Map(moves.map(({ sizeId, colourId, _sum }) => [`${sizeId} ${colourId}`, _sum.change ?? 0]));
  return ({ sizeId, colourId }) => sums.get(`${sizeId} ${colourId}`) ?? 0;
}
