import { lineWords } from '@/components/proof/line-words';
import { LinePictures } from '@/components/send/line-pictures';
import { SidePictures } from '@/components/send/side-pictures';
import { middleOf } from '@/lib/domain/layout/sizes';
import { pictureFileName } from '@/lib/domain/revision/picture-name';
import type { ViewGarment } from '@/lib/domain/revision/view';
import { clothWords } from '@/lib/messages/cloth-words';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { RevisionView } from '@/lib/server/revisions/load-revision';
import type { Shop } from '@/lib/server/shop/read-shop';

/** Every garment of a revision as the customer sees it, each in a middle size. */
export function ShownGarments({ shop, view }: { shop: Shop; view: RevisionView }) {
  return view.garments.map((garment) => (
    <ShownGarment key={garment.garmentId} shop={shop} revisionId={view.revision.revisionId} garment={garment} />
  ));
}

type ShownGarmentProps = { shop: Shop; revisionId: string; garment: ViewGarment };

function ShownGarment({ shop, revisionId, garment }: ShownGarmentProps) {
  const t = translatorFor(shop.locale, 'revision');
  const readings = translatorFor(shop.locale, 'readings');
  const { name, cloth, sizes, total } = garment;
  const shown = middleSize(garment);
  const size = sizeWords(readings, shown);
  return (
    <SidePictures
      name={name}
      cloth={clothWords(readings, cloth)}
      clothHex={cloth.hex}
      sides={shown.sides.map(({ side, sceneSha256 }) => ({
        key: side,
        words: readings(`side.${side}`),
        picture: (
          // biome-ignore lint/performance/noImgElement: made once by our own server at the size it is shown
          <img
            src={pictureAddress(revisionId, sceneSha256)}
            alt={t('side', { side: readings(`side.${side}`), garment: name, size })}
            width={garment.widthPx}
            height={garment.heightPx}
            loading="lazy"
          />
        ),
      }))}
      drawnIn={t('drawnIn', { size })}
      counts={t('counts', {
        sizes: sizes
          .filter(({ quantity }) => quantity > 0)
          .map((each) => t('count', { size: sizeWords(readings, each), quantity: each.quantity }))
          .join(', '),
        total,
      })}
    >
      <Line locale={shop.locale} revisionId={revisionId} garment={garment} />
      {fitNotes(garment).map(({ print, note }) => (
        <p key={print}>{t('meant', { print, note })}</p>
      ))}
    </SidePictures>
  );
}

type LineProps = { locale: Shop['locale']; revisionId: string; garment: ViewGarment };

function Line({ locale, revisionId, garment }: LineProps) {
  const line = lineWords(garment, locale);
  if (!line || garment.sizes.length < 2) return null;
  const readings = translatorFor(locale, 'readings');
  return (
    <LinePictures
      pictures={line.pictures.map(({ file, alt }) => ({ src: `/api/revisions/${revisionId}/picture/${file}`, alt }))}
      widthPx={line.widthPx}
      heightPx={line.heightPx}
      caption={translatorFor(locale, 'revision')('line', {
        sizes: garment.sizes.map((size) => sizeWords(readings, size)).join(', '),
      })}
    />
  );
}

/** Why prints are meant to cross a seam, each print once. */
function fitNotes({ sizes }: ViewGarment): { print: string; note: string }[] {
  const prints = sizes.flatMap(({ sides }) => sides.flatMap((side) => side.prints));
  const notes = new Map(prints.flatMap(({ name, fitNote }) => (fitNote ? [[name, fitNote] as const] : [])));
  return [...notes].map(([print, note]) => ({ print, note }));
}

/** The size in the middle of those a revision shows. */
export function middleSize({
  garmentId,
  sizes,
}: Pick<ViewGarment, 'garmentId' | 'sizes'>): ViewGarment['sizes'][number] {
  const middle = middleOf(sizes);
  if (!middle) throw new Error(`garment ${garmentId} of a revision has no size`);
  return middle;
}

/** Where the bench finds the picture of a sealed drawing. */
export function pictureAddress(revisionId: string, sceneSha256: string): string {
  return `/api/revisions/${revisionId}/picture/${pictureFileName({ kind: 'scene', sha256: sceneSha256 })}`;
}
