import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import type { Transaction } from '../db/open-database';
import { findBlank, styleOf } from './blank-rows';
import { blankColumns, checkedStyle, type FaultyStyle, writeStyleRows } from './style-rows';

/** Sizes and colours that an edit would drop although some of them lie on the shelf, by label and name. */
export type StillOnHand = {
  readonly ok: false;
  readonly reason: 'onHand';
  readonly sizes: readonly string[];
  readonly colours: readonly string[];
};

export type EditBlankResult =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: 'noBlank' }
  | { readonly ok: false; readonly reason: 'changedElsewhere'; readonly updatedAt: Date }
  | FaultyStyle
  | StillOnHand;

/**
 * Edits a blank that is still as it was when `seenAt` was its `updatedAt`. Sizes and colours that keep their id keep what
 * is on hand, whatever they are called now. An edit that is refused leaves everything as it was.
 */
export async function editBlank(
  _maker: MakerAccess,
  blankId: string,
  seenAt: Date,
  edit: (style: BlankStyle) => BlankStyle,
): Promise<EditBlankResult> {
  const editedAt = new Date(Math.max(Date.now(), seenAt.getTime() + 1));
  return write(async (tx) => {
    const taken = await tx.blank.updateMany({
      where: { id: blankId, updatedAt: seenAt },
      data: { updatedAt: editedAt },
    });
    const row = await findBlank(tx, blankId);
    if (!row) return { ok: false, reason: 'noBlank' };
    if (taken.count === 0) return { ok: false, reason: 'changedElsewhere', updatedAt: row.updatedAt };
    const before = styleOf(row);
    const next = checkedStyle(edit(before));
    const refusal = next.ok ? await stillOnHand(tx, before, next.style) : next;
    if (refusal) {
      await tx.blank.update({ where: { id: blankId }, data: { updatedAt: seenAt } });
      return refusal;
    }
    if (!next.ok) throw new Error(`blank ${blankId} was neither refused nor edited`);
    await tx.blank.update({ where: { id: blankId }, data: { ...blankColumns(next.style), updatedAt: editedAt } });
    await writeStyleRows(tx, blankId, before, next.style);
    return { ok: true };
  });
}

/** Puts a blank away, or back on the list. Jobs keep what they took from it, whatever becomes of it. */
export async function archiveBlank(
  _maker: MakerAccess,
  blankId: string,
  archived: boolean,
): Promise<{ readonly ok: true } | { readonly ok: false; readonly reason: 'noBlank' }> {
  const touched = await write((tx) =>
    tx.blank.updateMany({ where: { id: blankId }, data: { archivedAt: archived ? new Date() : null } }),
  );
  return touched.count === 0 ? { ok: false, reason: 'noBlank' } : { ok: true };
}

async function stillOnHand(tx: Transaction, before: BlankStyle, next: BlankStyle): Promise<StillOnHand | null> {
  const sizes = before.sizes.filter(({ sizeId }) => !next.sizes.some((size) => size.sizeId === sizeId));
  const colours = before.colours.filter(({ colourId }) => !next.colours.some((each) => each.colourId === colourId));
  const moves = await tx.stockMove.groupBy({
    by: ['sizeId', 'colourId'],
    where: {
      OR: [
        { sizeId: { in: sizes.map(({ sizeId }) => sizeId) } },
        { colourId: { in: colours.map(({ colourId }) => colourId) } },
      ],
    },
    _sum: { change: true },
  });
  const held = moves.filter(({ _sum }) => (_sum.change ?? 0) !== 0);
  if (held.length === 0) return null;
  return {
    ok: false,
    reason: 'onHand',
    sizes: sizes.filter(({ sizeId }) => held.some((move) => move.sizeId === sizeId)).map(({ label }) => label),
    colours: colours.filter(({ colourId }) => held.some((move) => move.colourId === colourId)).map(({ name }) => name),
  };
}
