import type { Metadata } from 'next';
import Link from 'next/link';
import { Cautions } from '@/components/specification/cautions';
import { countRows } from '@/components/specification/count-rows';
import { PrintButton } from '@/components/specification/print-button';
import { SheetPart, SpecificationSheet } from '@/components/specification/specification-sheet';
import { SpecifiedGarment } from '@/components/specification/specified-garment';
import { LinkButton } from '@/components/ui/link-button';
import { shortSeal } from '@/lib/domain/revision/canonical';
import type { ViewGarment } from '@/lib/domain/revision/view';
import { clothWords } from '@/lib/messages/cloth-words';
import { momentWords } from '@/lib/messages/moments';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { RevisionView } from '@/lib/server/revisions/load-revision';
import type { Shop } from '@/lib/server/shop/read-shop';
import { shownAnswers } from '../../../shown-revisions';
import { type RevisionPageParams, revisionOfPage } from '../load-page';
import { middleSize, pictureAddress } from '../shown-garments';
import { pressStop } from '../state-words';
import { placementRows } from './shown-specification';

const CAUTIONS = ['platen', 'sheets', 'test', 'fabric', 'children', 'labels', 'art'] as const;

export async function generateMetadata(props: RevisionPageParams): Promise<Metadata> {
  const { shop, view } = await revisionOfPage(props);
  const t = translatorFor(shop.locale, 'specification');
  return { title: `${t('title')}: ${t('of', { job: view.jobTitle, number: view.revision.number })}` };
}

export default async function SpecificationPage(props: RevisionPageParams) {
  const { shop, view } = await revisionOfPage(props);
  const t = translatorFor(shop.locale, 'specification');
  const { revision, jobId, jobTitle } = view;
  const { number, seal } = revision;
  const stop = pressStop(view);
  return (
    <SpecificationSheet
      shopName={view.shopName}
      title={t('title')}
      of={t('of', { job: jobTitle, number })}
      stop={stop && { text: t(`stop.${stop}`, stopNumbers(view)), link: <CurrentLink shop={shop} view={view} /> }}
      actions={
        <>
          <LinkButton href={`/jobs/${jobId}`}>{t('back')}</LinkButton>
          <PrintButton>{t('print')}</PrintButton>
        </>
      }
      facts={[
        { name: t('customer'), value: view.customerName },
        { name: t('needed'), value: momentWords(shop.locale, view.zone, view.neededAt) },
        { name: t('saidYes'), value: <YesList shop={shop} view={view} /> },
        { name: t('seal'), value: `${shortSeal(seal)} · ${seal}`, characters: true },
      ]}
    >
      {view.garments.map((garment) => (
        <GarmentPart key={garment.garmentId} shop={shop} view={view} garment={garment} mayPress={stop === null} />
      ))}
      {revision.notes ? (
        <SheetPart id="notes" title={t('notes')}>
          <p>{revision.notes}</p>
        </SheetPart>
      ) : null}
      <SheetPart id="cautions" title={t('cautions.title')}>
        <Cautions cautions={CAUTIONS.map((each) => t(`cautions.${each}`))} reminder={t('cautions.reminder')} />
      </SheetPart>
      <SheetPart id="agreed" title={t('agreed')}>
        <p>{revision.statement}</p>
      </SheetPart>
    </SpecificationSheet>
  );
}

function YesList({ shop, view }: { shop: Shop; view: RevisionView }) {
  const yeses = shownAnswers(
    shop.locale,
    view.zone,
    view.answers.filter(({ word }) => word === 'yes'),
  );
  if (yeses.length === 0) return translatorFor(shop.locale, 'specification')('nobody');
  return yeses.map(({ key, said, how, weaker }) => (
    <p key={key}>
      {said}, {how}
      {weaker ? ` (${weaker})` : ''}
    </p>
  ));
}

function CurrentLink({ shop, view }: { shop: Shop; view: RevisionView }) {
  const { revision, jobId } = view;
  const current = revision.currentNumber;
  if (current === null || current === revision.number) return null;
  const t = translatorFor(shop.locale, 'specification');
  return (
    <Link prefetch={false} href={`/jobs/${jobId}/revisions/${current}`}>
      {t('toCurrent', { current })}
    </Link>
  );
}

type GarmentPartProps = { shop: Shop; view: RevisionView; garment: ViewGarment; mayPress: boolean };

function GarmentPart({ shop, view, garment, mayPress }: GarmentPartProps) {
  const t = translatorFor(shop.locale, 'specification');
  const readings = translatorFor(shop.locale, 'readings');
  const { revisionId, unit } = view.revision;
  const { garmentId, name, cloth, fabric, total } = garment;
  const shown = middleSize(garment);
  const size = sizeWords(readings, shown);
  const file = (printId: string, groupId: string) => `/api/revisions/${revisionId}/print/${printId}/${groupId}.png`;
  return (
    <SheetPart
      id={`garment-${garmentId}`}
      title={t('garment', { name, total })}
      mark={t('mark', { number: view.revision.number, seal: shortSeal(view.revision.seal) })}
    >
      <SpecifiedGarment
        facts={[
          { name: t('cloth'), value: clothWords(readings, cloth) },
          { name: t('fabric'), value: fabric || t('noFabric') },
        ]}
        pictures={shown.sides.map(({ side, sceneSha256 }) => (
          // biome-ignore lint/performance/noImgElement: made once by our own server at the size it is shown
          <img
            key={side}
            src={pictureAddress(revisionId, sceneSha256)}
            alt={t('side', { side: readings(`side.${side}`), garment: name, size })}
            width={garment.widthPx}
            height={garment.heightPx}
          />
        ))}
        counts={countRows(shop.locale, garment)}
        placements={placementRows(shop.locale, unit, garment, mayPress ? file : null)}
        words={{
          counts: t('counts'),
          all: t('totalColumn'),
          placement: t('placement'),
          tolerance: t('tolerance'),
          columns: {
            print: t('columns.print'),
            sizes: t('columns.sizes'),
            wide: t('columns.wide'),
            tall: t('columns.tall'),
            place: t('columns.place'),
            across: t('columns.across'),
            file: t('columns.file'),
          },
        }}
      />
    </SheetPart>
  );
}

function stopNumbers({ revision }: Pick<RevisionView, 'revision'>): { number: number; current: number } {
  return { number: revision.number, current: revision.currentNumber ?? revision.number };
}
