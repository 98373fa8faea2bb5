import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import { newId } from '../db/new-id';
import { findBlank, styleOf } from './blank-rows';
import { blankColumns, checkedStyle, type FaultyStyle, writeStyleRows } from './style-rows';

/** Puts a blank on the shop's list. Its sizes and colours get ids of their own. */
export async function addBlank(
  _maker: MakerAccess,
  style: BlankStyle,
): Promise<{ readonly ok: true; readonly blankId: string } | FaultyStyle> {
  const checked = checkedStyle(style);
  if (!checked.ok) return checked;
  const blankId = newId();
  const now = new Date();
  await write(async (tx) => {
    await tx.blank.create({ data: { id: blankId, ...blankColumns(checked.style), createdAt: now, updatedAt: now } });
    await writeStyleRows(tx, blankId, { sizes: [], colours: [] }, checked.style);
  });
  return { ok: true, blankId };
}

/** Puts a copy of a blank on the list under another name: its chart, costs and colours, and nothing on hand. */
export async function duplicateBlank(
  _maker: MakerAccess,
  blankId: string,
  name: string,
): Promise<{ readonly ok: true; readonly blankId: string } | { readonly ok: false; readonly reason: 'noBlank' }> {
  const copyId = newId();
  const now = new Date();
  return write(async (tx) => {
    // Begins with a write, so that the blank cannot change between being read and being copied.
    await tx.blankSize.updateMany({ where: { blankId }, data: { blankId } });
    const row = await findBlank(tx, blankId);
    if (!row) return { ok: false, reason: 'noBlank' };
    const style = { ...styleOf(row), name };
    await tx.blank.create({ data: { id: copyId, ...blankColumns(style), createdAt: now, updatedAt: now } });
    await writeStyleRows(tx, copyId, { sizes: [], colours: [] }, style);
    return { ok: true, blankId: copyId };
  });
}
