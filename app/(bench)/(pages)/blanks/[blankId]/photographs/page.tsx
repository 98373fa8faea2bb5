import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { PhotographList } from '@/components/photographs/photograph-list';
import { PhotographUpload } from '@/components/photographs/photograph-upload';
import type { PhotographPlace } from '@/components/photographs/upload-photograph';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import { type BlankView, loadBlank } from '@/lib/server/blanks/load-blank';
import { listPhotographs } from '@/lib/server/blanks/photographs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { listedPhotograph } from './listed-photograph';

type PhotographsPageProps = { params: Promise<{ blankId: string }> };

export async function generateMetadata(): Promise<Metadata> {
  await requireMaker();
  return { title: translatorFor((await requireShop()).locale, 'photographs')('title') };
}

/** The shop's photographs of one blank, and a place for one more. */
export default async function PhotographsPage({ params }: PhotographsPageProps) {
  const maker = await requireMaker();
  const { blankId } = await params;
  const [shop, blank, photographs] = await Promise.all([
    requireShop(),
    loadBlank(maker, blankId),
    listPhotographs(maker, blankId),
  ]);
  if (!blank) notFound();
  const t = translatorFor(shop.locale, 'photographs');
  const readings = translatorFor(shop.locale, 'readings');
  const { ageBand, kind, sizes, colours } = blank.style;
  const first = firstPlace(blank, photographs);
  return (
    <>
      <PageHeading
        above={blank.style.name}
        lead={t('lead')}
        actions={
          <LinkButton kind="quiet" href={`/blanks/${blankId}`}>
            {t('back')}
          </LinkButton>
        }
      >
        {t('title')}
      </PageHeading>
      {photographs.length > 0 ? (
        <PageSection id="photographs" title={t('list')}>
          <PhotographList
            photographs={photographs.map((photograph) => listedPhotograph(shop, blank, photograph))}
            words={{ remove: t('remove'), removing: t('removing') }}
          />
        </PageSection>
      ) : null}
      <PageSection id="add" title={t('upload.title')}>
        {photographs.length === 0 ? <p>{t('none')}</p> : null}
        {first ? (
          <PhotographUpload
            blankId={blankId}
            sides={sidesOf(kind).map((side) => ({ value: side, label: readings(`side.${side}`) }))}
            sizes={sizes.map(({ sizeId, label }) => ({
              value: sizeId,
              label: sizeWords(readings, { ageBand, label }),
            }))}
            colours={colours.map(({ colourId, name }) => ({ value: colourId, label: name }))}
            first={first}
            there={photographs.map(({ sizeId, colourId, side }) => ({ sizeId, colourId, side }))}
          />
        ) : (
          <p>{t('needs')}</p>
        )}
      </PageSection>
    </>
  );
}

/** The middle size in the first colour, on the first side there is no photograph of; null while the blank has none. */
function firstPlace({ style }: BlankView, there: readonly PhotographPlace[]): PhotographPlace | null {
  const size = style.sizes[Math.floor((style.sizes.length - 1) / 2)];
  const [colour] = style.colours;
  if (!(size && colour)) return null;
  const { sizeId } = size;
  const { colourId } = colour;
  const sides = sidesOf(style.kind);
  const bare = sides.find(
    (side) => !there.some((each) => each.side === side && each.sizeId === sizeId && each.colourId === colourId),
  );
  return { sizeId, colourId, side: bare ?? sides[0] ?? 'front' };
}
