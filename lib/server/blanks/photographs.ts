import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import { SIDES, type Side } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { blankFromStyle } from '@/lib/domain/layout/blank-from-style';
import {
  type PhotographSetting,
  photographSettingSchema,
  type SettingRefusal,
  setToScale,
} from '@/lib/domain/layout/photograph';
import type { ShopPhotograph } from '@/lib/domain/layout/photograph-scene';
import { flatOf } from '@/lib/domain/layout/scene';
import type { MakerAccess } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { loadBlank } from './load-blank';

/** A photograph of one side of one size in one colour; `setting` is null until two points were set. */
export type PhotographView = Omit<ShopPhotograph, 'setting'> & {
  readonly photographId: string;
  readonly colourId: string;
  readonly setting: PhotographSetting | null;
};

/** What is written while no points are set. */
export const NOT_SET = '';

type Rows = Awaited<ReturnType<typeof photographRows>>;

/** The photographs of a blank, size by size. */
export async function listPhotographs(_maker: MakerAccess, blankId: string): Promise<PhotographView[]> {
  return (await photographRows([blankId])).map(viewOf);
}

/** One photograph of a blank; null when it was removed or replaced by another. */
export async function loadPhotograph(
  maker: MakerAccess,
  blankId: string,
  photographId: string,
): Promise<PhotographView | null> {
  const all = await listPhotographs(maker, blankId);
  return all.find((each) => each.photographId === photographId) ?? null;
}

/** The photographs of these blanks of the shop's list that are set to scale. Blanks that are gone have none. */
export async function photographsFor(
  _maker: MakerAccess,
  shopBlankIds: readonly (string | undefined)[],
): Promise<ShopPhotograph[]> {
  const ids = shopBlankIds.filter((id): id is string => id !== undefined);
  if (ids.length === 0) return [];
  return (await photographRows(ids)).flatMap((row) => {
    const { photographId: _id, colourId: _colour, setting, ...photograph } = viewOf(row);
    return setting ? [{ ...photograph, setting }] : [];
  });
}

/** The size and flat a photograph is set by, from the blank's chart as it is now; null where none can be drawn. */
export function flatToSetBy(style: BlankStyle, sizeId: string, side: Side) {
  const made = blankFromStyle(style, { blankId: 'shop' });
  if (!made.ok || !sidesOf(style.kind).includes(side)) return null;
  const size = made.blank.sizes.find((each) => each.sizeId === sizeId);
  return size ? { size, flat: flatOf(style.kind, size, side) } : null;
}

export type SetPhotographResult =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: 'noPhotograph' | 'noFlat' | SettingRefusal };

/** Sets a photograph to scale by two points, or says why that cannot be meant. */
export async function setPhotograph(
  maker: MakerAccess,
  blankId: string,
  photographId: string,
  setting: PhotographSetting,
): Promise<SetPhotographResult> {
  const [blank, photograph] = await Promise.all([
    loadBlank(maker, blankId),
    loadPhotograph(maker, blankId, photographId),
  ]);
  if (!(blank && photograph)) return { ok: false, reason: 'noPhotograph' };
  const by = flatToSetBy(blank.style, photograph.sizeId, photograph.side);
  if (!by) return { ok: false, reason: 'noFlat' };
  const set = setToScale(setting, photograph, by.flat);
  if (!set.ok) return set;
  const settingJson = JSON.stringify(photographSettingSchema.parse(setting));
  const { count } = await write((tx) =>
    tx.blankPhotograph.updateMany({ where: { id: photographId, blankId }, data: { settingJson } }),
  );
  return count === 1 ? { ok: true } : { ok: false, reason: 'noPhotograph' };
}

/** Takes a photograph off the list. Jobs and revisions that took it up keep it. */
export async function removePhotograph(_maker: MakerAccess, blankId: string, photographId: string): Promise<void> {
  await write((tx) => tx.blankPhotograph.deleteMany({ where: { id: photographId, blankId } }));
}

function photographRows(blankIds: readonly string[]) {
  return reader().blankPhotograph.findMany({
    where: { blankId: { in: [...blankIds] } },
    include: { colour: { select: { name: true } } },
    orderBy: [{ size: { position: 'asc' } }, { colour: { position: 'asc' } }, { createdAt: 'asc' }],
  });
}

function viewOf(row: Rows[number]): PhotographView {
  const side = SIDES.find((each) => each === row.side);
  if (!side) throw new Error(`photograph ${row.id} is of no side: ${row.side}`);
  return {
    photographId: row.id,
    shopBlankId: row.blankId,
    sizeId: row.sizeId,
    colourId: row.colourId,
    colourName: row.colour.name,
    side,
    sha256: row.pictureSha256,
    widthPx: row.widthPx,
    heightPx: row.heightPx,
    setting: row.settingJson === NOT_SET ? null : photographSettingSchema.parse(JSON.parse(row.settingJson)),
  };
}
