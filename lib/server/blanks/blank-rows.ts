import { type BlankStyle, blankStyleSchema, type StyleColour } from '@/lib/domain/garment/blank-style';
import type { Transaction } from '../db/open-database';

/** What of a blank's rows its style is read from, in the order they are listed. */
export const styleRows = {
  sizes: { orderBy: { position: 'asc' } },
  colours: { orderBy: { position: 'asc' } },
} as const;

type BlankRowsOf = NonNullable<Awaited<ReturnType<typeof findBlank>>>;

/** A blank with its sizes and colours, inside a transaction; null when it is gone. */
export function findBlank(tx: Transaction, blankId: string) {
  return tx.blank.findUnique({ where: { id: blankId }, include: styleRows });
}

/** The style that a blank's rows hold. Throws for rows that are none: they were checked when they were written. */
export function styleOf(row: BlankRowsOf): BlankStyle {
  return blankStyleSchema.parse({
    name: row.name,
    kind: row.kind,
    ageBand: row.ageBand,
    fabric: row.fabric,
    supplierNote: row.supplierNote,
    chartSource: row.chartSource,
    cutToleranceUm: { acrossUm: row.toleranceAcrossUm, longUm: row.toleranceAlongUm },
    sizes: row.sizes.map(({ id, label, measuresJson, costMinor }) => ({
      sizeId: id,
      label,
      entered: JSON.parse(measuresJson),
      costMinor,
    })),
    colours: row.colours.map(colourOf),
  });
}

/** The colour that a row holds. */
export function colourOf(row: BlankRowsOf['colours'][number]): StyleColour {
  return {
    colourId: row.id,
    name: row.name,
    hex: row.hex,
    heather: row.heather,
    ...(row.secondName === null ? {} : { secondName: row.secondName }),
    ...(row.secondHex === null ? {} : { secondHex: row.secondHex }),
  };
}
