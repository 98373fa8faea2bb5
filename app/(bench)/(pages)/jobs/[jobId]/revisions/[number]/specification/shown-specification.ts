import type { PlacementRow } from '@/components/specification/specified-garment';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ViewGarment, ViewSide } from '@/lib/domain/revision/view';
import type { Locale } from '@/lib/messages/locales';
import { acrossWords, dropWords, sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';

type ViewSize = ViewGarment['sizes'][number];
type ViewPrint = ViewSide['prints'][number];

/** Every print of a garment in every size group, front first, in the unit the revision was sealed in. */
export function placementRows(
  locale: Locale,
  unit: LengthUnit,
  garment: Pick<ViewGarment, 'sizes'>,
  fileAddress: ((printId: string, groupId: string) => string) | null,
): PlacementRow[] {
  const t = translatorFor(locale, 'specification');
  const readings = translatorFor(locale, 'readings');
  return groupedPrints(garment.sizes).map(({ print, sizes }) => {
    const { printId, groupId, name, locationId, reading } = print;
    const sizeList = sizes.map((size) => sizeWords(readings, size)).join(', ');
    return {
      key: `${printId} ${groupId}`,
      print: name,
      place: readings(`location.${locationId}`),
      sizes: sizeList,
      wide: formatLength(reading.widthUm, unit),
      tall: formatLength(reading.heightUm, unit),
      down: dropWords(readings, reading, unit),
      across: acrossWords(readings, reading.across, unit),
      meant: meantWords(locale, printId, sizes),
      file: fileAddress && {
        href: fileAddress(printId, groupId),
        words: t('file'),
        label: t('fileName', { print: name, sizes: sizeList }),
      },
    };
  });
}

/** Why a print crosses a seam or leaves the garment on some of these sizes, in the maker's words. */
function meantWords(locale: Locale, printId: string, sizes: readonly ViewSize[]): string | null {
  const readings = translatorFor(locale, 'readings');
  const meant = sizes.flatMap((size) =>
    size.sides
      .flatMap(({ prints }) => prints)
      .filter((print) => print.printId === printId && print.fit && print.fit.stops.length > 0)
      .map(({ fitNote }) => ({ size: sizeWords(readings, size), note: fitNote ?? '' })),
  );
  const [first] = meant;
  if (!first) return null;
  const on = new Intl.ListFormat(locale).format(meant.map(({ size }) => size));
  return translatorFor(locale, 'specification')('meant', { sizes: on, note: first.note });
}

function groupedPrints(sizes: readonly ViewSize[]): { print: ViewPrint; sizes: ViewSize[] }[] {
  const groups = new Map<string, { print: ViewPrint; sizes: ViewSize[] }>();
  for (const size of sizes) {
    for (const print of size.sides.flatMap(({ prints }) => prints)) {
      const key = `${print.printId} ${print.groupId}`;
      const group = groups.get(key) ?? { print, sizes: [] };
      group.sizes.push(size);
      groups.set(key, group);
    }
  }
  return [...groups.values()].sort((a, b) => firstSeen(sizes, a.print) - firstSeen(sizes, b.print));
}

/** Where a print comes in the order of sides and prints, so that its size groups stand together. */
function firstSeen(sizes: readonly ViewSize[], { printId }: ViewPrint): number {
  const order = sizes.flatMap(({ sides }) => sides).flatMap(({ prints }) => prints);
  return order.findIndex((print) => print.printId === printId);
}
