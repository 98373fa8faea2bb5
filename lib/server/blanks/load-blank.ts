import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { styleOf, styleRows } from './blank-rows';

/** How many of one size in one colour lie on the shelf. */
export type OnHand = { readonly sizeId: string; readonly colourId: string; readonly quantity: number };

/** One blank of the shop's list. */
export type BlankView = {
  readonly blankId: string;
  readonly style: BlankStyle;
  /** What was counted; a size and colour that is not listed was never counted, so there are none. */
  readonly onHand: readonly OnHand[];
  readonly archived: boolean;
  /** When it was last edited: whoever edits it says which state they saw. */
  readonly updatedAt: Date;
};

/** One blank with its chart, colours and counts; null when there is none with this id. */
export async function loadBlank(_maker: MakerAccess, blankId: string): Promise<BlankView | null> {
  const [row, moves] = await Promise.all([
    reader().blank.findUnique({ where: { id: blankId }, include: styleRows }),
    reader().stockMove.groupBy({
      by: ['sizeId', 'colourId'],
      where: { size: { blankId } },
      _sum: { change: true },
    }),
  ]);
  if (!row) return null;
  return {
    blankId: row.id,
    style: styleOf(row),
    onHand: moves.map(({ sizeId, colourId, _sum }) => ({ sizeId, colourId, quantity: _sum.change ?? 0 })),
    archived: row.archivedAt !== null,
    updatedAt: row.updatedAt,
  };
}
