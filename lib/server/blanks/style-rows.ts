import { type BlankStyle, blankStyleSchema, type StyleColour, type StyleSize } from '@/lib/domain/garment/blank-style';
import { chartFaults, repeatedColours, type StyleFault } from '@/lib/domain/garment/style-faults';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';

/** Why a style cannot be kept as it is. */
export type FaultyStyle = { readonly ok: false; readonly reason: 'faults'; readonly faults: readonly StyleFault[] };

/** A style that can be kept, tidied; or what of it cannot be. Throws for one that is not of its schema: that is checked at the edge. */
export function checkedStyle(style: BlankStyle): { ok: true; style: BlankStyle } | FaultyStyle {
  const tidy = blankStyleSchema.parse(style);
  const faults = [...chartFaults(tidy.kind, tidy.sizes), ...repeatedColours(tidy.colours)];
  return faults.length > 0 ? { ok: false, reason: 'faults', faults } : { ok: true, style: tidy };
}

/** The columns of a blank's own row. */
export function blankColumns(style: BlankStyle) {
  return {
    name: style.name,
    kind: style.kind,
    ageBand: style.ageBand,
    fabric: style.fabric,
    chartSource: style.chartSource,
    supplierNote: style.supplierNote,
    toleranceAcrossUm: style.cutToleranceUm.acrossUm,
    toleranceAlongUm: style.cutToleranceUm.longUm,
  };
}

function sizeColumns({ label, entered, costMinor }: StyleSize, position: number) {
  return { position, label, measuresJson: JSON.stringify(entered), costMinor };
}

function colourColumns({ name, hex, heather, secondName, secondHex }: StyleColour, position: number) {
  return { position, name, hex, heather, secondName: secondName ?? null, secondHex: secondHex ?? null };
}

/**
 * Makes a blank's size and colour rows those of `style`: rows it still names keep their ids, and with them what is on hand;
 * those it no longer names go; those it names anew get ids of their own. `before` names the rows there are.
 */
export async function writeStyleRows(
  tx: Transaction,
  blankId: string,
  before: Pick<BlankStyle, 'sizes' | 'colours'>,
  { sizes, colours }: Pick<BlankStyle, 'sizes' | 'colours'>,
): Promise<void> {
  const sizeIds = new Set(before.sizes.map(({ sizeId }) => sizeId));
  const colourIds = new Set(before.colours.map(({ colourId }) => colourId));
  await tx.blankSize.deleteMany({ where: { blankId, id: { notIn: sizes.map(({ sizeId }) => sizeId) } } });
  await tx.blankColour.deleteMany({ where: { blankId, id: { notIn: colours.map(({ colourId }) => colourId) } } });
  // Two rows that swap their names must not have the same one on the way: each first takes its id for a name.
  for (const id of sizeIds) await tx.blankSize.updateMany({ where: { id }, data: { label: id } });
  for (const id of colourIds) await tx.blankColour.updateMany({ where: { id }, data: { name: id } });
  for (const [position, size] of sizes.entries()) {
    const data = sizeColumns(size, position);
    if (sizeIds.has(size.sizeId)) await tx.blankSize.update({ where: { id: size.sizeId }, data });
    else await tx.blankSize.create({ data: { id: newId(), blankId, ...data } });
  }
  for (const [position, colour] of colours.entries()) {
    const data = colourColumns(colour, position);
    if (colourIds.has(colour.colourId)) await tx.blankColour.update({ where: { id: colour.colourId }, data });
    else await tx.blankColour.create({ data: { id: newId(), blankId, ...data } });
  }
}
