import type { BlankStyle, StyleColour } from '@/lib/domain/garment/blank-style';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { styleOf, styleRows } from './blank-rows';

/** A blank as the shop's list shows it. `onHand` counts all sizes and colours together. */
export type BlankRow = Pick<BlankStyle, 'name' | 'kind' | 'ageBand' | 'fabric' | 'chartSource' | 'sizes'> & {
  readonly blankId: string;
  readonly colours: readonly StyleColour[];
  /** Smallest first. */
  readonly sizeLabels: readonly string[];
  readonly onHand: number;
  readonly archived: boolean;
};

/** The shop's blanks by name, those put away among them. */
export async function listBlanks(_maker: MakerAccess): Promise<BlankRow[]> {
  const [blanks, moves] = await Promise.all([
    reader().blank.findMany({ orderBy: [{ name: 'asc' }, { createdAt: 'asc' }], include: styleRows }),
    reader().stockMove.groupBy({ by: ['sizeId'], _sum: { change: true } }),
  ]);
  const onHand = new Map(moves.map(({ sizeId, _sum }) => [sizeId, _sum.change ?? 0]));
  return blanks.map((row) => {
    const { name, kind, ageBand, fabric, chartSource, colours, sizes } = styleOf(row);
    return {
      blankId: row.id,
      name,
      kind,
      ageBand,
      fabric,
      chartSource,
      colours,
      sizes,
      sizeLabels: sizes.map(({ label }) => label),
      onHand: sizes.reduce((sum, { sizeId }) => sum + (onHand.get(sizeId) ?? 0), 0),
      archived: row.archivedAt !== null,
    };
  });
}
