import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requireMaker } from '@/app/maker';
import { BlankColumns } from '@/components/blanks/blank-columns';
import { ChartForm } from '@/components/blanks/chart-form';
import { ColoursForm } from '@/components/blanks/colours-form';
import { FactsForm } from '@/components/blanks/facts-form';
import { OnHandForm } from '@/components/blanks/on-hand-form';
import { OneButtonForm } from '@/components/blanks/one-button-form';
import { Card } from '@/components/ui/card';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeading } from '@/components/ui/page-heading';
import { PageSection } from '@/components/ui/page-section';
import { USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import { formatLength } from '@/lib/domain/measure/format-length';
import { translatorFor } from '@/lib/messages/translator';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import { requireShop } from '@/lib/server/shop/read-shop';
import { factsFields } from '../blank-forms';
import { kindWords } from '../listed-blank';
import { archiveAction, chartAction, coloursAction, duplicateAction, factsAction, onHandAction } from './actions';
import { BlankDrawing } from './blank-drawing';
import { secondPartOf, usualColours } from './colour-words';

type BlankPageProps = {
  params: Promise<{ blankId: string }>;
  searchParams: Promise<{ size?: string | string[]; colour?: string | string[] }>;
};

export async function generateMetadata({ params }: BlankPageProps): Promise<Metadata> {
  const blank = await loadBlank(await requireMaker(), (await params).blankId);
  return { title: blank?.style.name };
}

export default async function BlankPage({ params, searchParams }: BlankPageProps) {
  const maker = await requireMaker();
  const { blankId } = await params;
  const [shop, blank, chosen] = await Promise.all([requireShop(), loadBlank(maker, blankId), searchParams]);
  if (!blank) notFound();
  const t = translatorFor(shop.locale, 'blanks');
  const { style, archived } = blank;
  const seen = blank.updatedAt.toISOString();
  const units = { unit: shop.unit, currency: shop.currency };
  const usual = {
    across: formatLength(USUAL_CUT_TOLERANCE.acrossUm, shop.unit),
    long: formatLength(USUAL_CUT_TOLERANCE.longUm, shop.unit),
  };
  return (
    <>
      <PageHeading
        above={kindWords(shop.locale, style)}
        actions={
          <>
            <LinkButton kind="quiet" href="/blanks">
              {t('back')}
            </LinkButton>
            <LinkButton href={`/blanks/${blankId}/photographs`}>
              {translatorFor(shop.locale, 'photographs')('link')}
            </LinkButton>
            <OneButtonForm
              action={duplicateAction.bind(null, blankId)}
              words={t('other.duplicate')}
              waiting={t('other.copying')}
            />
          </>
        }
      >
        {style.name}
      </PageHeading>
      {archived ? (
        <Card>
          <p>{t('other.isArchived')}</p>
          <OneButtonForm
            action={archiveAction.bind(null, blankId, false)}
            words={t('other.restore')}
            waiting={t('other.restoring')}
          />
        </Card>
      ) : null}
      <BlankColumns
        drawing={<BlankDrawing shop={shop} blank={blank} chosen={chosen} />}
        facts={
          <FactsForm
            action={factsAction.bind(null, blankId)}
            typed={factsFields(shop.unit, style)}
            seen={seen}
            usual={usual}
          />
        }
      />
      <PageSection
        id="chart"
        title={t('chart.title')}
        actions={
          style.sizes.length > 0 ? (
            <a href={`/api/blanks/${blankId}/chart.csv`} download>
              {t('chart.save')}
            </a>
          ) : null
        }
      >
        <ChartForm
          action={chartAction.bind(null, blankId)}
          kept={{ kind: style.kind, ageBand: style.ageBand, sizes: style.sizes, source: style.chartSource }}
          units={units}
          seen={seen}
        />
      </PageSection>
      <PageSection id="colours" title={t('colours.title')}>
        <Card>
          <ColoursForm
            action={coloursAction.bind(null, blankId)}
            colours={style.colours}
            usual={usualColours(shop.locale)}
            secondPart={secondPartOf(shop.locale, style.kind)}
            seen={seen}
          />
        </Card>
      </PageSection>
      <PageSection id="on-hand" title={t('hand.title')}>
        {style.sizes.length > 0 && style.colours.length > 0 ? (
          <>
            <p>{t('hand.lead')}</p>
            <OnHandForm
              action={onHandAction.bind(null, blankId)}
              ageBand={style.ageBand}
              sizes={style.sizes}
              colours={style.colours}
              onHand={blank.onHand}
            />
          </>
        ) : (
          <p>{t('hand.needs')}</p>
        )}
      </PageSection>
      {archived ? null : (
        <PageSection id="put-away" title={t('other.archive')}>
          <p>{t('other.archiveHint')}</p>
          <OneButtonForm
            action={archiveAction.bind(null, blankId, true)}
            words={t('other.archive')}
            waiting={t('other.archiving')}
          />
        </PageSection>
      )}
    </>
  );
}
