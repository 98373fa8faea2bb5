import type { Side } from '@/lib/domain/garment/flat';
import { lineStrip } from '@/lib/domain/layout/line-strip';
import { pictureFileName } from '@/lib/domain/revision/picture-name';
import { sidesOnLine, type ViewGarment } from '@/lib/domain/revision/view';
import { colourWords } from '@/lib/messages/cloth-words';
import type { Locale } from '@/lib/messages/locales';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';

/** The line of a garment: every size hung side by side, one picture for each side that has a print. */
export type LineWords = {
  readonly widthPx: number;
  readonly heightPx: number;
  /** What is chosen where there are several. */
  readonly turn: string;
  readonly pictures: readonly {
    readonly side: Side;
    readonly name: string;
    readonly file: string;
    readonly alt: string;
  }[];
};

/** Puts a garment's line into words; null where its sizes are too many to hang side by side. */
export function lineWords(garment: ViewGarment, locale: Locale): LineWords | null {
  const { garmentId, name, cloth, sizes } = garment;
  const strip = lineStrip(garment, sizes.length);
  if (!strip) return null;
  const t = translatorFor(locale, 'proof');
  const readings = translatorFor(locale, 'readings');
  const said = new Intl.ListFormat(locale).format(sizes.map((size) => sizeWords(readings, size)));
  return {
    widthPx: strip.widthPx,
    heightPx: strip.heightPx,
    turn: t('line.side'),
    pictures: sidesOnLine(garment).map((side) => ({
      side,
      name: readings(`side.${side}`),
      file: pictureFileName({ kind: 'line', garmentId, side }),
      alt: t('line.alt', {
        side: readings(`side.${side}`),
        garment: name,
        colour: colourWords(readings, cloth),
        sizes: said,
        prints: printsOnSide(garment, side)
          .map(({ name: print, locationId }) => t('line.print', { print, place: readings(`place.${locationId}`) }))
          .join(' '),
      }),
    })),
  };
}

function printsOnSide({ sizes }: ViewGarment, side: Side) {
  const prints = sizes.flatMap(({ sides }) =>
    sides.filter((each) => each.side === side).flatMap((each) => each.prints),
  );
  return [...new Map(prints.map((print) => [print.printId, print])).values()];
}
