import { starterChart } from '@/lib/domain/garment/starter-charts';
import { emptyLayout, type LayoutDocument, layoutDocumentSchema, type Print } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart } from '@/lib/domain/layout/garment-edits';
import type { LocationId } from '@/lib/domain/layout/locations';
import { flatOf, type SceneKey } from '@/lib/domain/layout/scene';
import { keyOf, offeredSizes, sizeOf } from '@/lib/domain/layout/sizes';
import { withFrozenFlats } from '@/lib/domain/revision/frozen-scenes';
import { type ExpectedPlace, expectedPlace, measureSeam, type PrintReadings, type Seam } from './expected-place';
import type { KnownArt } from './known-art';
import type { Random } from './seeded-random';

/** A print of a generated layout, with where it must come to lie. */
export type GeneratedPrint = { readonly printId: string; readonly art: KnownArt; readonly expected: ExpectedPlace };

export type GeneratedLayout = {
  readonly layout: LayoutDocument;
  readonly key: SceneKey;
  /** The collar seam of the side, as it is drawn. */
  readonly seamData: string;
  readonly seam: Seam;
  readonly prints: readonly GeneratedPrint[];
};

const LOCATIONS_BY_SIDE = {
  front: ['fullFront', 'centreChest', 'leftChest', 'rightChest'],
  back: ['upperBack', 'fullBack', 'backNeck'],
} as const satisfies Record<'front' | 'back', readonly LocationId[]>;

const UM_PER_INCH = 25_400;
/** Art is printed no larger than sharp: 300 px to the inch, so that the file and not the art limits what can be read. */
const PX_PER_INCH = 300;
/** Room between two prints of a side, mm, so that each can be told in the print file. */
const APART_MM = 3;

/** One layout: a size, a side and up to three prints that do not lie over one another, everything by chance. */
export function generateLayout(random: Random, art: readonly KnownArt[]): GeneratedLayout {
  const base = teeInEverySize();
  const [garment] = base.garments;
  if (!garment) throw new Error('the layout has no garment');
  const size = keyOf(random.oneOf(offeredSizes(garment)));
  const side = random.oneOf(['front', 'back'] as const);
  const key: SceneKey = { garmentId: garment.garmentId, size, side, lineId: null };
  const { blank, size: offered } = sizeOf(garment, size);
  const seamData = flatOf(blank.kind, offered, side).lines.find(({ line }) => line === 'collarSeam')?.d;
  if (!seamData) throw new Error('the flat has no collar seam');
  const seam = measureSeam(seamData);
  const wanted = random.whole(1, 3);
  const prints: (GeneratedPrint & { print: Print })[] = [];
  for (let attempt = 0; attempt < 40 && prints.length < wanted; attempt += 1) {
    const channel = prints.length;
    const picture = random.oneOf(art.filter((each) => each.channel === channel));
    const readings = randomReadings(random, picture, side);
    const expected = expectedPlace(picture, readings, seam);
    if (prints.some((other) => overlap(other.expected, expected))) continue;
    const printId = `print-${channel}`;
    prints.push({ printId, art: picture, expected, print: printOf(printId, picture, readings, base) });
  }
  const layout = layoutDocumentSchema.parse({ ...base, prints: prints.map(({ print }) => print) });
  return { layout, key, seamData, seam, prints };
}

function randomReadings(random: Random, art: KnownArt, side: 'front' | 'back'): PrintReadings {
  const sharpUm = (art.ref.inkBox.width / PX_PER_INCH) * UM_PER_INCH;
  const tallestUm = (14 * UM_PER_INCH * art.ref.inkBox.width) / art.ref.inkBox.height;
  return {
    side,
    locationId: random.oneOf(LOCATIONS_BY_SIDE[side]),
    turnCentideg: random.chance(0.4) ? 0 : random.whole(-18_000, 18_000),
    widthUm: Math.round(random.between(UM_PER_INCH, Math.min(sharpUm, tallestUm, 12 * UM_PER_INCH))),
    dropUm: random.whole(UM_PER_INCH / 2, 9 * UM_PER_INCH),
    acrossUm: random.chance(0.3) ? 0 : random.whole(-5 * UM_PER_INCH, 5 * UM_PER_INCH),
  };
}

function printOf(printId: string, art: KnownArt, readings: PrintReadings, layout: LayoutDocument): Print {
  const { side, locationId, turnCentideg, ...placed } = readings;
  const members = layout.garments.flatMap((garment) => offeredSizes(garment).map(keyOf));
  return {
    printId,
    name: printId,
    garmentIds: layout.garments.map(({ garmentId }) => garmentId),
    side,
    locationId,
    content: { kind: 'art', art: art.ref },
    turnCentideg,
    sizeGroups: [{ groupId: `${printId}-group`, members, ...placed }],
  };
}

function overlap({ box: a }: ExpectedPlace, { box: b }: ExpectedPlace): boolean {
  return (
    a.left < b.right + APART_MM &&
    b.left < a.right + APART_MM &&
    a.top < b.bottom + APART_MM &&
    b.top < a.bottom + APART_MM
  );
}

let everySize: LayoutDocument | null = null;

function teeInEverySize(): LayoutDocument {
  everySize ??= makeTee();
  return everySize;
}

function makeTee(): LayoutDocument {
  const blanks = ['crew-tee-youth', 'crew-tee-adult'].map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, id, id, 'Cotton');
  });
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  return withFrozenFlats(addGarment(emptyLayout(''), { garmentId: 'tee', name: 'Tee', cloth, blanks, counts: [] }));
}
