import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { SettingForm } from '@/components/photographs/setting-form';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { placePairs } from '@/lib/domain/layout/photograph';
import { widthToCheck } from '@/lib/domain/layout/photograph-check';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import { flatToSetBy, loadPhotograph } from '@/lib/server/blanks/photographs';
import { requireShop } from '@/lib/server/shop/read-shop';
import { setPhotographAction } from '../actions';
import { photographAddress, photographTitle } from '../listed-photograph';

type SettingPageProps = { params: Promise<{ blankId: string; photographId: string }> };

export async function generateMetadata(): Promise<Metadata> {
  await requireMaker();
  return { title: translatorFor((await requireShop()).locale, 'photographs')('setting.title') };
}

/** One photograph with its points. */
export default async function SettingPage({ params }: SettingPageProps) {
  const maker = await requireMaker();
  const { blankId, photographId } = await params;
  const [shop, blank, photograph] = await Promise.all([
    requireShop(),
    loadBlank(maker, blankId),
    loadPhotograph(maker, blankId, photographId),
  ]);
  if (!(blank && photograph)) notFound();
  const t = translatorFor(shop.locale, 'photographs');
  const by = flatToSetBy(blank.style, photograph.sizeId, photograph.side);
  const { widthPx, heightPx, setting } = photograph;
  return (
    <>
      <PageHeading
        above={`${blank.style.name} · ${photographTitle(shop.locale, blank, photograph)}`}
        lead={t('setting.lead')}
        actions={
          <LinkButton kind="quiet" href={`/blanks/${blankId}/photographs`}>
            {t('backToAll')}
          </LinkButton>
        }
      >
        {t('setting.title')}
      </PageHeading>
      {by ? (
        <SettingForm
          key={photographId}
          action={setPhotographAction.bind(null, blankId, photographId)}
          src={photographAddress(photograph)}
          picture={{ widthPx, heightPx }}
          flat={{
            side: by.flat.side,
            points: by.flat.points,
            box: by.flat.box,
            outline: by.flat.outline,
            lines: by.flat.lines.map(({ d }) => d),
          }}
          pairs={placePairs(by.flat)}
          width={widthToCheck(blank.style.kind, by.size, by.flat)}
          cutAcrossUm={blank.style.cutToleranceUm.acrossUm}
          saved={setting}
          size={sizeWords(translatorFor(shop.locale, 'readings'), {
            ageBand: blank.style.ageBand,
            label: by.size.label,
          })}
          unit={shop.unit}
        />
      ) : (
        <p>{t('needsChart')}</p>
      )}
    </>
  );
}
