import type { Side } from '@/lib/domain/garment/flat';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { pictureFileName } from '@/lib/domain/revision/picture-name';
import type { ViewGarment, ViewSide } from '@/lib/domain/revision/view';
import { colourWords } from '@/lib/messages/cloth-words';
import type { Locale } from '@/lib/messages/locales';
import { chestWords, readingLine, readingWords, sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import { type MeantWords, meantWords, type PrintOnSizes, type SeamsWords, seamsWords } from './fit-words';
import { type LineWords, lineWords } from './line-words';
import { unbroken } from './unbroken';

/** One drawing of a side, and what it shows for those who hear it. `size` is where its size stands among the sizes. */
export type SidePicture = {
  readonly size: number;
  readonly sceneSha256: string;
  readonly alt: string;
  /** The same on the shop's photograph, where there is one. */
  readonly photograph: { readonly file: string; readonly alt: string } | null;
};
/** What the tape reads for a print, a row for sizes that read the same. */
export type PrintRows = {
  readonly printId: string;
  readonly title: string;
  readonly rows: readonly {
    /** Where its sizes stand among the sizes: `2 3 4`. */
    readonly of: string;
    readonly sizes: string;
    readonly howBig: string;
    readonly where: string;
  }[];
  readonly meant: MeantWords | null;
  /** Said where its picture comes out soft and it is made all the same. */
  readonly soft: string | null;
  readonly seams: SeamsWords | null;
};
/** One side of a garment on every size. */
export type SideWords = {
  readonly side: Side;
  readonly name: string;
  readonly pictures: readonly SidePicture[];
  readonly prints: readonly PrintRows[];
};
/** A garment of a revision in words, with nothing left to look up or to work out. */
export type GarmentWords = {
  readonly garmentId: string;
  readonly title: string;
  readonly inAll: string;
  readonly total: string;
  readonly pick: string;
  readonly pickHint: string;
  readonly drawnToScale: string;
  readonly nothingHere: string;
  /** Heads of the table of counts. */
  readonly heads: { readonly size: string; readonly chest: string; readonly count: string; readonly total: string };
  readonly sizes: readonly {
    readonly id: string;
    readonly said: string;
    readonly chest: string;
    /** Size and width for those who hear it. */
    readonly inFull: string;
    readonly quantity: string;
  }[];
  /** The size its pictures start with: the one most are ordered of, the first of several. */
  readonly shownFirst: number;
  readonly line: LineWords | null;
  /** What is said where a side can be looked at on the shop's photograph; null where none can. */
  readonly photographs: {
    readonly legend: string;
    readonly drawn: string;
    readonly photograph: string;
    readonly sentence: string;
  } | null;
  readonly sides: readonly SideWords[];
};

const known = new WeakMap<ViewGarment, GarmentWords>();

/**
 * Puts a garment of a sent revision into words: once for each one that is kept in memory, since it never changes and a
 * revision has one language and one unit.
 */
export function garmentWords(garment: ViewGarment, locale: Locale, unit: LengthUnit): GarmentWords {
  const words = known.get(garment) ?? putInWords(garment, locale, unit);
  known.set(garment, words);
  return words;
}

const WIDTH_HEADS = {
  chestWidth: 'acrossTheChest',
  thighWidth: 'acrossTheThigh',
  panelWidth: 'wide',
} as const;

type Size = ViewGarment['sizes'][number];
type ShownPrint = ViewSide['prints'][number];

function putInWords(garment: ViewGarment, locale: Locale, unit: LengthUnit): GarmentWords {
  const t = translatorFor(locale, 'proof');
  const readings = translatorFor(locale, 'readings');
  const customer = translatorFor(locale, 'photographs.customer');
  const said = new Map(garment.sizes.map((size) => [size, sizeWords(readings, size)]));
  const saidOf = (size: Size) => said.get(size) ?? size.label;
  const colour = colourWords(readings, garment.cloth);
  const sides = [...new Set(garment.sizes.flatMap((size) => size.sides.map(({ side }) => side)))];
  const most = Math.max(...garment.sizes.map(({ quantity }) => quantity));

  function altOf(size: Size, { side, prints }: ViewSide): string {
    const shown = prints.map(({ name, locationId, reading }) =>
      t('altPrint', {
        print: name,
        place: readings(`place.${locationId}`),
        reading: readingLine(readings, reading, unit),
      }),
    );
    return t('alt', {
      side: readings(`side.${side}`),
      garment: garment.name,
      colour,
      size: saidOf(size),
      prints: shown.join(' ') || t('nothingHere'),
    });
  }

  function photographOf({ photographed, sceneSha256 }: ViewSide, alt: string): SidePicture['photograph'] {
    if (!photographed) return null;
    const file = pictureFileName({ kind: 'photograph', sha256: sceneSha256 });
    return { file, alt: customer('alt', { alt }) };
  }

  function sideWords(side: Side): SideWords {
    const drawn = garment.sizes.flatMap((size, at) =>
      size.sides.filter((each) => each.side === side).map((shown) => ({ at, size, shown })),
    );
    return {
      side,
      name: readings(`side.${side}`),
      pictures: drawn.map(({ at, size, shown }) => ({
        size: at,
        sceneSha256: shown.sceneSha256,
        alt: altOf(size, shown),
        photograph: photographOf(shown, altOf(size, shown)),
      })),
      prints: printsBySize(drawn).map(({ print, on, groups }) => ({
        printId: print.printId,
        title: t('print', { print: print.name, place: readings(`place.${print.locationId}`) }),
        rows: groups.map(({ reading, sizes }) => {
          const { sizeWithHeight, drop, across } = readingWords(readings, reading, unit);
          const isAll = sizes.length === garment.sizes.length;
          return {
            of: sizes.map((size) => garment.sizes.indexOf(size)).join(' '),
            sizes: isAll ? t('allSizes') : sizes.map(saidOf).join(', '),
            howBig: unbroken(sizeWithHeight),
            where: unbroken(t('where', { drop, across })),
          };
        }),
        meant: meantWords(locale, on, garment.sizes.length),
        soft: print.goAheadSoft ? t('soft') : null,
        seams: seamsWords(locale, unit, on, garment.sizes.length),
      })),
    };
  }

  const count = new Intl.NumberFormat(locale);
  const widthMeasure = garment.sizes[0]?.widthMeasure ?? 'chestWidth';
  return {
    garmentId: garment.garmentId,
    title: t('garment', { garment: garment.name, colour }),
    inAll: t('inAll', { count: garment.total }),
    total: count.format(garment.total),
    pick: t('pick'),
    pickHint: t(`pickHint.${widthMeasure}`),
    drawnToScale: t('drawnToScale'),
    nothingHere: t('nothingHere'),
    heads: {
      size: t('size'),
      chest: t(WIDTH_HEADS[widthMeasure]),
      count: t('count'),
      total: t('total'),
    },
    sizes: garment.sizes.map((size) => ({
      id: `${size.blankId} ${size.sizeId}`,
      said: saidOf(size),
      chest: unbroken(formatLength(size.chestUm, unit)),
      inFull: `${saidOf(size)}, ${chestWords(readings, size.chestUm, unit, size.widthMeasure)}`,
      quantity: count.format(size.quantity),
    })),
    shownFirst: garment.sizes.findIndex(({ quantity }) => quantity === most),
    line: lineWords(garment, locale),
    photographs: garment.sizes.some((size) => size.sides.some(({ photographed }) => photographed))
      ? {
          legend: customer('legend'),
          drawn: customer('drawn'),
          photograph: customer('photograph'),
          sentence: customer('sentence'),
        }
      : null,
    sides: sides.map(sideWords),
  };
}

type SameReading = { readonly reading: ShownPrint['reading']; readonly sizes: Size[] };

type PrintOfSide = {
  readonly print: ShownPrint;
  readonly on: PrintOnSizes[number][];
  readonly groups: Map<string, SameReading>;
};

/** Each print of a side once, with its sizes put together that read the same, in the order sizes are listed. */
function printsBySize(
  drawn: readonly { at: number; size: Size; shown: ViewSide }[],
): { print: ShownPrint; on: PrintOnSizes; groups: SameReading[] }[] {
  const prints = new Map<string, PrintOfSide>();
  for (const { at, size, shown } of drawn) {
    for (const print of shown.prints) {
      const known: PrintOfSide = prints.get(print.printId) ?? { print, on: [], groups: new Map() };
      prints.set(print.printId, known);
      known.on.push({ at, size, print });
      const key = JSON.stringify(print.reading);
      const same = known.groups.get(key) ?? { reading: print.reading, sizes: [] };
      same.sizes.push(size);
      known.groups.set(key, same);
    }
  }
  return [...prints.values()].map(({ print, on, groups }) => ({ print, on, groups: [...groups.values()] }));
}
