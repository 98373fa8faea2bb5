import { SceneSvg } from '@/components/flat/scene-svg';
import { AddGarmentForm } from '@/components/garments/add-garment-form';
import { ChartTable } from '@/components/garments/chart-table';
import { CountsForm } from '@/components/garments/counts-form';
import { GarmentCard } from '@/components/garments/garment-card';
import { RemoveForm } from '@/components/garments/remove-form';
import { StyleForm } from '@/components/garments/style-form';
import { Card } from '@/components/ui/card';
import { Disclosure } from '@/components/ui/disclosure';
import { PageSection } from '@/components/ui/page-section';
import type { Garment, LayoutDocument } from '@/lib/domain/layout/document';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { composeScene, shownSides } from '@/lib/domain/layout/scene';
import { keyOf, type OfferedSize, sizeName } from '@/lib/domain/layout/sizes';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { addGarmentAction, countsAction, removeGarmentAction, styleAction } from './actions';
import { proxyAddress } from './art-address';
import { styleFields } from './garment-forms';
import { shownCharts } from './shown-charts';
import { countsLine, sizeToDraw } from './size-words';

type GarmentSectionProps = { shop: Shop; job: JobView };

/** The job's garments, and a form for one more. */
export function GarmentSection({ shop, job }: GarmentSectionProps) {
  const t = translatorFor(shop.locale, 'garments');
  const { garments } = job.draft.layout;
  return (
    <PageSection id="garments" title={t('title')}>
      {garments.length === 0 ? <p>{t('none')}</p> : null}
      {garments.map((garment) => (
        <JobGarment key={garment.garmentId} shop={shop} job={job} garment={garment} />
      ))}
      {job.locked ? null : (
        <Card id="add-garment">
          <Disclosure summary={t('add.title')} open={garments.length === 0}>
            <AddGarmentForm action={addGarmentAction.bind(null, job.jobId)} chart={<StarterCharts shop={shop} />} />
          </Disclosure>
        </Card>
      )}
    </PageSection>
  );
}

function JobGarment({ shop, job, garment }: GarmentSectionProps & { garment: Garment }) {
  const t = translatorFor(shop.locale, 'garments');
  const { garmentId, name, cloth, blanks } = garment;
  const shown = sizeToDraw(garment);
  const fabric = blanks[0]?.fabric ?? '';
  const counted = blanks.map(({ blankId, ageBand, sizes }) => ({
    blankId,
    ageBand,
    sizes: sizes.map(({ sizeId, label }) => ({
      sizeId,
      label,
      quantity: garment.counts.find((each) => each.blankId === blankId && each.sizeId === sizeId)?.quantity ?? 0,
    })),
  }));
  const changes = [
    {
      summary: t('style.summary'),
      form: (
        <StyleForm
          garmentId={garmentId}
          action={styleAction.bind(null, job.jobId, garmentId)}
          typed={styleFields(t, garment)}
        />
      ),
    },
    {
      summary: t('remove.summary'),
      form: (
        <RemoveForm
          name={name}
          printsThatGo={printsOnlyOn(job.draft.layout, garmentId)}
          action={removeGarmentAction.bind(null, job.jobId, garmentId)}
        />
      ),
    },
  ];
  return (
    <GarmentCard
      garmentId={garmentId}
      name={name}
      cloth={t('cloth', { name: cloth.name, heather: String(cloth.heather) })}
      clothHex={cloth.hex}
      fabric={fabric === '' ? null : fabric}
      flats={<GarmentFlats shop={shop} layout={job.draft.layout} garment={garment} shown={shown} />}
      drawnIn={t('shownIn', { size: sizeWords(translatorFor(shop.locale, 'readings'), sizeName(shown)) })}
      counts={
        job.locked ? (
          <p>{countsLine(shop.locale, garment)}</p>
        ) : (
          <CountsForm action={countsAction.bind(null, job.jobId, garmentId)} blanks={counted} />
        )
      }
      changes={job.locked ? [] : changes}
    />
  );
}

type GarmentFlatsProps = { shop: Shop; layout: LayoutDocument; garment: Garment; shown: OfferedSize };

function GarmentFlats({ shop, layout, garment, shown }: GarmentFlatsProps) {
  const t = translatorFor(shop.locale, 'garments');
  const readings = translatorFor(shop.locale, 'readings');
  const size = sizeWords(readings, sizeName(shown));
  const scenes = shownSides(layout, garment.garmentId, shown.blank.kind).map((side) =>
    composeScene(layout, { garmentId: garment.garmentId, size: keyOf(shown), side, lineId: null }),
  );
  const { box } = pictureFrame(scenes);
  return scenes.map((scene) => (
    <SceneSvg
      key={scene.side}
      scene={scene}
      box={box}
      href={proxyAddress}
      title={t('flat', { side: readings(`side.${scene.side}`), name: garment.name, size })}
    />
  ));
}

function StarterCharts({ shop }: { shop: Shop }) {
  const t = translatorFor(shop.locale, 'garments.add');
  return (
    <Disclosure summary={t('chartSummary')}>
      <p>{t('chartNote')}</p>
      {shownCharts(shop.locale, shop.unit).map((chart) => (
        <ChartTable key={chart.name} chart={chart} sizeWord={t('size')} estimatedWord={t('estimated')} />
      ))}
    </Disclosure>
  );
}

function printsOnlyOn({ prints }: LayoutDocument, garmentId: string): number {
  return prints.filter(({ garmentIds }) => garmentIds.every((id) => id === garmentId)).length;
}
