import { SceneSvg } from '@/components/flat/scene-svg';
import { CountsForm } from '@/components/garments/counts-form';
import { GarmentCard } from '@/components/garments/garment-card';
import type { OfferedStyle } from '@/components/garments/offered-style';
import { RemoveForm } from '@/components/garments/remove-form';
import { StyleForm } from '@/components/garments/style-form';
import type { Garment, LayoutDocument } from '@/lib/domain/layout/document';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { composeScene, shownSides } from '@/lib/domain/layout/scene';
import { keyOf, type OfferedSize, sizeName, styleNameOf } from '@/lib/domain/layout/sizes';
import { clothWords } from '@/lib/messages/cloth-words';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import type { BlankRow } from '@/lib/server/blanks/list-blanks';
import type { JobView } from '@/lib/server/jobs/load-jobs';
import type { Shop } from '@/lib/server/shop/read-shop';
import { layoutType } from '@/lib/server/text/layout-type';
import { countsAction, removeGarmentAction, styleAction } from './actions';
import { proxyAddress } from './art-address';
import { styleFields } from './garment-forms';
import { clothOfferOf } from './garment-on-job';
import { garmentPhotographs } from './garment-photographs';
import { GarmentSizes } from './garment-sizes';
import { sizesTitle } from './garment-words';
import { secondClothWords } from './offered-styles';
import { countsLine, sizeToDraw } from './size-words';

type JobGarmentProps = {
  maker: MakerAccess;
  shop: Shop;
  job: JobView;
  garment: Garment;
  blanks: readonly BlankRow[];
  offered: readonly OfferedStyle[];
};

/** One garment of the job: its flats, counts, cloth and charts. */
export async function JobGarment({ maker, shop, job, garment, blanks, offered }: JobGarmentProps) {
  const { locale } = shop;
  const t = translatorFor(locale, 'garments');
  const readings = translatorFor(locale, 'readings');
  const { garmentId, name, cloth } = garment;
  const { jobId, locked } = job;
  const hasPeople = job.draft.layout.people.lines.length > 0;
  const shown = sizeToDraw(garment);
  const offer = await clothOfferOf(maker, garment);
  const photographs = await garmentPhotographs(maker, locale, jobId, garment);
  const counted = garment.blanks.map((blank) => ({
    blankId: blank.blankId,
    ageBand: blank.ageBand,
    styleName: styleNameOf(garment, blank),
    title: sizesTitle(locale, garment, blank),
    sizes: blank.sizes.map(({ sizeId, label }) => ({
      sizeId,
      label,
      quantity: garment.counts.find((each) => each.blankId === blank.blankId && each.sizeId === sizeId)?.quantity ?? 0,
    })),
  }));
  const sizes = {
    summary: t('sizes.summary'),
    form: <GarmentSizes maker={maker} shop={shop} job={job} garment={garment} blanks={blanks} offered={offered} />,
  };
  const changes = [
    {
      summary: t('style.summary'),
      form: (
        <StyleForm
          garmentId={garmentId}
          action={styleAction.bind(null, jobId, garmentId)}
          typed={styleFields(t, garment, offer)}
          colours={offer.colours}
          secondCloth={secondClothWords(locale, shown.blank.kind)}
        />
      ),
    },
    sizes,
    ...(photographs ? [photographs] : []),
    {
      summary: t('remove.summary'),
      form: (
        <RemoveForm
          name={name}
          printsThatGo={printsOnlyOn(job.draft.layout, garmentId)}
          action={removeGarmentAction.bind(null, jobId, garmentId)}
        />
      ),
    },
  ];
  const fabrics = [...new Set(garment.blanks.map(({ fabric }) => fabric).filter((fabric) => fabric !== ''))];
  return (
    <GarmentCard
      garmentId={garmentId}
      name={name}
      cloth={clothWords(readings, cloth)}
      clothHex={cloth.hex}
      secondHex={cloth.secondHex}
      fabric={fabrics.length === 0 ? null : fabrics.join(', ')}
      flats={<GarmentFlats shop={shop} layout={job.draft.layout} garment={garment} shown={shown} />}
      drawnIn={t('shownIn', { size: sizeWords(readings, sizeName(shown)) })}
      counts={
        locked || hasPeople ? (
          <>
            <p>{countsLine(locale, garment)}</p>
            {hasPeople ? <p>{translatorFor(locale, 'people')('section.countsFollow')}</p> : null}
          </>
        ) : (
          <CountsForm action={countsAction.bind(null, jobId, garmentId)} blanks={counted} />
        )
      }
      changes={locked ? [sizes] : changes}
    />
  );
}

type GarmentFlatsProps = { shop: Shop; layout: LayoutDocument; garment: Garment; shown: OfferedSize };

async function GarmentFlats({ shop, layout, garment, shown }: GarmentFlatsProps) {
  const t = translatorFor(shop.locale, 'garments');
  const readings = translatorFor(shop.locale, 'readings');
  const size = sizeWords(readings, sizeName(shown));
  const type = await layoutType(layout);
  const scenes = shownSides(layout, garment.garmentId, shown.blank.kind).map((side) =>
    composeScene(layout, { garmentId: garment.garmentId, size: keyOf(shown), side, lineId: null }, type?.sample),
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

function printsOnlyOn({ prints }: LayoutDocument, garmentId: string): number {
  return prints.filter(({ garmentIds }) => garmentIds.every((id) => id === garmentId)).length;
}
